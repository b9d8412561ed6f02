import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { packageDir } from './paths.ts'

interface PackageFile {
  version: string
}

const { version: own }: PackageFile = JSON.parse(readFileSync(join(packageDir, 'package.json'), 'utf8'))

/** Version of Fettle, as in package.json. */
export const version = own
