/** A file of the machine, as far as the release names it: `data/bom.csv` and its SHA-256. */
export interface InputFile {
  path: string
  sha256: string
}
