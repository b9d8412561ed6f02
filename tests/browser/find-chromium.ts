import { execFile } from 'node:child_process'
import {
  accessSync,
  chmodSync,
  constants,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir, userInfo } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import { type Candidate, sources as installedSources, isProgram, plain, type Source } from '../../src/cli/find-chromium.ts'

const run = promisify(execFile)

/** In the order in which they are tried: what a user has, then what the tests may fetch. */
export const sources: readonly Source[] = [
  ...installedSources,
  { name: 'npm package @sparticuz/chromium', find: unpacked },
  { name: 'Debian package chromium', find: fromDebian },
]

/**
 * The package holds a headless Chromium for Linux on x64, compressed, with the few libraries that a bare system lacks
 * (NSS, expat) and one font. It is unpacked once for each version, about 210 MB.
 */
async function unpacked(): Promise<Candidate[]> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return []
  const entry = fileURLToPath(import.meta.resolve('@sparticuz/chromium'))
  const { version } = JSON.parse(readFileSync(join(dirname(entry), '../package.json'), 'utf8')) as { version: string }
  const name = `chromium-${version}`
  const shared = join(projectCache, name)
  const dir = existsSync(shared) ? shared : join(cacheFolder(), name)
  if (!existsSync(dir)) await unpack(entry, dir)
  return [
    {
      executablePath: join(dir, 'chromium'),
      env: {
        LD_LIBRARY_PATH: [join(dir, 'al2023/lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':'),
        FONTCONFIG_FILE: join(dir, 'fonts.conf'),
      },
    },
  ]
}

/** The package's own settings look in /tmp/fonts only; without a font Chromium draws and prints no text at all. */
const fontSettings = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir prefix="relative">fonts/fonts</dir>
  <dir>/usr/share/fonts</dir>
  <cachedir prefix="xdg">fontconfig</cachedir>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
</fontconfig>
`

/**
 * The package unpacks into the system's temporary folder under fixed names, and its libraries only where it believes
 * to run on Amazon Linux. So a process of its own is told so, and is given a temporary folder beside the final place:
 * the rename makes the whole unpacked browser appear at once, also when several test files start together.
 */
async function unpack(entry: string, dir: string): Promise<void> {
  const staging = mkdtempSync(`${dir}-`)
  const script = `import chromium from ${JSON.stringify(pathToFileURL(entry).href)}; await chromium.executablePath()`
  try {
    await run(process.execPath, ['--input-type=module', '--eval', script], {
      env: { ...process.env, TMPDIR: staging, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs22.x' },
      timeout: 120_000,
    })
    writeFileSync(join(staging, 'fonts.conf'), fontSettings)
    chmodSync(staging, 0o755)
    renameSync(staging, dir)
  } catch (error) {
    if (!existsSync(dir)) throw error
  } finally {
    rmSync(staging, { recursive: true, force: true })
  }
}

const projectCache = fileURLToPath(new URL('../../node_modules/.cache/fettle', import.meta.url))

/** A folder that only this user can fill: what lies in it gets started. */
export function cacheFolder(): string {
  try {
    mkdirSync(projectCache, { recursive: true })
    accessSync(projectCache, constants.W_OK)
    return projectCache
  } catch {
    const { uid } = userInfo()
    const shared = join(tmpdir(), `fettle-${uid}`)
    mkdirSync(shared, { recursive: true, mode: 0o700 })
    const found = lstatSync(shared)
    if (found.uid !== uid || !found.isDirectory()) throw new Error(`${shared} belongs to someone else`)
    return shared
  }
}

async function fromDebian(): Promise<Candidate[]> {
  if (process.getuid?.() !== 0 || !isProgram('/usr/bin/apt-get')) return []
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  await run('apt-get', ['update'], { env, timeout: 180_000 })
  await run('apt-get', ['-o', 'DPkg::Lock::Timeout=300', 'install', '-y', '--no-install-recommends', 'chromium'], { env, timeout: 600_000 })
  return ['/usr/bin/chromium'].filter(isProgram).map(plain)
}
