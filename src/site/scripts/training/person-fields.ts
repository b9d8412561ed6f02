import { element, required } from '../dom.ts'
import type { Person } from './learner.ts'
import { spelledAs, type TrainingPage } from './training-page.ts'

export interface PersonFields {
  /** What was entered, as it is known here; undefined where something is missing, which is then said at the field. */
  read(): Person | undefined
  show(person: Person): void
  know(people: ReadonlyMap<string, string>): void
}

/** The two fields of a person. An id that is known here brings its spelling and its name. */
export function personFields(root: ParentNode, name: string, { words }: TrainingPage): PersonFields {
  const box = required<HTMLElement>(root, `[data-person="${name}"]`)
  const idField = required<HTMLInputElement>(box, '[data-person-id]')
  const nameField = box.querySelector<HTMLInputElement>('[data-person-name]')
  let people: ReadonlyMap<string, string> = new Map()

  const complete = () => {
    const id = plain(idField.value)
    idField.value = id && spelledAs(id, people)
    const known = people.get(idField.value)
    if (nameField && known !== undefined && known !== idField.value && plain(nameField.value) === '') nameField.value = known
  }
  idField.addEventListener('change', complete)
  for (const field of [idField, nameField]) field?.addEventListener('input', () => tell(field, undefined))
  return {
    read() {
      complete()
      const [id, said] = [plain(idField.value), plain(nameField?.value ?? '')]
      const isNamed = nameField === null || said !== ''
      tell(idField, id === '' ? words.recordNeedId : undefined)
      if (nameField) tell(nameField, isNamed ? undefined : words.recordNeedName)
      const wrong = id === '' ? idField : isNamed ? undefined : nameField
      wrong?.focus()
      return wrong === undefined ? { id, name: said } : undefined
    },
    show(person) {
      idField.value = person.id
      if (nameField) nameField.value = person.name
    },
    know(known) {
      people = known
    },
  }
}

/** Offers the people of whom there are records to all fields of ids under `root`. */
export function offerPeople(root: ParentNode, people: ReadonlyMap<string, string>): void {
  const options = [...people].map(([id, name]) => {
    const option = element('option', { text: name })
    option.setAttribute('value', id)
    return option
  })
  required(root, '[data-known-people]').replaceChildren(...options)
}

/** One line, without blanks at its ends and signs that nobody sees. */
const plain = (text: string) =>
  text
    .replace(/[\p{Cc}\p{Cs}\s]+/gu, ' ')
    .trim()
    .normalize('NFC')

function tell(field: HTMLInputElement, wrong: string | undefined): void {
  const label = field.parentElement
  label?.querySelector('.field-wrong')?.remove()
  field.setAttribute('aria-invalid', String(wrong !== undefined))
  if (wrong) label?.append(element('span', { className: 'field-wrong', text: wrong }))
}
