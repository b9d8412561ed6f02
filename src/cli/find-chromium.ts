import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'

/** A browser that may be here, and the variables it needs in its environment. */
export interface Candidate {
  executablePath: string
  env: Record<string, string>
}

/** One place to look for a browser. Gives nothing where it does not apply; throws with the reason when it should have worked. */
export interface Source {
  name: string
  /** The person asked for this one by name: when it does not start, no other is tried. */
  only?: boolean
  find(): Promise<Candidate[]>
}

/** A browser that was named, then an installed one. */
export const sources: readonly Source[] = [
  { name: 'FETTLE_CHROMIUM', only: true, find: async () => (process.env.FETTLE_CHROMIUM ? [plain(process.env.FETTLE_CHROMIUM)] : []) },
  { name: 'installed browser', find: async () => installed().map(plain) },
]

/** A browser that needs nothing besides its file. */
export function plain(executablePath: string): Candidate {
  return { executablePath, env: {} }
}

const commands = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge']
const knownPaths: Partial<Record<NodeJS.Platform, string[]>> = {
  darwin: ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium'],
  win32: [
    `${process.env['PROGRAMFILES(X86)']}\\Microsoft\\Edge\\Application\\msedge.exe`,
    `${process.env.PROGRAMFILES}\\Google\\Chrome\\Application\\chrome.exe`,
    `${process.env['PROGRAMFILES(X86)']}\\Google\\Chrome\\Application\\chrome.exe`,
  ],
}

function installed(): string[] {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '')
  const onPath = commands.flatMap((command) => folders.map((folder) => join(folder, command)))
  return [...new Set([...onPath, ...(knownPaths[process.platform] ?? [])])].filter(isProgram)
}

export function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false // absent or not executable: the next place is tried
  }
}
