import { readdirSync, readFileSync } from 'node:fs'
import { validateXML } from 'xmllint-wasm'

const fixtures = 'tests/fixtures/packages'
const scormFolder = process.env.FETTLE_SCORM_SCHEMAS ?? fixtures

/** The schemas of one edition of SCORM cover a part each, so one that imports them all judges a manifest. */
const imported = {
  'scorm-1.2': {
    'http://www.imsproject.org/xsd/imscp_rootv1p1p2': 'imscp_rootv1p1p2.xsd',
    'http://www.adlnet.org/xsd/adlcp_rootv1p2': 'adlcp_rootv1p2.xsd',
  },
  'scorm-2004': {
    'http://www.imsglobal.org/xsd/imscp_v1p1': 'imscp_v1p1.xsd',
    'http://www.adlnet.org/xsd/adlcp_v1p3': 'adlcp_v1p3.xsd',
    'http://www.imsglobal.org/xsd/imsss': 'imsss_v1p0.xsd',
  },
} as const

/** What is wrong with a manifest against the schemas of its form; empty where it is valid. */
export async function schemaFaults(xml: string, form: 'cmi5' | keyof typeof imported): Promise<string[]> {
  const schema = form === 'cmi5' ? readFileSync(`${fixtures}/CourseStructure.xsd`, 'utf8') : combining(form)
  const preload = form === 'cmi5' ? [] : schemaFiles(`${scormFolder}/${form}`)
  const { errors } = await validateXML({ xml: [{ fileName: 'manifest.xml', contents: xml }], schema: [schema], preload })
  return errors.map(({ message }) => message)
}

function combining(form: keyof typeof imported): string {
  const imports = Object.entries(imported[form]).map(([nameSpace, file]) => `<xs:import namespace="${nameSpace}" schemaLocation="${file}"/>`)
  return `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">${imports.join('')}</xs:schema>`
}

function schemaFiles(dir: string): { fileName: string; contents: string }[] {
  const names = readdirSync(dir).filter((name) => name.endsWith('.xsd'))
  return names.map((fileName) => ({ fileName, contents: readFileSync(`${dir}/${fileName}`, 'utf8') }))
}
