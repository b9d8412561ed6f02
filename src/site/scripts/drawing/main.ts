import { startDrawing } from './start-drawing.ts'

for (const sheet of document.querySelectorAll<HTMLElement>('[data-sheet]')) startDrawing(sheet)
