import type { SearchLabels } from './scripts/search/labels.ts'
import type { Labels } from './words/labels.ts'

/** What search and its keys say, from the labels of the language. */
export function searchLabels(labels: Labels): SearchLabels {
  return {
    kinds: {
      tag: labels.devices,
      alarm: labels.alarms,
      part: labels.parts,
      drawing: labels.drawings,
      lockout: labels.lockouts,
      hazard: labels.hazards,
      job: labels.procedures,
      assembly: labels.components,
      lesson: labels.lessons,
      page: labels.searchInText,
    },
    results: labels.searchResults,
    oneResult: labels.searchOneResult,
    nothing: labels.searchNothing,
    instead: labels.searchInstead,
    also: labels.searchAlsoFor,
    unknown: labels.searchUnknown,
    near: labels.searchNear,
    failed: labels.searchFailed,
    namesOnly: labels.searchNamesOnly,
    more: labels.searchMore,
    allOfKind: labels.searchAllOfKind,
    keys: labels.keys,
    closeKeys: labels.closeKeys,
    space: labels.space,
    erase: labels.erase,
    clear: labels.clear,
    find: labels.find,
    accents: labels.accents,
  }
}
