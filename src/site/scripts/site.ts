import { startBackToStart } from './back-to-start.ts'
import { startDisplay } from './display/start-display.ts'
import { startLanguages } from './keep-place.ts'
import { startOpened } from './opened.ts'
import { startPrint } from './print.ts'

startDisplay()
startPrint()
startLanguages()
startOpened()
startBackToStart()
