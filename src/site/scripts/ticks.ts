import { load, pageKey, save } from './store.ts'

/** Steps that are done and points that are locked stay ticked on this panel until they are cleared. */
export function startTicks(): void {
  for (const route of document.querySelectorAll<HTMLElement>('[data-route]')) startRoute(route)
  for (const board of document.querySelectorAll<HTMLElement>('[data-board]')) startBoard(board)
}

function startRoute(route: HTMLElement): void {
  const steps = [...route.querySelectorAll<HTMLElement>('.route-step')]
  const all = [...document.querySelectorAll('[data-route]')]
  remember(route, boxesOf(route, '[data-tick]'), `route${all.indexOf(route)}`, (boxes) => {
    for (const [index, step] of steps.entries()) step.classList.toggle('ticked', boxes[index]?.checked ?? false)
  })
}

function startBoard(board: HTMLElement): void {
  const count = board.querySelector('[data-board-count]')
  const boxes = boxesOf(board, '[data-point]')
  const points = [...new Set(boxes.map((box) => box.dataset.point))]
  // A point that cuts off several sources stands under each of them and is ticked once.
  board.addEventListener('change', ({ target }) => {
    if (target instanceof HTMLInputElement && target.dataset.point)
      for (const box of boxes) if (box.dataset.point === target.dataset.point) box.checked = target.checked
  })
  const show = () => {
    const open = points.filter((point) => boxes.some((box) => box.dataset.point === point && !box.checked)).length
    for (const box of boxes) box.closest('.point')?.classList.toggle('shut', box.checked)
    if (count)
      count.textContent = ((open === 0 ? board.dataset.all : board.dataset.still) ?? '')
        .replace('{open}', String(open))
        .replace('{all}', String(points.length))
  }
  const when = board.querySelector<HTMLElement>('[data-board-when]')
  const forget = remember(board, boxes, 'board', show, when ?? undefined)
  for (const button of board.querySelectorAll<HTMLButtonElement>('[data-clear]')) {
    button.hidden = false
    button.addEventListener('click', forget)
  }
}

const boxesOf = (owner: Element, selector: string) => [...owner.querySelectorAll<HTMLInputElement>(selector)]

/** After this time a tick is of another job: it is not restored. */
const keptForMs = 12 * 60 * 60 * 1000

/**
 * Restores the ticks of the last hours, saves each change with its time, and returns what clears them. `when`
 * tells the reader how old they are, so that nobody takes the ticks of an earlier shift for locks.
 */
function remember(
  owner: HTMLElement,
  boxes: readonly HTMLInputElement[],
  name: string,
  show: (boxes: readonly HTMLInputElement[]) => void,
  when?: HTMLElement,
): () => void {
  const key = pageKey(name)
  const [ticks = '', savedAt = ''] = (load(key) ?? '').split('@')
  const age = Date.now() - Number(savedAt)
  const fresh = age >= 0 && age < keptForMs
  if (!fresh) save(key, undefined)
  for (const [index, box] of boxes.entries()) box.checked = fresh && ticks[index] === '1'
  const tell = (time: number) => {
    if (!when) return
    when.hidden = !boxes.some(({ checked }) => checked)
    when.textContent = (when.dataset.text ?? '').replace(
      '{when}',
      new Date(time).toLocaleString(document.documentElement.lang, { dateStyle: 'medium', timeStyle: 'short' }),
    )
  }
  owner.addEventListener('change', () => {
    const now = Date.now()
    save(key, `${boxes.map(({ checked }) => (checked ? '1' : '0')).join('')}@${now}`)
    show(boxes)
    tell(now)
  })
  show(boxes)
  tell(Number(savedAt))
  return () => {
    for (const box of boxes) box.checked = false
    save(key, undefined)
    show(boxes)
    tell(0)
  }
}
