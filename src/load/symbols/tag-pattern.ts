import type { MachineFile } from '../../model/schema/machine-file.ts'
import { loadRules, type Sink } from '../load-rules.ts'
import type { YamlValue } from '../yaml.ts'

/** How machine.yaml finds the tag in a variable, where it says so. Undefined, with a finding, where it says it wrong. */
export function tagPattern(file: MachineFile, yaml: YamlValue, sink: Sink): { pattern: RegExp | undefined } | undefined {
  const written = file.data.symbols?.tag
  if (written === undefined) return { pattern: undefined }
  const place = yaml.placeOf(['data', 'symbols', 'tag'])
  try {
    const pattern = new RegExp(written, 'u')
    if (written.includes('(?<tag>')) return { pattern }
  } catch (error) {
    const note = error instanceof Error ? error.message : String(error)
    sink(loadRules.wrongType, { message: '`data.symbols.tag` is no regular expression', place, note })
    return undefined
  }
  sink(loadRules.wrongType, {
    message: '`data.symbols.tag` does not say which part is the tag',
    place,
    help: 'put brackets round it: `(?<tag>[A-Z]+\\d+)`',
  })
  return undefined
}
