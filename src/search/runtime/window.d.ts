import type { FettleSearch } from '../result.ts'

declare global {
  interface Window {
    /** Missing where `search/core.js` cannot be loaded. */
    FettleSearch?: FettleSearch
  }
}
