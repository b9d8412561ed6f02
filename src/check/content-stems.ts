/** Words that say where or how in any text. English and Spanish. */
const small = new Set(
  `above after and are before below between both each for from front into its left main not over right side that the this under when while with
  antes bajo cada con cuando del delante derecha desde detrás durante entre esta este frente hacia izquierda lado las los mientras para por
  principal sin sobre una`.split(/\s+/),
)

/** The beginnings of the words of a text that carry a meaning: four letters, so that `heats` and `heater` are alike. */
export function contentStems(text: string): Set<string> {
  const words = text
    .replace(/(?<=\p{Ll})(?=\p{Lu})/gu, ' ')
    .toLowerCase()
    .match(/\p{L}{4,}/gu)
  return new Set((words ?? []).filter((word) => !small.has(word)).map((word) => word.slice(0, 4)))
}
