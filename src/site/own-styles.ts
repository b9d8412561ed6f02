/** Parts with a style sheet of their own, each from the file of its name in `styles/`. */
export const ownStyles = [
  'plan',
  'areas',
  'path',
  'drawing',
  'route',
  'board',
  'device',
  'figure',
  'glossary',
  'hazards',
  'search',
  'meter',
  'training',
  'display',
  'working',
] as const
export type OwnStyles = (typeof ownStyles)[number]

/** Files in `assets/`, each from the file of its name in `styles/`. Every page has the first, and the second when it is printed. */
export const styles: readonly string[] = ['site.css', 'print.css', ...ownStyles.map((name) => `${name}.css`)]
