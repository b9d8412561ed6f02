import { applyDisplay } from './display.ts'

applyDisplay()
