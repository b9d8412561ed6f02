import type { LostData } from '../model/lost-data.ts'
import type { Drawing, NamedThing, Reference, Term } from '../model/machine.ts'
import { contentFile } from '../model/schema/content-file.ts'
import { machineFile } from '../model/schema/machine-file.ts'
import type { Row, TableName } from '../model/schema/tables.ts'
import { saysSpare } from '../model/spare.ts'
import { compareFindings, type Finding } from '../source/finding.ts'
import { compare, type Located, type Place, startOfFile } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import { loadAccepted, ruleSettings } from './accepted.ts'
import { loadCheckout, noCheckout } from './checkout.ts'
import { checkColumnKeys } from './column-keys.ts'
import { dataRows, hasFile } from './data-rows.ts'
import { readText, reason } from './decode.ts'
import { describedIn } from './described-in.ts'
import { noteFirstError } from './first-error.ts'
import type { Folder } from './folder.ts'
import { loadHazards, noHazards } from './hazards.ts'
import { images } from './images.ts'
import { inputFiles } from './input-files.ts'
import { type Everything, linkUnits, namesOf } from './link.ts'
import { collect, loadRules, type Sink } from './load-rules.ts'
import { type Loaded, noRows } from './loaded.ts'
import { type Memory, noMemory, ofText } from './memory.ts'
import { checkOwnWords } from './own-words.ts'
import { loadPages } from './pages.ts'
import type { DrawingTexts } from './pdf/drawing-texts.ts'
import { loadEnergy, loadGlossary, loadOwn, loadTraining, noEnergy, noTraining } from './records.ts'
import { checkShape } from './shape.ts'
import { loadSheets } from './sheets.ts'
import { signalsOfSymbols } from './symbols/signals-of-symbols.ts'
import { tagPattern } from './symbols/tag-pattern.ts'
import { loadTable, type TableRows, unreadTable } from './table.ts'
import { tableReferences } from './table-references.ts'
import { reportUnlistedDrawings } from './unlisted-drawings.ts'
import { parseYaml } from './yaml.ts'

/**
 * Reads a machine folder and the shared content. Bad content becomes findings; the rest is still read.
 * With a serial number only that unit is linked. PDFs take time: `readDrawingTexts` has read them before.
 */
export function loadMachine(
  machine: Folder,
  shared: Folder,
  serial?: string,
  drawingTexts: DrawingTexts = new Map(),
  memory: Memory = noMemory,
): Loaded {
  const findings: Finding[] = []
  const texts = new Map<string, string>()
  const sink = collect(findings)
  const loaded = (machines: Loaded['machines'], rest: Partial<Loaded> = {}): Loaded => ({
    machines,
    findings: distinct(findings.sort(compareFindings)),
    texts,
    lost: [],
    columns: {},
    rows: noRows,
    settings: [],
    acceptances: [],
    ...rest,
  })
  const top = startOfFile(`${machine.label}machine.yaml`)
  let paths: readonly string[]
  try {
    paths = machine.list()
  } catch (error) {
    sink(loadRules.unreadableFile, {
      message: 'the machine folder cannot be read',
      place: { ...top, file: machine.label.replace(/\/$/, '') || '.' },
      note: reason(error),
    })
    return loaded([])
  }
  if (!paths.includes('machine.yaml')) {
    sink(loadRules.notAMachine, {
      message: paths.length === 0 ? 'the folder is empty' : 'the folder has no `machine.yaml`',
      place: top,
      help: 'give the folder that holds `machine.yaml`, or write that file first',
    })
    return loaded([])
  }
  const read = (folder: Folder, path: string, to = sink) => {
    const source = readText(folder, path, to)
    if (source) texts.set(source.file, source.text)
    return source
  }
  const source = read(machine, 'machine.yaml')
  const yaml = source && ofText(memory, 'yaml', source, sink, (sink) => parseYaml(source, sink))
  const file = yaml && memory('machine.yaml', [yaml], sink, (sink) => checkShape(machineFile, yaml, sink, 'machine.yaml'))
  if (!yaml || !file) return loaded([])
  const language = file.languages.source

  const table = <T extends TableName>(name: T): TableRows<T> => {
    const entry = file.data[name]
    if (!entry) return memory(`no ${name}`, [], sink, () => ({ rows: [], broken: [], readable: true, lost: [], columns: [] }))
    const noted = noteFirstError(sink)
    const files = { machine, yaml, keepText: (key: string, text: string) => texts.set(key, text), memory, sink: noted.sink }
    const cells = dataRows(name, entry, { ...files, read: (folder, path) => read(folder, path, noted.sink) })
    if (!cells || !checkColumnKeys(name, entry.columns ?? {}, yaml, noted.sink) || !checkOwnWords(name, entry.values ?? {}, yaml, noted.sink))
      return unreadTable(name, noted.place() ?? yaml.placeOf(['data', name]))
    const options = { ...entry, headings: entry.columns ?? {}, sourceLanguage: language }
    return memory(`table ${name}`, [file, cells], sink, (sink) => loadTable(name, cells, options, sink))
  }
  const devices = table('devices')
  const symbols = table('symbols')
  const found = file.data.signals || !file.data.symbols ? undefined : tagPattern(file, yaml, sink)
  const fromSymbols = found && signalsOfSymbols(symbols.rows, devices.rows, found.pattern, sink)
  const signalTable = table('signals')
  const isMadeOfSymbols = !file.data.signals && file.data.symbols !== undefined
  const signalRows = isMadeOfSymbols
    ? { ...signalTable, rows: fromSymbols ?? [], lost: signalsLost(symbols.lost, fromSymbols ? undefined : yaml.placeOf(['data', 'symbols', 'tag'])) }
    : signalTable
  const tables = {
    devices,
    signals: memory('signals', [signalRows, devices], sink, () => asTheirDevices(signalRows, devices)),
    cards: table('cards'),
    parts: table('parts'),
    alarms: table('alarms'),
    formats: table('formats'),
  }
  const isSpare = spareIn(devices)
  const { spares, signals } = memory('spares', [tables.signals, devices], sink, () => ({
    spares: tables.signals.rows.filter(isSpare),
    signals: tables.signals.rows.filter((row) => !isSpare(row)),
  }))
  const register = table('drawings')
  const yamlList = <T extends { readable: boolean }>(
    name: 'energy' | 'hazards' | 'checkout',
    none: T,
    load: (source: SourceText, sink: Sink) => T,
  ) => {
    const path = file.data[name]?.file
    const noted = noteFirstError(sink)
    const isThere = path !== undefined && hasFile(path, ['data', name, 'file'], { machine, yaml, sink: noted.sink })
    const source = isThere ? read(machine, path, noted.sink) : undefined
    const list = source ? ofText(memory, `${name} ${language}`, source, noted.sink, (sink) => load(source, sink)) : none
    const place = noted.place() ?? yaml.placeOf(['data', name])
    return { ...list, lost: path === undefined || list.readable ? [] : [{ extent: 'list' as const, table: name, place }] }
  }
  const energy = yamlList('energy', noEnergy, (source, sink) => loadEnergy(source, language, sink))
  const hazards = yamlList('hazards', noHazards, (source, sink) => loadHazards(source, language, sink))
  const checkout = yamlList('checkout', noCheckout, loadCheckout)
  const training = loadOptional(machine, 'training.yaml', read)
  const trained = training ? ofText(memory, 'training', training, sink, (sink) => loadTraining(training, sink)) : noTraining
  const glossaries = [machine, shared]
    .flatMap((folder) => loadOptional(folder, 'glossary.yaml', read) ?? [])
    .map((source) => ofText(memory, 'glossary', source, sink, (sink) => loadGlossary(source, sink)))
  const sharedSource = loadOptional(shared, 'content.yaml', read)
  const sharedYaml = sharedSource && parseYaml(sharedSource, sink)
  const sharedFile = sharedYaml && checkShape(contentFile, sharedYaml, sink, 'the file')
  const written = { machine: language, shared: sharedFile?.language ?? language }
  const pages = loadPages(machine, shared, written, file.languages.translations ?? [], memory, sink)
  for (const [path, text] of pages.texts) texts.set(path, text)
  const own = memory('own', [file], sink, () => loadOwn(file, yaml))

  const sheets = register.rows.map((row) => loadSheets(row, { machine, drawingTexts, read, memory, sink }))
  const everything: Everything = {
    file,
    placeOf: yaml.placeOf,
    name: own.name,
    options: own.options,
    areas: own.areas,
    devices: tables.devices.rows,
    described: describedIn([...devices.rows, ...tables.parts.rows], memory, sink),
    deviceList: file.data.devices ? wholeTable(devices) : undefined,
    signals,
    spares,
    ioList: file.data.signals ? wholeTable(signalTable) : undefined,
    symbols: file.data.symbols ? wholeTable(symbols) : undefined,
    cards: tables.cards.rows,
    parts: tables.parts.rows,
    alarms: tables.alarms.rows,
    formats: tables.formats.rows,
    drawings: memory(
      'drawings',
      [register, ...sheets.flatMap(({ sheetList, surplus }) => [...sheetList, ...surplus.map(({ file }) => file)])],
      sink,
      () => register.rows.map((row, index): Drawing => ({ ...row, sheetList: [], surplus: [], ...sheets[index] })),
    ),
    points: energy.points,
    energy: energy.sources,
    hazards: file.data.hazards ? hazards.hazards : undefined,
    safeguards: hazards.safeguards,
    checkout: checkout.data,
    training: trained.training,
    terms: memory('terms', glossaries, sink, () => mergeTerms(glossaries.flatMap(({ terms }) => terms))),
    pages: pages.pages,
    references: [
      ...own.references,
      ...Object.entries({ ...tables, signals: { rows: signals } }).flatMap(([name, { rows }]) => tableReferences(name as TableName, rows)),
      ...tableReferences('signals', spares).filter(({ kind }) => kind !== 'tag'),
      ...tableReferences('drawings', register.rows),
      ...energy.references,
      ...hazards.references,
      ...checkout.references,
      ...trained.references,
    ],
    broken: [
      ...brokenRows('tag', tables.devices),
      ...brokenRows('signal', tables.signals),
      ...brokenRows('card', tables.cards),
      ...brokenRows('part', tables.parts),
      ...brokenRows('alarm', tables.alarms),
      ...brokenRows('drawing', register),
      ...pages.broken.flatMap(({ page, place }) => namesOf(page).map((name) => ({ name, place }))),
    ],
    unread: new Set<NamedThing>([
      ...unreadKinds(tables, register),
      // A row that could not be read may hold the terminal.
      ...(tables.signals.readable && tables.signals.broken.length === 0 ? [] : (['terminal'] as const)),
      ...(file.data.energy && !energy.readable ? (['energy', 'point'] as const) : []),
      ...(file.data.hazards && !hazards.readable ? (['hazard'] as const) : []),
      ...(training && !trained.readable ? (['role', 'skill'] as const) : []),
      ...(glossaries.every(({ readable }) => readable) ? [] : (['term'] as const)),
    ]),
    images: images(machine, shared),
    inputs: inputFiles(machine, shared, sink),
  }
  if (file.data.drawings && wholeTable(register)) reportUnlistedDrawings(everything.drawings, referencesOf(everything), machine, sink)
  const accepted = loadOptional(machine, 'accepted.yaml', read)
  const lost: LostData[] = [...Object.values(tables), register, energy, hazards, checkout].flatMap((list): LostData[] => list.lost)
  const { cards, parts, drawings, alarms, formats } = everything
  return loaded(linkUnits(everything, memory, sink, serial), {
    columns: Object.fromEntries(
      Object.entries({ ...tables, drawings: register }).flatMap(([name, { columns }]) => (columns.length > 0 ? [[name, columns]] : [])),
    ),
    rows: {
      ...noRows,
      ...{ devices: devices.rows, signals, symbols: symbols.rows },
      ...{ cards, parts, drawings, alarms, formats },
      ...{ energy: energy.sources, hazards: hazards.hazards },
    },
    lost: lost.filter((it) => it.extent !== 'row' || it.table !== 'signals' || !isSpare(it.row as Row<'signals'>)),
    settings: ruleSettings(file, yaml),
    acceptances: accepted ? loadAccepted(accepted, machine, shared, sink) : [],
  })
}

/** Every reference, whatever the unit. */
const referencesOf = ({ references, pages }: Everything) => [...references, ...pages.flatMap((page) => page.references)]

/** The rows of a table of which none is lost. */
const wholeTable = <T extends TableName>({ rows, broken, readable }: TableRows<T>) => (readable && broken.length === 0 ? rows : undefined)

/** Kinds whose table could not be read: one finding says so, and not one for each reference to it. */
function unreadKinds(
  tables: Readonly<Record<'devices' | 'cards' | 'parts' | 'alarms', { readable: boolean }>>,
  register: { readable: boolean },
): NamedThing[] {
  const kinds = { tag: tables.devices, card: tables.cards, part: tables.parts, alarm: tables.alarms, drawing: register } as const
  return (['tag', 'card', 'part', 'alarm', 'drawing'] as const).filter((kind) => !kinds[kind].readable)
}

/** What is lost of signals that are made of variables: the variable whose row is lost may be the signal of any device. */
function signalsLost(symbols: readonly LostData[], badPattern: Place | undefined): LostData[] {
  if (badPattern) return [{ extent: 'list', table: 'signals', place: badPattern }]
  return symbols.map(({ extent, place }) => ({ extent: extent === 'list' ? 'list' : 'rows', table: 'signals', place }))
}

const brokenRows = (kind: Reference['kind'] | 'signal', { broken }: { broken: readonly Located<string>[] }) =>
  broken.map(({ value, place }) => ({ name: `${kind}:${value}`, place }))

/** A signal is fitted where its device is fitted, unless its own row says otherwise. */
function asTheirDevices(signals: TableRows<'signals'>, devices: TableRows<'devices'>): TableRows<'signals'> {
  const damaged = devices.lost.flatMap((it) => (it.extent === 'row' ? [it.row as Partial<Row<'devices'>>] : []))
  const fits = new Map([...devices.rows, ...damaged].map((device) => [device.tag?.value, device.fits]))
  return { ...signals, rows: signals.rows.map((row) => (row.fits.length > 0 ? row : { ...row, fits: fits.get(row.tag.value) ?? [] })) }
}

/** Tells whether a row of the I/O list is a channel that is kept free: it names no device, and nothing or `Spare` stands there. */
function spareIn({ rows, broken }: TableRows<'devices'>): (row: Row<'signals'>) => boolean {
  const tags = new Set([...rows.map(({ tag }) => tag.value), ...broken.map(({ value }) => value)])
  return ({ tag }) => tag.value === '' || (saysSpare(tag.value) && !tags.has(tag.value))
}

/** A file that cannot be read is met twice, when it is read and when it is hashed. */
function distinct(sorted: readonly Finding[]): Finding[] {
  return sorted.filter((finding, index) => {
    const before = sorted[index - 1]
    return !before || compareFindings(before, finding) !== 0
  })
}

type Read = (folder: Folder, path: string) => ReturnType<typeof readText>

const loadOptional = (folder: Folder, path: string, read: Read) => (folder.size(path) === undefined ? undefined : read(folder, path))

/** A term of the machine replaces a shared term with the same id. */
function mergeTerms(terms: readonly Term[]): Term[] {
  const byId = new Map<string, Term>()
  for (const term of terms) if (!byId.has(term.id)) byId.set(term.id, term)
  return [...byId.values()].sort((a, b) => compare(a.id, b.id))
}
