import { startFilters } from './filter.ts'
import { startOpened } from './opened.ts'
import { startRouteCard } from './route/route-card.ts'
import { startSetUp } from './set-up.ts'
import { startTheme } from './theme.ts'
import { startTicks } from './ticks.ts'

startTheme()
startFilters()
startOpened()
startTicks()
startSetUp()
startRouteCard()
