import { startBackToStart } from './back-to-start.ts'
import { startDisplay } from './display.ts'
import { startFilters } from './filter.ts'
import { startLanguages } from './keep-place.ts'
import { startOpened } from './opened.ts'
import { startPrint } from './print.ts'
import { startRouteCard } from './route/route-card.ts'
import { startSetUp } from './set-up.ts'
import { startTicks } from './ticks.ts'

startDisplay()
startPrint()
startLanguages()
startFilters()
startOpened()
startTicks()
startSetUp()
startRouteCard()
startBackToStart()
