// The page over several machines, which stands alone: its script is written into it.
import { startFilters } from './filter.ts'

startFilters()
