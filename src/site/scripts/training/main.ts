import '../younger-names.ts'
import { learningWords } from '../../words/learning.ts'
import { openForPaper } from '../open-for-paper.ts'
import { openStore } from './open-store.ts'
import { officeAround } from './report-to/office.ts'
import { startInOffice } from './start-in-office.ts'
import { startInspection } from './start-inspection.ts'
import { startLessonEnd } from './start-lesson-end.ts'
import { startPath } from './start-path.ts'
import { startPlanning } from './start-planning.ts'
import { startRecords } from './start-records.ts'

openForPaper()

const { lang, dataset } = document.documentElement
const words = learningWords(lang)
const machineId = dataset.machine
if (words && machineId !== undefined) {
  const page = { words, machineId, store: openStore(machineId) }
  const office = officeAround(window)
  for (const root of document.querySelectorAll<HTMLElement>('[data-lesson-end]'))
    if (office) startInOffice(root, office, words)
    else startLessonEnd(root, page)
  for (const root of document.querySelectorAll<HTMLElement>('[data-path]')) startPath(root, page)
  for (const root of document.querySelectorAll<HTMLElement>('[data-planning]')) startPlanning(root, page)
  for (const root of document.querySelectorAll<HTMLElement>('[data-records]')) startRecords(root, page)
  for (const root of document.querySelectorAll<HTMLElement>('[data-inspection]')) startInspection(root, page)
}
