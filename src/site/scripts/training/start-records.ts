import { statementsOf } from '../../../training/xapi.ts'
import { fill } from '../../words/fill.ts'
import { required } from '../dom.ts'
import { problemText, recordsFileName, say, sayFault, shortHash } from './said.ts'
import { saveFile } from './save-file.ts'
import type { TrainingPage } from './training-page.ts'

/** How many records this device has, saving them, taking over others, and wiping them after two questions. */
export function startRecords(root: HTMLElement, page: TrainingPage): void {
  const { words, store, machineId } = page
  const part = (name: string) => required<HTMLElement>(root, `[data-${name}]`)
  const [said, first, second] = [part('said'), part('wipe-first'), part('wipe-second')]
  const onClick = (name: string, act: () => unknown) => {
    for (const button of root.querySelectorAll(`[data-${name}]`)) button.addEventListener('click', () => void act())
  }
  const tell = (text: string, isFault = false) => say(said, text, [], isFault)

  /** Hash of the last record that was shown. */
  let shown: string | undefined
  /** Shows what is there and returns it; undefined where a fault was said. */
  const refresh = async () => {
    const answer = await store.entries()
    if ('fault' in answer) {
      await sayFault(page, said, answer.fault)
      part('records-count').textContent = ''
      return undefined
    }
    const { entries } = answer
    const last = entries[entries.length - 1]
    shown = shortHash(last?.hash)
    part('records-count').textContent = last ? fill(words.recordsCount, { count: entries.length, hash: shortHash(last.hash) }) : words.recordsNone
    return { entries, last }
  }
  const changed = async () => {
    await refresh()
    document.dispatchEvent(new Event('records-changed'))
  }

  onClick('records-export', async () => {
    const [found, file] = [await refresh(), await store.export()]
    if (found && 'text' in file) saveFile(recordsFileName(page, found.last), file.text)
  })
  onClick('records-xapi', async () => {
    const found = await refresh()
    // No machine is known by an address of the web; `invalid` belongs to nobody (RFC 2606), and the receiver may map it.
    const statements = found && statementsOf(found.entries, { base: `https://training.invalid/${encodeURIComponent(machineId)}` })
    if (found) saveFile(recordsFileName(page, found.last, 'xapi.json'), `${JSON.stringify(statements, undefined, 2)}\n`)
  })
  required<HTMLInputElement>(root, '[data-records-import]').addEventListener('change', async ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return
    const [file] = target.files ?? []
    if (!file) return
    const answer = await store.import(await new Response(file).text())
    target.value = ''
    if ('fault' in answer) return sayFault(page, said, answer.fault)
    if ('problem' in answer) {
      const refused = fill(words.recordsRefused, { problem: problemText(words, answer.problem) })
      return tell(answer.problem.wrong === 'diverges' ? `${refused} ${words.recordsDiverges}` : refused, true)
    }
    tell(answer.added.length > 0 ? fill(words.recordsImported, { count: answer.added.length }) : words.recordsNothingNew)
    await changed()
  })

  /** Hash of the last record when the question was asked; a changed journal may be wiped as well. */
  let asked: { hash: string | undefined } | undefined
  const close = () => {
    asked = undefined
    first.hidden = second.hidden = true
  }
  onClick('records-wipe', () => {
    close()
    first.hidden = false
    first.querySelector('button')?.focus()
  })
  onClick('wipe-go-on', async () => {
    const found = await refresh()
    asked = { hash: found?.last?.hash }
    part('wipe-count').textContent = fill(words.recordsWipeSecond, { count: found?.entries.length ?? '?' })
    first.hidden = true
    second.hidden = false
    second.querySelector('button')?.focus()
  })
  onClick('wipe-keep', close)
  onClick('wipe-act', async () => {
    if (!asked) return
    const answer = await store.wipe(asked.hash)
    close()
    if ('fault' in answer) return sayFault(page, said, answer.fault)
    await changed()
    tell(answer.wiped ? words.recordsWiped : words.recordsMoved, !answer.wiped)
  })
  store.onChange(async () => {
    const before = shown
    const found = await refresh()
    // Coming back to a tab is no news.
    if (found && before !== undefined && before !== shown) tell(words.recordsElsewhere)
  })
  root.hidden = false
  void refresh()
}
