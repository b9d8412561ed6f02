import type { AnyPage, PageText, Reference, TranslatedText } from '../model/machine.ts'
import { elementsByName } from '../model/mdx-elements.ts'
import { pageReferences } from '../model/page-references.ts'
import { type Collection, collections, pageSchemas, translationSchema } from '../model/schema/pages.ts'
import { type Place, startOfFile } from '../source/place.ts'
import { alignAnchors } from './align-anchors.ts'
import { type BodyReference, readBody } from './body.ts'
import { readText } from './decode.ts'
import type { Folder } from './folder.ts'
import { loadRules, type Sink } from './load-rules.ts'
import { parseMdx } from './mdx.ts'
import { type Memory, ofText } from './memory.ts'
import { checkShape } from './shape.ts'
import { syncOf } from './sync.ts'
import type { YamlValue } from './yaml.ts'

/** A page with the references that stand in it, in all its languages. */
export interface LoadedPage {
  page: AnyPage
  references: readonly Reference[]
}

export interface LoadedPages {
  pages: readonly LoadedPage[]
  /** Pages that are there and cannot be used because of an error that has been reported. */
  broken: readonly { page: Pick<AnyPage, 'id' | 'collection' | 'name'>; place: Place }[]
  texts: ReadonlyMap<string, string>
}

interface PageFile {
  folder: Folder
  path: string
  collection: Collection
  name: string
  /** Empty for the source language. */
  language: string
  shared: boolean
}

/** Languages in which the pages are written that are no translations. */
export interface SourceLanguages {
  machine: string
  shared: string
}

/** Reads every page of a machine and of the shared content; a page of the machine replaces a shared one. */
export function loadPages(
  machine: Folder,
  shared: Folder,
  sourceLanguages: SourceLanguages,
  translations: readonly string[],
  memory: Memory,
  sink: Sink,
): LoadedPages {
  const files = [...pageFiles(machine, 'pages/', false, sink), ...pageFiles(shared, '', true, sink)]
  const pages: LoadedPage[] = []
  const broken: LoadedPages['broken'][number][] = []
  const texts = new Map<string, string>()
  const seen = new Map<string, PageFile>()
  const kept: PageFile[] = []
  for (const file of files) {
    const key = `${file.collection}/${file.name}.${file.language}`.toLowerCase()
    const first = seen.get(key)
    if (first && first.shared === file.shared) {
      sink(loadRules.duplicatePage, {
        message: `this would be the same page as \`${first.folder.label}${first.path}\``,
        place: startOf(file),
        related: [{ label: 'first file', place: startOf(first) }],
        help: 'rename one of them',
      })
      if (file.language === '') broken.push({ page: identityOf(file), place: startOf(file) })
      continue
    }
    if (first) continue
    seen.set(key, file)
    kept.push(file)
  }
  const sources = kept.filter(({ language }) => language === '')
  const translationsOf = Map.groupBy(
    kept.filter(({ language }) => language !== ''),
    keyOf,
  )
  const sourceOf = new Map(sources.map((file) => [identityOf(file).id, file]))
  for (const file of sources) {
    const others = translationsOf.get(keyOf(file)) ?? []
    const loaded = loadPage(file, others, file.shared ? sourceLanguages.shared : sourceLanguages.machine, texts, memory, sink)
    if (loaded) pages.push(loaded)
    else broken.push({ page: identityOf(file), place: startOf(file) })
  }
  const gone = new Set(broken.map(({ page }) => page.id))
  for (const file of kept) {
    if (file.language === '') continue
    const source = sourceOf.get(identityOf(file).id)
    if (source?.shared === file.shared) {
      if (!file.shared && !translations.includes(file.language))
        sink(loadRules.strayFile, {
          message: `machine.yaml lists no translation into \`${file.language}\``,
          place: startOf(file),
          help: 'add the language under `languages.translations`, or remove the file',
        })
      continue
    }
    if (gone.has(identityOf(file).id)) continue
    // A shared translation of a page that the machine replaces belongs to the shared source, which is not read.
    if (source) continue
    sink(loadRules.orphanTranslation, {
      message: `there is no \`${file.name}.mdx\` to translate`,
      place: startOf(file),
      help: 'write the page in the source language first, or correct the file name',
    })
  }
  return { pages, broken, texts }
}

const identityOf = ({ collection, name }: PageFile) => ({ id: `${collection}/${name}`, collection, name })
/** What a page and its translations have in common. */
const keyOf = (file: PageFile) => `${identityOf(file).id} ${file.shared}`
const startOf = ({ folder, path }: PageFile): Place => startOfFile(folder.label + path)

function pageFiles(folder: Folder, root: string, shared: boolean, sink: Sink): PageFile[] {
  const files: PageFile[] = []
  for (const path of folder.list()) {
    if (!path.startsWith(root)) {
      if (/\.mdx$/.test(path))
        sink(loadRules.strayFile, {
          message: `\`${path}\` lies outside \`pages/\` and is not read`,
          place: startOfFile(folder.label + path),
          help: `move it to pages/<collection>/; the collections are ${collections.join(', ')}`,
        })
      continue
    }
    const [collection = '', ...rest] = path.slice(root.length).split('/')
    const known = collections.find((it) => it === collection)
    const place = startOfFile(folder.label + path)
    if (!known) {
      if (/\.mdx?$/.test(path) || (root !== '' && rest.length > 0))
        sink(loadRules.strayFile, {
          message: `\`${collection}\` is not a folder that pages are read from`,
          place,
          help: `move it to one of ${collections.join(', ')}`,
        })
      continue
    }
    const [, name, language = ''] = /^([^.]+)(?:\.([a-z]{2}))?\.mdx$/.exec(rest.join('/')) ?? []
    if (name === undefined) {
      sink(loadRules.strayFile, {
        message: `\`${rest.join('/')}\` is not read as a page`,
        place,
        help: 'a page is `<name>.mdx`, its translation `<name>.<language>.mdx`',
      })
      continue
    }
    files.push({ folder, path, collection: known, name, language, shared })
  }
  return files
}

function loadPage(
  file: PageFile,
  others: readonly PageFile[],
  sourceLanguage: string,
  texts: Map<string, string>,
  memory: Memory,
  sink: Sink,
): LoadedPage | undefined {
  const own = loadText(file, sourceLanguage, texts, memory, sink)
  if (!own) return undefined
  const translated = others.map(({ language, ...other }) => ({
    language,
    own: loadText({ ...other, language }, language, texts, memory, sink, own.yaml),
  }))
  const from = [own, ...translated.flatMap(({ language, own }) => [language, own])]
  return memory(`page ${file.folder.label}${file.path}`, from, sink, (sink) => pageOf(file, own, translated, sink))
}

function pageOf(
  file: PageFile,
  { yaml, text, references }: LoadedText,
  others: readonly { language: string; own: LoadedText | undefined }[],
  sink: Sink,
): LoadedPage | undefined {
  const frontmatter = checkShape(pageSchemas[file.collection], yaml, sink, 'the page')
  const translations = new Map<string, TranslatedText>()
  const brokenTranslations = new Set<string>()
  const translated: [language: string, references: readonly BodyReference[]][] = []
  for (const { language, own } of others) {
    const words = own && checkShape(translationSchema, own.yaml, sink, 'the translation')
    if (!own || !words) {
      brokenTranslations.add(language)
      continue
    }
    const sync = syncOf({ yaml, ...text }, { yaml: own.yaml, ...own.text }, words.source)
    translations.set(language, { ...alignAnchors(own.text, text), frontmatter: words, placeOf: own.yaml.placeOf, sync })
    translated.push([language, own.references])
  }
  if (!frontmatter) return undefined
  const fits = 'fits' in frontmatter ? (frontmatter.fits ?? []) : []
  // The schema was chosen by the collection, so frontmatter and collection belong together.
  const page = {
    ...text,
    id: `${file.collection}/${file.name}`,
    collection: file.collection,
    name: file.name,
    shared: file.shared,
    frontmatter,
    placeOf: yaml.placeOf,
    translations,
    brokenTranslations,
  } as unknown as AnyPage
  const named = frontmatterReferences(file.collection, frontmatter, yaml)
  const all: typeof translated = [[text.language, [...named, ...references]], ...translated]
  return {
    page,
    references: all.flatMap(([language, list]) => list.map((it): Reference => ({ ...it, fits: it.fits ?? fits, page: { page, language } }))),
  }
}

interface LoadedText {
  yaml: YamlValue
  text: PageText
  references: BodyReference[]
}

function loadText(
  file: PageFile,
  language: string,
  texts: Map<string, string>,
  memory: Memory,
  sink: Sink,
  sourceFrontmatter?: YamlValue,
): LoadedText | undefined {
  const source = readText(file.folder, file.path, sink)
  if (!source) return undefined
  texts.set(source.file, source.text)
  const { frontmatter, body } = ofText(memory, 'mdx', source, sink, (sink) => parseMdx(source, sink))
  const perDevice = isPerDevice(file, sourceFrontmatter ?? frontmatter)
  const facts = body && ofText(memory, `body ${perDevice}`, source, sink, (sink) => readBody(body, source, file.collection, perDevice, sink))
  if (!frontmatter || !body || !facts) return undefined
  return memory(`text ${source.file}`, [language, frontmatter, body, facts], sink, () => {
    const { headings, anchors, references } = facts
    return { yaml: frontmatter, text: { language, source, body, headings, anchors, elements: elementsByName(body) }, references }
  })
}

/** Whether a page is made for each device of a technology; a translation is what its source is. */
function isPerDevice({ collection }: PageFile, frontmatter: YamlValue | undefined): boolean {
  const value = frontmatter?.value
  return collection === 'lessons' && typeof value === 'object' && value !== null && 'technology' in value
}

/** What the frontmatter names, by the table of its collection. */
function frontmatterReferences(collection: Collection, frontmatter: object, yaml: YamlValue): BodyReference[] {
  const references: BodyReference[] = []
  const add = (kind: Reference['kind'], value: unknown, path: readonly (string | number)[]) => {
    // `tags` and `energy` list what the page is about on any unit; the text itself may not speak of what is not fitted.
    const listed = path[0] === 'tags' || path[0] === 'energy'
    if (typeof value === 'string') references.push({ kind, id: value, place: inQuotes(yaml, path), ...(listed ? { listed } : {}) })
  }
  const values = new Map<string, unknown>(Object.entries(frontmatter))
  for (const [key, kind] of Object.entries(pageReferences[collection])) {
    const [first = '', property] = key.split('.')
    const value = values.get(first)
    const owners = Array.isArray(value) ? value.map((item, index) => ({ item, path: [first, index] })) : [{ item: value, path: [first] }]
    for (const { item, path } of owners) {
      const named = property === undefined ? item : item?.[property]
      const at = property === undefined ? path : [...path, property]
      if (Array.isArray(named)) for (const [index, each] of named.entries()) add(kind, each, [...at, index])
      else add(kind, named, at)
    }
  }
  return references
}

/** The place of a text value without its quotes. */
export function inQuotes(yaml: YamlValue, path: readonly (string | number)[]): Place {
  const place = yaml.placeOf(path)
  if (!/^["']/.test(yaml.written(path) ?? '') || place.line !== place.endLine) return place
  return { ...place, column: place.column + 1, endColumn: place.endColumn - 1 }
}
