import type { Course } from './course.ts'
import { nameUuid } from './name-uuid.ts'
import { element, hrefOf, type XmlElement, xmlDocument } from './xml.ts'

/** The course structure of a cmi5 package, at the root of its zip. Source: cmi5 1.0 (Quartz), sections 13 and 14. */
export const cmi5Name = 'cmi5.xml'

const nameSpace = 'https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd'

export function cmi5Xml({ id, title, description, language, lessons }: Course): string {
  const said = (name: string, text: string): XmlElement => element(name, {}, element('langstring', { lang: language }, text))
  const units = lessons.map((lesson) =>
    element(
      'au',
      {
        id: iri(`${id}/${lesson.id}`),
        moveOn: lesson.passPercent === undefined ? 'Completed' : 'CompletedAndPassed',
        masteryScore: lesson.passPercent === undefined ? undefined : String(masteryScore(lesson.passPercent)),
        launchMethod: 'AnyWindow',
      },
      said('title', lesson.title),
      said('description', lesson.description),
      element('url', {}, hrefOf(lesson.launch)),
    ),
  )
  const course = element('course', { id: iri(id) }, said('title', title), said('description', description))
  return xmlDocument(element('courseStructure', { xmlns: nameSpace }, course, ...units))
}

/** A name that no one else uses and that stays: nobody has to own a domain for it. */
function iri(name: string): string {
  return `urn:uuid:${nameUuid(name)}`
}

/** A share in percent as cmi5 and SCORM 2004 count it: 0 to 1, at most four decimals. */
export function masteryScore(passPercent: number): number {
  return Math.round(passPercent * 100) / 10_000
}
