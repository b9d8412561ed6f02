import type { Root } from 'mdast'
import type { Located, Place } from '../source/place.ts'
import type { SourceText } from '../source/source-text.ts'
import type { CheckoutData } from './checkout-data.ts'
import type { EnergyStore } from './energy-store.ts'
import type { Hazard, Safeguard } from './hazard.ts'
import type { InputFile } from './input-file.ts'
import type { JsxElement } from './mdx-elements.ts'
import type { BareNumber } from './prose/bare-numbers.ts'
import type { BareTag } from './prose/bare-tags.ts'
import type { Prose } from './prose/prose.ts'
import type { ReadTags } from './prose/tag-reader.ts'
import type { EnergyForm, IsolatingDevice, Proof } from './schema/energy-file.ts'
import type { MachineFile } from './schema/machine-file.ts'
import type { Collection, Frontmatter, Translation } from './schema/pages.ts'
import type { Row } from './schema/tables.ts'
import type { Sync } from './sync.ts'
import type { Training } from './training.ts'
import type { Words } from './words.ts'

export type Device = Row<'devices'>
export type Signal = Row<'signals'>
export type Card = Row<'cards'>
export type Part = Row<'parts'>
export type Alarm = Row<'alarms'>
export type ControllerSymbol = Row<'symbols'>
export type FormatSetting = Row<'formats'>

/** A text on a drawing sheet, in the units of the sheet's viewBox. */
export interface SheetText {
  text: string
  x: number
  y: number
  fontSize: number
  /** Clockwise from horizontal, in degrees. */
  angleDeg: number
  /** Where it is written: in an SVG its line and column, in a PDF the page as a line. */
  place: Place
}

export interface Sheet {
  number: number
  file: string
  /** The beginning of the sheet in its file: in a PDF the page as a line. */
  place: Place
  /** Whether there is such a file. */
  exists: boolean
  /** Whether it was read: false when the file is missing or broken. */
  readable: boolean
  /** Cleaned SVG: no scripts, no outside references. Written out when it is asked for: a check never asks. */
  svg(): string
  /** The page of a PDF that is the sheet, from 1, and the file's bytes. Undefined for an SVG sheet. */
  pdf?: { page: number; bytes(): Uint8Array }
  viewBox: { x: number; y: number; width: number; height: number }
  texts: readonly SheetText[]
}

export type Drawing = Row<'drawings'> & {
  /** One for each sheet of the register. */
  readonly sheetList: readonly Sheet[]
  /** Sheets that are there and not in the register: the beginning of each. */
  readonly surplus: readonly Place[]
}

export interface Area {
  id: Located<string>
  name: Words
  /** x, y, width, height on the plan, in the units of the plan drawing. */
  outline?: readonly [number, number, number, number]
}

/** A tag in place of a lock. */
export interface TagOut {
  at: Words
  reason: Words
  additional: Words | undefined
  proof: Words | undefined
  fasteningN: Located<number>
}

export interface IsolationPoint {
  point: Located<string>
  tag: Located<string>
  device: IsolatingDevice
  safe: Words
  service: Words
  place: Words
  hardware: Words
  lockable: boolean
  tagOut: TagOut | undefined
  fits: readonly Located<string>[]
}

export interface EnergySource {
  id: Located<string>
  form: EnergyForm
  name: Words
  magnitude: readonly { value: number; unit: Located<string> }[]
  areas: readonly Located<string>[]
  hazard: Words
  /** Hazards of the risk assessment that it brings, as written. */
  hazards: readonly Located<string>[]
  /** The source that feeds this one. */
  from: Located<string> | undefined
  /** The points that cut it off, as written. */
  pointNames: readonly Located<string>[]
  /** Those of them that energy.yaml has. */
  isolation: readonly IsolationPoint[]
  stored: boolean
  /** All of one kind; empty where the author gave nothing to compute with. */
  stores: readonly EnergyStore[]
  /** Time on the notice at the enclosure; undefined where it carries none. */
  delayNoticeS: Located<number> | undefined
  reaccumulates: boolean
  watch: Words | undefined
  dissipate: Words | undefined
  waitS: number | undefined
  waitBasis: Words | undefined
  verify: { by: readonly Proof[]; method: Words; expect: Words; noVoltageTest: Words | undefined; tags: readonly Located<string>[] }
  fits: readonly Located<string>[]
  /** Where a key of it stands: `placeOf('waitS')`; its first key where it is absent. */
  placeOf(key: string): Place
}

export interface Heading {
  depth: number
  text: string
  anchor: string
  place: Place
}

/** The body of a page in one language. */
export interface PageText {
  language: string
  source: SourceText
  body: Root
  /** Every element of a name in the body, in the order of the text. */
  elements(name: string): readonly JsxElement[]
  headings: readonly Heading[]
  /** Every anchor of the page: headings and written anchors. */
  anchors: ReadonlySet<string>
}

/** A translation of a page: its words, and where a value of its frontmatter stands. */
export interface TranslatedText extends PageText {
  frontmatter: Translation
  placeOf(path: readonly (string | number)[]): Place
  /** Anchors of the source that lead to the head of the translation, because nothing tells where else. */
  anchorsAtHead: ReadonlySet<string>
  /** How it stands to its source. */
  sync: Sync
}

export interface Page<C extends Collection = Collection> extends PageText {
  /** `<collection>/<name>`, as written in references. */
  id: string
  collection: C
  name: string
  /** Written for every machine, in `content/`. */
  shared: boolean
  frontmatter: Frontmatter[C]
  /** Where a value of the frontmatter stands: `placeOf(['needs', 0])`; the owner's place when it is absent. */
  placeOf(path: readonly (string | number)[]): Place
  translations: ReadonlyMap<string, TranslatedText>
  /** Languages whose file is there and cannot be read. */
  brokenTranslations: ReadonlySet<string>
}

export type AnyPage = { [C in Collection]: Page<C> }[Collection]

/** A page in every language that it is written in, the source language first. */
export function textsOf(page: AnyPage): PageText[] {
  return [page, ...page.translations.values()]
}

/** Whether a page can be read in a language. */
export function isIn(page: AnyPage, language: string): boolean {
  return page.language === language || page.translations.has(language)
}

export type NamedThing =
  | 'tag'
  | 'part'
  | 'drawing'
  | 'alarm'
  | 'page'
  | 'image'
  | 'term'
  | 'caution'
  | 'area'
  | 'card'
  | 'energy'
  | 'point'
  | 'hazard'
  | 'option'
  | 'role'
  | 'skill'
  | 'lesson'
  | 'lockout'
  | 'terminal'

/** A place where an author names something that the machine must have. */
export interface Reference {
  kind: NamedThing
  /** As written. */
  id: string
  place: Place
  /** The page, in the language it was read, that holds the reference; absent for a data file. */
  page?: { page: AnyPage; language: string }
  /** Anchor of a reference to a page, as written after `#`. */
  anchor?: Located<string>
  /** Sheet of a reference to a drawing. */
  sheet?: Located<number>
  /** Zone of the sheet, as written. */
  zone?: Located<string>
  /** Options under which the place that refers is kept; empty: always. */
  fits: readonly string[]
  /** It stands in a list for every unit: a unit that does not have the thing leaves it out. */
  listed?: true
}

export interface Term {
  id: string
  byLanguage: Readonly<Record<string, { term: string; definition: string; synonyms: readonly string[]; instead: readonly string[] }>>
  place: Place
}

/** A unit of the machine without what is read out of its words. */
export type LinkedMachine = Omit<Machine, 'prose' | 'bareTags' | 'bareNumbers' | 'readTags'>

/** One unit of the machine: everything fitted to it, linked. Nothing changes after it is made. */
export interface Machine {
  file: MachineFile
  /** Where a value of machine.yaml stands. */
  placeOf(path: readonly (string | number)[]): Place
  unit: { serial: string; fitted: readonly string[] }
  sourceLanguage: string
  /** Source language first. */
  languages: readonly string[]
  /** What the machine is. */
  name: Words
  /** Option id -> what it is. */
  options: ReadonlyMap<string, Words>
  devices: readonly Device[]
  /** What devices and parts are called, whatever the unit, by language. */
  described: Readonly<Record<string, readonly string[]>>
  /** Every row of the device list, whatever the unit; undefined where there is none or a row could not be read. */
  deviceList: readonly Device[] | undefined
  signals: readonly Signal[]
  /** Rows of the I/O list for channels that are kept free. Their tag is empty or says so. */
  spares: readonly Signal[]
  /** Every row of the I/O list, whatever the unit; undefined where there is none or a row could not be read. */
  ioList: readonly Signal[] | undefined
  /** Variables of the controller; undefined where there is no list of them or a row of it could not be read. */
  symbols: readonly ControllerSymbol[] | undefined
  cards: readonly Card[]
  parts: readonly Part[]
  drawings: readonly Drawing[]
  alarms: readonly Alarm[]
  formats: readonly FormatSetting[]
  areas: readonly Area[]
  /** Isolation points of this unit, in the order of energy.yaml. */
  points: readonly IsolationPoint[]
  energy: readonly EnergySource[]
  /** Hazards of the risk assessment; undefined where machine.yaml names no list of them. */
  hazards: readonly Hazard[] | undefined
  /** Protective devices with the distances at which they stand, of devices of this unit. */
  safeguards: readonly Safeguard[]
  /** What devices and cards should read; undefined where machine.yaml names no file of it, or it cannot be read. */
  checkout: CheckoutData | undefined
  pages: readonly AnyPage[]
  terms: readonly Term[]
  training: Training
  /** Pictures that pages may show: path from the machine folder or from `content/` -> file on disk. */
  images: ReadonlyMap<string, string>
  references: readonly Reference[]
  /**
   * Names that exist in the folder and are not in this unit: `<kind>:<id>` -> why.
   * `left-out`: the options do not fit; `broken`: its own row or page has an error that is reported there.
   * `signal:<tag>` is a row of the I/O list that could not be read.
   */
  absent: ReadonlyMap<string, { reason: 'left-out' | 'broken'; place: Place; fits: readonly string[] }>
  /** Kinds whose list could not be read: nothing is said to be unknown in it. */
  unread: ReadonlySet<NamedThing>
  /** Every text that writers wrote, page by page and then the data. Read when it is first asked for. */
  prose(): readonly Prose[]
  /** The bare tags in it; none where the device list could not be read. */
  bareTags(): readonly BareTag[]
  /** The bare numbers of drawings, parts and alarms in it. */
  bareNumbers(): readonly BareNumber[]
  /** Reads the bare tags in any text; none where the device list could not be read. */
  readTags: ReadTags
  /** The input files that this unit is made of, with their hashes, sorted by path: of the shared content those that it takes. */
  inputs: readonly InputFile[]
}
