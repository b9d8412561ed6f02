import { startSetUp } from '../set-up.ts'
import { startTicks } from '../ticks.ts'
import { startRouteCard } from './route-card.ts'

startTicks()
startSetUp()
startRouteCard()
