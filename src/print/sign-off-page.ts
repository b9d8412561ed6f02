import { askedLessons } from '../model/asked-lessons.ts'
import type { Graph } from '../model/graph.ts'
import type { Machine } from '../model/machine.ts'
import { address } from '../site/address.ts'
import { titleIn } from '../site/context.ts'
import { roleName } from '../site/parts/role-name.ts'
import { lessonSheetOf } from '../site/training/lesson-sheet-of.ts'
import { fill } from '../site/words/fill.ts'
import type { PlanningWords } from '../site/words/planning.ts'
import { escapeHtml } from './html-tree.ts'

/** The lessons of a role as a sheet that learner and judge sign line by line, with what is shown to the judge. */
export function signOffPage(machine: Machine, graph: Graph, language: string, role: string, words: PlanningWords): string {
  const name = roleName({ machine, language }, role)
  const title = fill(words.sheetTitle, { role: name })
  const heads = [words.sheetLesson, words.sheetDate, words.sheetLearnerSigns, words.sheetTrainerSigns]
  const rows = askedLessons(machine, graph, role).map(({ lesson }) => {
    const said = titleIn(lesson, language)
    const { practical } = lessonSheetOf(lesson, language).sheet
    const shown = practical.map((item) => `<li>${escapeHtml(item)}</li>`).join('')
    const what = `<b lang="${said.language}">${escapeHtml(said.text)}</b> <span>${escapeHtml(`${words.sheetRevision} ${lesson.frontmatter.revision}`)}</span>`
    return `<tr id="${address.page(lesson.id).replaceAll(/\W/g, '-')}"><td>${what}${shown && `<ul>${shown}</ul>`}</td><td></td><td></td><td></td></tr>`
  })
  const lines = [words.sheetLearner, words.sheetId, words.sheetTrainer]
    .map((it) => `<p>${escapeHtml(it)} <span class="sign-line"></span></p>`)
    .join('')
  const head = heads.map((it) => `<th scope="col">${escapeHtml(it)}</th>`).join('')
  return `<!doctype html><title>${escapeHtml(title)} · ${escapeHtml(machine.file.model)}</title><body class="kind-sign-off"><main><h1>${escapeHtml(title)}</h1><div class="record-lines">${lines}</div><table class="data sign-off-table"><thead><tr>${head}</tr></thead><tbody>${rows.join('')}</tbody></table><p>${escapeHtml(words.sheetEnter)}</p></main></body>`
}
