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
    const first = boxes.findIndex((box) => !box.checked)
    for (const [index, step] of steps.entries()) {
      step.classList.toggle('ticked', boxes[index]?.checked ?? false)
      step.classList.toggle('here', index === first && boxes.some((box) => box.checked))
    }
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
  const forget = remember(board, boxes, 'board', show)
  for (const button of board.querySelectorAll<HTMLButtonElement>('[data-clear]')) {
    button.hidden = false
    button.addEventListener('click', forget)
  }
}

const boxesOf = (owner: Element, selector: string) => [...owner.querySelectorAll<HTMLInputElement>(selector)]

/** Restores the ticks, saves each change, and returns what clears them. */
function remember(
  owner: HTMLElement,
  boxes: readonly HTMLInputElement[],
  name: string,
  show: (boxes: readonly HTMLInputElement[]) => void,
): () => void {
  const key = pageKey(name)
  const kept = load(key) ?? ''
  for (const [index, box] of boxes.entries()) box.checked = kept[index] === '1'
  owner.addEventListener('change', () => {
    save(key, boxes.map(({ checked }) => (checked ? '1' : '0')).join(''))
    show(boxes)
  })
  show(boxes)
  return () => {
    for (const box of boxes) box.checked = false
    save(key, undefined)
    show(boxes)
  }
}
