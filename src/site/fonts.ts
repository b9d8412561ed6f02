/** Names that the styles use -> files of the packages that hold the fonts. */
export const fonts: Readonly<Record<string, string>> = {
  'text-400.woff2': '@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-400-normal.woff2',
  'text-700.woff2': '@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-700-normal.woff2',
  'label-500.woff2': '@fontsource/ibm-plex-mono/files/ibm-plex-mono-latin-500-normal.woff2',
}

/** Their licences, which go with each copy. Source: SIL Open Font License 1.1, condition 2. */
export const fontLicences: Readonly<Record<string, string>> = {
  'text-licence.txt': '@fontsource/atkinson-hyperlegible/LICENSE',
  'label-licence.txt': '@fontsource/ibm-plex-mono/LICENSE',
}
