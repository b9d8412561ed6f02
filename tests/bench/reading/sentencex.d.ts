declare module 'sentencex' {
  /** Sentences of a text in a language, with the space between them. */
  export function segment(language: string, text: string): string[]
}
