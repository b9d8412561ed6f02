import { masteryScore } from './cmi5-xml.ts'
import type { Course, CourseLesson } from './course.ts'
import { element, hrefOf, type XmlElement, xmlDocument, xmlId } from './xml.ts'

/** The manifest of a SCORM package, at the root of its zip. */
export const scormName = 'imsmanifest.xml'

/** What differs between the editions; the rest is the content packaging that both share. */
interface Edition {
  nameSpaces: Readonly<Record<string, string>>
  schemaVersion: string
  /** The attribute of a resource that says whether it reports. */
  typeAttribute: string
  /** Longest title that the edition takes, in characters. */
  longestTitle: number
  /** What an item says of its pass mark. */
  passMark(passPercent: number): XmlElement[]
}

/** SCORM 1.2, content aggregation model; IMS content packaging 1.1.2. Names and lengths from its public schemas. */
const scorm12: Edition = {
  nameSpaces: { xmlns: 'http://www.imsproject.org/xsd/imscp_rootv1p1p2', 'xmlns:adlcp': 'http://www.adlnet.org/xsd/adlcp_rootv1p2' },
  schemaVersion: '1.2',
  typeAttribute: 'adlcp:scormtype',
  longestTitle: 200,
  passMark: (passPercent) => [element('adlcp:masteryscore', {}, String(passPercent))],
}

/** SCORM 2004, 4th edition; IMS content packaging 1.1.4 and simple sequencing. Names from its public schemas. */
const scorm2004: Edition = {
  nameSpaces: {
    xmlns: 'http://www.imsglobal.org/xsd/imscp_v1p1',
    'xmlns:adlcp': 'http://www.adlnet.org/xsd/adlcp_v1p3',
    'xmlns:imsss': 'http://www.imsglobal.org/xsd/imsss',
  },
  schemaVersion: '2004 4th Edition',
  typeAttribute: 'adlcp:scormType',
  longestTitle: Number.POSITIVE_INFINITY,
  passMark: (passPercent) => [
    element(
      'imsss:sequencing',
      {},
      element(
        'imsss:objectives',
        {},
        element(
          'imsss:primaryObjective',
          { objectiveID: 'pass', satisfiedByMeasure: 'true' },
          element('imsss:minNormalizedMeasure', {}, String(masteryScore(passPercent))),
        ),
      ),
    ),
  ],
}

/** Lessons may be taken in any order: a course that a person knows in part is not closed to them. */
const freeChoice = element('imsss:sequencing', {}, element('imsss:controlMode', { choice: 'true', flow: 'true' }))

export function scorm12Manifest(course: Course): string {
  return manifest(course, scorm12, [])
}

export function scorm2004Manifest(course: Course): string {
  return manifest(course, scorm2004, [freeChoice])
}

function manifest({ id, title, lessons, files }: Course, edition: Edition, sequencing: readonly XmlElement[]): string {
  const launched = new Set(lessons.map(({ launch }) => launch))
  const titleOf = (text: string) => element('title', {}, shortened(text, edition.longestTitle))
  const item = (lesson: CourseLesson) =>
    element(
      'item',
      { identifier: xmlId('item', lesson.id), identifierref: xmlId('lesson', lesson.id) },
      titleOf(lesson.title),
      ...(lesson.passPercent === undefined ? [] : edition.passMark(lesson.passPercent)),
    )
  const resource = ({ id: lesson, launch }: CourseLesson) =>
    element(
      'resource',
      { identifier: xmlId('lesson', lesson), type: 'webcontent', [edition.typeAttribute]: 'sco', href: hrefOf(launch) },
      fileOf(launch),
      element('dependency', { identifierref: 'shared' }),
    )
  const shared = files.filter((file) => !launched.has(file)).map(fileOf)
  return xmlDocument(
    element(
      'manifest',
      { identifier: xmlId('course', id), version: '1', ...edition.nameSpaces },
      element('metadata', {}, element('schema', {}, 'ADL SCORM'), element('schemaversion', {}, edition.schemaVersion)),
      element(
        'organizations',
        { default: 'lessons' },
        element('organization', { identifier: 'lessons' }, titleOf(title), ...lessons.map(item), ...sequencing),
      ),
      element(
        'resources',
        {},
        ...lessons.map(resource),
        element('resource', { identifier: 'shared', type: 'webcontent', [edition.typeAttribute]: 'asset' }, ...shared),
      ),
    ),
  )
}

const fileOf = (path: string) => element('file', { href: hrefOf(path) })

/** The title on the page is whole; the list of the system takes no more. */
function shortened(text: string, longest: number): string {
  const signs = [...text]
  return signs.length <= longest ? text : `${signs.slice(0, longest - 1).join('')}…`
}
