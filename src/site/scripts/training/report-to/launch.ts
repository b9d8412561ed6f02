import type { LessonResult } from '../../../../training/packages/result.ts'
import { fill } from '../../../words/fill.ts'
import { cmi5System } from './cmi5.ts'
import { cmi5Address } from './cmi5-endpoint.ts'
import { findApi } from './find-api.ts'
import { offerOffice } from './office.ts'
import { kept, type OfficeSystem, type Told } from './office-system.ts'
import { type Scorm12Api, scorm12System } from './scorm-12.ts'
import { type Scorm2004Api, scorm2004System } from './scorm-2004.ts'

/** The page around a lesson of a package: it holds the session with the training system while the lesson's pages come and go. */
const bar = document.querySelector<HTMLElement>('[data-launch]')
const lesson = document.querySelector<HTMLIFrameElement>('iframe')
if (bar && lesson) void startLesson(bar, lesson)

function systemOf(format: string | undefined): OfficeSystem | undefined {
  if (format === 'cmi5') {
    const address = cmi5Address(location.search)
    return address && cmi5System(address, () => new Date().toISOString(), fetch.bind(window))
  }
  if (format === 'scorm-1.2') {
    const api = findApi<Scorm12Api>('API', 'LMSInitialize', window)
    return api && scorm12System(api)
  }
  const api = findApi<Scorm2004Api>('API_1484_11', 'Initialize', window)
  return api && scorm2004System(api)
}

async function startLesson(bar: HTMLElement, lesson: HTMLIFrameElement): Promise<void> {
  const label = (name: string) => bar.dataset[name] ?? ''
  const status = bar.querySelector<HTMLElement>('[role=status]')
  const button = (name: string) => bar.querySelector<HTMLButtonElement>(`[data-act=${name}]`)
  const [done, again, close] = [button('done'), button('again'), button('close')]
  const startedMs = performance.now()
  const sinceStartS = () => (performance.now() - startedMs) / 1000
  const system = systemOf(bar.dataset.format)
  let asked: (() => Promise<Told>) | undefined

  /** Does something with the system and shows what became of it; what was refused can be asked for again. */
  const tell = async (ask: () => Promise<Told>, said: (told: Told) => string): Promise<Told> => {
    const told = await ask()
    const isRefused = told.told === 'refused'
    if (status) status.textContent = isRefused ? fill(label('refused'), { reason: told.reason }) : said(told)
    status?.classList.toggle('launch-refused', isRefused)
    asked = isRefused ? () => tell(ask, said) : undefined
    if (again) again.hidden = !isRefused
    return told
  }

  let isOpen = false
  /** Within a session: one that was refused is asked for again before anything else is told. */
  const inSession = async (open: OfficeSystem, act: () => Promise<Told>): Promise<Told> => {
    const begun = isOpen ? kept : await open.start()
    isOpen = begun.told !== 'refused'
    return isOpen ? act() : begun
  }
  const started =
    system &&
    tell(
      () => inSession(system, async () => kept),
      () => label('open'),
    )
  if (!started && status) {
    status.textContent = label('nobody')
    status.classList.add('launch-refused')
  }
  const report = async (result: LessonResult): Promise<Told> => {
    await started
    return system
      ? tell(
          () => inSession(system, () => system.report(result)),
          (told) => resultText(told, result, label),
        )
      : kept
  }
  offerOffice(window, {
    answers: new Map(),
    async report(of, result) {
      if (of === bar.dataset.lesson) return report(result)
      if (status) status.textContent = label('other')
      return kept
    },
  })
  // Only now: the lesson looks for the office when it opens.
  lesson.src = lesson.dataset.src ?? ''
  if (!system) return
  if (close) close.hidden = false
  if (done) {
    done.hidden = false
    done.addEventListener('click', () => void report({ completed: true, durationS: sinceStartS() }))
  }
  again?.addEventListener('click', () => void asked?.())
  const finish = () =>
    tell(
      () => inSession(system, () => system.finish(sinceStartS())),
      () => label('closed'),
    )
  close?.addEventListener('click', async () => {
    const told = await finish()
    if (told.told === 'refused') return
    for (const control of [done, close]) if (control) control.disabled = true
    const address = system.returnAddress?.()
    if (address && /^https?:/i.test(address)) location.href = address
  })
  window.addEventListener('pagehide', () => isOpen && void finish())
  await started
  if (isOpen) restore(lesson, system.kept())
  lesson.addEventListener('load', () => void system.keep(pageIn(lesson)))
}

function resultText(told: Told, { score }: LessonResult, label: (name: string) => string): string {
  if (told.told === 'kept') return label('kept')
  const passed = told.told === 'recorded' ? told.passed : undefined
  if (passed === undefined) return label('completed')
  return fill(label(passed ? 'passed' : 'failed'), { right: score?.right ?? 0, of: score?.of ?? 0 })
}

/** The page in the frame, as a path from the launch page. */
function pageIn(lesson: HTMLIFrameElement): string {
  const here = new URL('.', location.href).href
  const root = new URL('..', here).href
  const shown = lesson.contentWindow?.location.href.split(/[?#]/)[0] ?? ''
  return shown.startsWith(root) ? shown.slice(root.length) : ''
}

/** Back to the page on which the learner stopped; what is no page of the package is not opened. */
function restore(lesson: HTMLIFrameElement, page: string): void {
  if (page === pageIn(lesson)) return
  if (/^[\w~%+=.-]+(\/[\w~%+=.-]+)*\.html$/.test(page) && !page.startsWith('launch/')) lesson.src = `../${page}`
}
