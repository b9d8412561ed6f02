// Run by measure-search.ts as a process of its own, whose cost is measured: the search of many pages.
import { buildSearch } from '../../search/build-search.ts'
import { writeManyPages } from './many-pages.ts'

const [exampleDir = '', siteDir = '', pages = ''] = process.argv.slice(2)
const input = writeManyPages(exampleDir, siteDir, Number(pages))
process.send?.('written')
const start = performance.now()
const made = await buildSearch(input)
process.send?.({ ...made, timeS: (performance.now() - start) / 1000, peakMb: process.resourceUsage().maxRSS / 1024 })
process.disconnect?.()
