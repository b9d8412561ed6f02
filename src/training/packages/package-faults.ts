import { fromXml } from 'xast-util-from-xml'

interface Found {
  name: string
  attributes: Record<string, string>
  text: string
}

/**
 * What no schema sees in the manifest of a package: ids that are there twice, a reference to nothing, a file that the
 * package does not hold. `files` are the paths in the package besides the manifest. Throws where the manifest is no XML.
 */
export function packageFaults(manifest: string, files: Iterable<string>): string[] {
  const elements = elementsOf(manifest)
  const held = new Set(files)
  const named = (name: string) => elements.filter((it) => it.name === name)
  const resources = new Set(named('resource').map(({ attributes }) => attributes.identifier ?? ''))
  const organizations = new Set(named('organization').map(({ attributes }) => attributes.identifier ?? ''))
  const missing = (href: string, owner: string) =>
    held.has(pathOf(href)) ? [] : [`${owner} names the file ${href}, and the package does not hold it`]
  return [
    ...twice(elements.flatMap(({ attributes }) => attributes.identifier ?? [])),
    ...twice([...named('course'), ...named('block'), ...named('au')].flatMap(({ attributes }) => attributes.id ?? [])),
    ...[...named('item'), ...named('dependency')].flatMap(({ name, attributes: { identifierref, identifier } }) =>
      identifierref === undefined || resources.has(identifierref)
        ? []
        : [`${identifier ?? name} refers to ${identifierref}, and there is no such resource`],
    ),
    ...named('organizations').flatMap(({ attributes }) =>
      attributes.default === undefined || organizations.has(attributes.default)
        ? []
        : [`the organization ${attributes.default} is the default and is not there`],
    ),
    ...[...named('resource'), ...named('file')].flatMap(({ name, attributes: { href, identifier } }) =>
      href === undefined ? [] : missing(href, identifier ?? name),
    ),
    ...named('url').flatMap(({ text }) => (/^[a-z][a-z0-9+.-]*:/i.test(text) ? [] : missing(text, 'a unit'))),
  ]
}

function elementsOf(xml: string): Found[] {
  const found: Found[] = []
  const visit = (node: ReturnType<typeof fromXml> | ReturnType<typeof fromXml>['children'][number]) => {
    if (node.type === 'element') {
      const attributes = Object.entries(node.attributes).map(([key, value]): [string, string] => [key, value ?? ''])
      const text = node.children.map((child) => (child.type === 'text' ? child.value : '')).join('')
      found.push({ name: node.name, attributes: Object.fromEntries(attributes), text: text.trim() })
    }
    if (node.type === 'element' || node.type === 'root') for (const child of node.children) visit(child)
  }
  visit(fromXml(xml))
  return found
}

function twice(ids: readonly string[]): string[] {
  const again = ids.filter((id, index) => ids.indexOf(id) !== index)
  return [...new Set(again)].map((id) => `the id ${id} is there twice`)
}

function pathOf(href: string): string {
  const [path = ''] = href.split(/[?#]/)
  return path.split('/').map(decodeURIComponent).join('/')
}
