import type { Change, ChangeGroup, ChangeKind, Detail } from './change.ts'

/** What stands over the changes of a group. */
export const groupHeadings: Readonly<Record<ChangeGroup, string>> = {
  dangerous: 'The same name, another thing: every page that names it may now be wrong',
  energy: 'Energy sources: lockouts to be gone through by a qualified person',
  gone: 'Removed or renamed',
  elsewhere: 'Found elsewhere: place, address, terminal, drawing',
  different: 'Changed',
  new: 'Added',
}

const said: Readonly<Record<ChangeKind, string>> = {
  'means-another': 'means another one now',
  'energy-changed': 'changed',
  removed: 'removed',
  renamed: 'renamed',
  're-addressed': 'has another address',
  're-terminaled': 'is on another terminal',
  moved: 'moved',
  'drawing-changed': 'is on another drawing or sheet',
  'revision-changed': 'has another revision',
  'part-replaced': 'has another part',
  superseded: 'is replaced in the list',
  'reaction-changed': 'has another reaction',
  'signal-changed': 'has other signals',
  reworded: 'has another text',
  'quantity-changed': 'has another quantity',
  'value-changed': 'has another value',
  changed: 'changed',
  added: 'added',
}

/** A change in one line: ``device `B10` renamed to `B90`: Lift down``. */
export function headline({ kind, thing, was, is, text }: Change): string {
  const name = kind === 'renamed' ? `\`${was}\` renamed to \`${is}\`` : `\`${is ?? was}\` ${said[kind]}`
  return `${thing} ${name}${text === '' ? '' : `: ${text}`}`
}

/** `address: %IX0.3 → %IX1.3`; nothing for the name of a renamed thing, which the first line tells. */
export function detailLines({ kind, details }: Change): string[] {
  return details.filter(({ field }) => kind !== 'renamed' || field !== 'name').map(detailLine)
}

const detailLine = ({ field, was, is }: Detail) => `${field}: ${was || '(none)'} → ${is || '(none)'}`
