import { type Contents, withContents } from './contents.ts'
import { sha256 } from './files.ts'
import { manifestName, parseManifest } from './manifest.ts'

/** Reads one text of a release, a built folder or its zip, and holds it against the manifest. Says what is wrong instead. */
export function readReleaseFile(path: string, name: string): { text: string } | { problem: string } {
  const reading = withContents(path, (contents) => vouchedText(contents, name))
  return 'problem' in reading ? reading : reading.result
}

function vouchedText({ names, read }: Contents, name: string): { text: string } | { problem: string } {
  const manifest = names.includes(manifestName) ? read(manifestName) : undefined
  if (!manifest) return { problem: `not a built manual: it holds no \`${manifestName}\`` }
  const parsed = parseManifest(new TextDecoder().decode(manifest))
  if ('problem' in parsed) return parsed
  const listed = parsed.manifest.files.find(({ path }) => path === name)
  if (!listed) return { problem: `it holds no \`${name}\`: an older version built it` }
  const content = names.includes(name) ? read(name) : undefined
  if (!content || sha256(content) !== listed.sha256) return { problem: `its \`${name}\` is not as it was built; \`fettle verify\` tells more` }
  return { text: new TextDecoder().decode(content) }
}
