import type { Acceptance, RuleSetting } from '../model/acceptance.ts'
import { acceptedFile } from '../model/schema/accepted-file.ts'
import type { MachineFile } from '../model/schema/machine-file.ts'
import type { SourceText } from '../source/source-text.ts'
import type { Folder } from './folder.ts'
import type { Sink } from './load-rules.ts'
import { inQuotes } from './pages.ts'
import { checkShape } from './shape.ts'
import { parseYaml, type YamlValue } from './yaml.ts'

/** The severities that machine.yaml gives to rules. */
export function ruleSettings({ rules = {} }: MachineFile, yaml: YamlValue): RuleSetting[] {
  return Object.entries(rules).map(([id, severity]) => ({
    rule: { value: id, place: yaml.placeOfKey(['rules'], id) },
    severity: { value: severity, place: inQuotes(yaml, ['rules', id]) },
  }))
}

/** The entries of `accepted.yaml`. None, with findings, where one of them cannot be used. */
export function loadAccepted(source: SourceText, machine: Folder, shared: Folder, sink: Sink): Acceptance[] {
  const yaml = parseYaml(source, sink)
  const entries = yaml && checkShape(acceptedFile, yaml, sink, 'the file')
  if (!yaml || !entries) return []
  return entries.map(({ rule, file, message, reason, until }, index) => {
    const at = (key: string, value: string) => ({ value, place: inQuotes(yaml, [index, key]) })
    return {
      rule: at('rule', rule),
      file: at('file', file),
      ...fileOf(file, machine, shared),
      folder: machine.label,
      message: at('message', message),
      reason: reason.trim(),
      until: at('until', until),
    }
  })
}

const sharedPrefix = 'content/'

function fileOf(file: string, machine: Folder, shared: Folder): Pick<Acceptance, 'path' | 'isFile'> {
  const own = { path: machine.label + file, isFile: machine.size(file) !== undefined }
  if (own.isFile || !file.startsWith(sharedPrefix)) return own
  const below = file.slice(sharedPrefix.length)
  return { path: shared.label + below, isFile: shared.size(below) !== undefined }
}
