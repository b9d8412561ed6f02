import { startDrawing } from './start-drawing.ts'
import { startFind } from './start-find.ts'

const sheet = document.querySelector<HTMLElement>('[data-sheet]')
const opened = sheet && startDrawing(sheet)
if (opened) startFind(opened)
