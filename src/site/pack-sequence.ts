import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import type { Graph } from '../model/graph.ts'
import type { Machine, Page } from '../model/machine.ts'
import { passMark } from '../model/pass-mark.ts'
import type { TrainingFile } from '../model/schema/training-file.ts'
import { speak } from '../model/words.ts'
import { compare } from '../source/place.ts'
import { cmi5Name, cmi5Xml } from '../training/packages/cmi5-xml.ts'
import type { Course, CourseLesson } from '../training/packages/course.ts'
import { launchPage, type PackageFormat } from '../training/packages/launch-page.ts'
import { packageFaults } from '../training/packages/package-faults.ts'
import { scorm12Manifest, scorm2004Manifest, scormName } from '../training/packages/scorm-manifest.ts'
import { address, relativeLink, slug } from './address.ts'
import { bundling } from './bundling.ts'
import { packPages } from './packed-pages.ts'
import { pathIn, type SitePage } from './site-map.ts'
import { labelsOf } from './words/labels.ts'
import { officeWords } from './words/office.ts'

export interface PackInput {
  machine: Machine
  graph: Graph
  pages: readonly SitePage[]
  /** The written site, with what `writeLaunchAssets` adds. */
  siteDir: string
  sequence: TrainingFile['sequences'][number]
  format: PackageFormat
  language: string
}

const manifests = {
  cmi5: [cmi5Name, cmi5Xml],
  'scorm-1.2': [scormName, scorm12Manifest],
  'scorm-2004': [scormName, scorm2004Manifest],
} as const

/** Writes the script and the styles of launch pages beside those of the site. */
export async function writeLaunchAssets(siteDir: string): Promise<void> {
  const here = fileURLToPath(new URL('.', import.meta.url))
  await build({
    ...bundling,
    format: 'iife',
    entryPoints: [join(here, 'scripts/training/report-to/launch.ts')],
    outfile: join(siteDir, 'assets/launch.js'),
  })
  await build({ ...bundling, entryPoints: [join(here, 'styles/launch.css')], outfile: join(siteDir, 'assets/launch.css') })
  // The script holds the hash of @noble/hashes: its licence (MIT) goes with every copy.
  const hashes = dirname(createRequire(import.meta.url).resolve('@noble/hashes/sha2.js'))
  copyFileSync(join(hashes, 'LICENSE'), join(siteDir, 'assets/launch-licence.txt'))
}

/** What every package takes from the site, besides what its pages load. */
const ownAssets = ['site.css', 'older.css', 'display.css', 'display.js', 'launch.css', 'launch.js', 'launch-licence.txt']

/** The lessons of a sequence; the check lets none pass that the unit does not have. */
function lessonsOf({ id, lessons }: TrainingFile['sequences'][number], graph: Graph): Page<'lessons'>[] {
  return lessons.map((name) => {
    const page = graph.page(`lessons/${name}`)
    if (page?.collection !== 'lessons') throw new Error(`the sequence ${id} names the lesson ${name}, and there is none`)
    return page
  })
}

/**
 * Writes the files of a package with the lessons of a sequence into `dir`: a launch page a lesson, the pages of the lessons
 * (of a lesson that is made for devices, those of all its devices), what these lead to by one link, and the manifest.
 * Throws where the manifest does not agree with the files.
 */
export function packSequence(input: PackInput, dir: string): void {
  const { machine, graph, siteDir, sequence, language, format } = input
  const lessons = lessonsOf(sequence, graph)
  const roots = lessons.flatMap((page) => pathsOf(page, graph).map((it) => pathIn(machine, language, it)))
  const packed = packPages(roots, (path) => readFileSync(join(siteDir, path), 'utf8'), followed(input))
  const files = new Map<string, string | undefined>(packed.pages)
  const fonts = readdirSync(join(siteDir, 'assets/fonts')).map((name) => `assets/fonts/${name}`)
  for (const asset of [...ownAssets.map((name) => `assets/${name}`), ...fonts, ...packed.assets]) files.set(asset, undefined)
  const courseLessons = lessons.map((page): CourseLesson => {
    const lesson = lessonOf(page, language)
    files.set(lesson.launch, launched(page, lesson, input))
    return lesson
  })
  const course: Course = { ...named(input), language, lessons: courseLessons, files: [...files.keys()].sort(compare) }
  const [manifestName, write] = manifests[format]
  const manifest = write(course)
  const faults = packageFaults(manifest, course.files)
  if (faults.length > 0) throw new Error(`the package does not agree with its manifest:\n${faults.join('\n')}`)
  for (const [path, text] of [...files, [manifestName, manifest] as const]) {
    mkdirSync(dirname(join(dir, path)), { recursive: true })
    if (text === undefined) copyFileSync(join(siteDir, path), join(dir, path))
    else writeFileSync(join(dir, path), text)
  }
}

function pathsOf(page: Page<'lessons'>, graph: Graph): string[] {
  return [address.page(page.id), ...graph.devicesOfLesson(page).map(({ tag }) => address.lessonFor(page.name, tag.value))]
}

/** What a lesson may lead to: things and pages of the manual. Lists lead on to everything, and another lesson is opened by its own name. */
function followed({ graph, pages, language }: PackInput): (path: string) => boolean {
  const kinds = new Set(['device', 'alarm', 'part', 'drawing', 'area', 'glossary', 'page'])
  const own = pages.filter((page) => page.language === language && kinds.has(page.view.kind))
  const paths = own.filter(({ view }) => view.kind !== 'page' || graph.page(view.id)?.collection !== 'lessons').map(({ path }) => path)
  const known = new Set(paths)
  return (path) => known.has(path)
}

function lessonOf(page: Page<'lessons'>, language: string): CourseLesson {
  const { title, summary, objectives } = page.translations.get(language)?.frontmatter ?? page.frontmatter
  return {
    id: page.name,
    title,
    description: summary ?? (objectives ?? page.frontmatter.objectives).join('; '),
    launch: `launch/${slug(page.name)}.html`,
    passPercent: passMark(page),
  }
}

function named({ machine, sequence, language }: PackInput): Pick<Course, 'id' | 'title' | 'description'> {
  const labels = labelsOf(language)
  const { file, unit } = machine
  const say = (words: typeof sequence.name) => (typeof words === 'string' ? words : (words[language] ?? words[machine.sourceLanguage] ?? sequence.id))
  const facts = [
    speak(machine.name, language, machine.sourceLanguage).text,
    file.model,
    `${labels?.serial} ${unit.serial}`,
    `${labels?.revision} ${file.revision}`,
  ]
  return { id: [file.id, unit.serial, sequence.id, language].join('/'), title: say(sequence.name), description: facts.join(' · ') }
}

function launched(page: Page<'lessons'>, { id, title, launch, passPercent }: CourseLesson, { machine, format, language }: PackInput): string {
  const words = officeWords(language)
  if (!words) throw new Error(`the launch page has no words for the language ${language}`)
  const { done, again, close, back, practical, ...said } = words
  const judged = page.frontmatter.practical !== undefined || page.frontmatter.signOff !== undefined
  return launchPage({
    format,
    language,
    lesson: id,
    title,
    page: relativeLink(launch, pathIn(machine, language, address.page(page.id))),
    asks: passPercent !== undefined,
    remark: judged ? practical : undefined,
    words: { done, again, close, back },
    said,
    assets: relativeLink(launch, 'assets/'),
  })
}
