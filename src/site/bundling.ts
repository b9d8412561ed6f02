/** Oldest engine that the scripts and styles are lowered for. */
export const target = 'chrome80'

/** How esbuild puts scripts and styles together, wherever they go. */
export const bundling = { bundle: true, minify: true, target, charset: 'utf8', legalComments: 'none', logLevel: 'silent' } as const
