import { briefMessages } from './brief-messages.ts'
import { messagesOfStep } from './messages-of-step.ts'
import { stepBar } from './step-bar.ts'

/** Least part of a step that is in view when it can be called done, in px. */
const seenPx = 40
/** Room between a step and what stands above or below it, in px. */
const roomPx = 10

/**
 * Leads from step to step: one is in focus, the others stay readable. Without this script all are equal. What is ticked
 * is kept by `ticks.ts`, which hears of a tick as of one by hand.
 */
export function startRouteCard(): void {
  const routes = [...document.querySelectorAll<HTMLElement>('[data-route]')]
  const [first] = routes
  if (!first) return
  const messages = briefMessages()
  const { bar, show: showBar } = stepBar((routes.find(({ dataset }) => dataset.next) ?? first).dataset, { on, back })
  document.body.append(messages.strip)
  document.documentElement.classList.add('on-route')
  // A page in a package has no thumb rail.
  if (!document.querySelector('.rail')) document.documentElement.style.setProperty('--rail-height', '0px')
  let here: HTMLElement | undefined
  focusOn(stepsOf(routes).find((step) => !isDone(step)))

  for (const route of routes) {
    route.addEventListener('change', ({ target }) => {
      const step = target instanceof HTMLInputElement ? target.closest<HTMLElement>('.route-step') : null
      if (!step) return
      if (!isDone(step)) goTo(step)
      else if (step === here) goTo(nextOf(step))
      else show()
    })
    route.addEventListener('click', ({ target }) => {
      if (!(target instanceof Element) || target.closest('a, button, label, input, summary')) return
      const step = target.closest<HTMLElement>('.route-step')
      if (step && step !== here && !isDone(step)) focusOn(step)
    })
  }
  // Which settings are shown depends on the product that is on the machine.
  document.querySelector('[data-set-up-now]')?.addEventListener('click', () => focusOn(stepsOf(routes).find((step) => !isDone(step))))
  addEventListener('scroll', show, { passive: true })
  addEventListener('resize', show)

  function on(): void {
    // The first comes last: the one whose tick was taken off last is in focus.
    if (!here) for (const step of stepsOf(routes).reverse()) tick(step, false)
    else if (isInView(here)) tick(here, true)
    else goTo(here)
  }

  function back(): void {
    const steps = stepsOf(routes)
    const before = here ? steps[steps.indexOf(here) - 1] : steps[steps.length - 1]
    if (before && isDone(before)) tick(before, false)
    else if (before) goTo(before)
  }

  /** The step that comes after one: the next that is not ticked, from the top again where none is left below. */
  function nextOf(step: HTMLElement): HTMLElement | undefined {
    const steps = stepsOf(routes)
    const at = steps.indexOf(step)
    return [...steps.slice(at + 1), ...steps.slice(0, at)].find((it) => !isDone(it))
  }

  function focusOn(step: HTMLElement | undefined): void {
    for (const it of document.querySelectorAll('.route-step.here')) {
      it.classList.remove('here')
      it.removeAttribute('aria-current')
    }
    here = step
    step?.classList.add('here')
    step?.setAttribute('aria-current', 'step')
    const steps = stepsOf(routes)
    ;(step ?? steps[steps.length - 1])?.append(bar)
    messages.hold(step ? messagesOfStep(step) : [])
    show()
  }

  function goTo(step: HTMLElement | undefined): void {
    focusOn(step)
    if (!step) return
    step.tabIndex = -1
    step.focus({ preventScroll: true })
    bringIntoView(step)
  }

  /** The step below as many of its messages as have room with it, those nearest first; the others stand above them in brief. */
  function bringIntoView(step: HTMLElement): void {
    const bottom = bottomPx()
    const { top, bottom: end } = step.getBoundingClientRect()
    if (top >= messages.show(bottom) && end <= bottom) return
    const before = messagesOfStep(step).filter((message) => !step.contains(message))
    const leads = before.map((message, index) => message.getBoundingClientRect().top - messages.heightPx(index) - roomPx)
    const to = leads.find((lead) => end - lead + roomPx <= bottom) ?? top - messages.heightPx(before.length) - roomPx
    show()
    scrollTo({ top: Math.max(0, scrollY + to), behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' })
  }

  function show(): void {
    const steps = stepsOf(routes)
    const last = routes.filter(isShown).map((route) => route.getBoundingClientRect().bottom)
    bar.hidden = Math.max(0, ...last) <= 0
    const seen = here !== undefined && isInView(here)
    if (seen) messages.show(bottomPx())
    else messages.hide()
    const open = steps.filter((step) => !isDone(step))
    showBar(here && { number: numberOf(here), isFirst: here === steps[0], isLast: open.length === 1, isInView: seen })
  }

  function bottomPx(): number {
    return bar.hidden ? innerHeight : bar.getBoundingClientRect().top
  }

  function isInView(step: HTMLElement): boolean {
    const { top, bottom } = step.getBoundingClientRect()
    return Math.min(bottom, bottomPx()) - Math.max(top, 0) >= Math.min(seenPx, bottom - top)
  }
}

const isShown = (it: HTMLElement) => it.offsetParent !== null

const stepsOf = (routes: readonly HTMLElement[]) => routes.filter(isShown).flatMap((route) => [...route.querySelectorAll<HTMLElement>('.route-step')])

const boxOf = (step: HTMLElement) => step.querySelector<HTMLInputElement>('[data-tick]')

const isDone = (step: HTMLElement) => boxOf(step)?.checked ?? false

/** Ticks a step as a hand would, so that it is kept and shown. */
function tick(step: HTMLElement, done: boolean): void {
  const box = boxOf(step)
  if (!box || box.checked === done) return
  box.checked = done
  box.dispatchEvent(new Event('change', { bubbles: true }))
}

const numberOf = (step: HTMLElement) => [...(step.parentElement?.children ?? [])].indexOf(step) + 1
