import { startDrawings } from './drawing.ts'
import { startFilters } from './filter.ts'
import { startTheme } from './theme.ts'
import { startTicks } from './ticks.ts'

startTheme()
startFilters()
startTicks()
startDrawings()
