import type { Element, Nodes, Root } from 'xast'
import { fromXml } from 'xast-util-from-xml'
import { startOfFile } from '../../source/place.ts'
import type { SourceText } from '../../source/source-text.ts'
import { loadRules, type Sink } from '../load-rules.ts'
import type { Cell, Rows, TableRow } from '../rows.ts'
import { xmlFault } from '../xml-fault.ts'

const columns = ['name', 'address', 'type', 'comment'] as const

/**
 * The variables of a PLCopen XML project as a table with the columns name, address, type and comment: all global
 * ones, and those of programs that have an address. Undefined, with a finding, when there is none to read.
 * Source: PLCopen TC6 XML 2.01 and IEC 61131-10, from memory; names of elements in upper or lower case.
 */
export function parsePlcopen(source: SourceText, sink: Sink): Rows | undefined {
  const refuse = (message: string, offset: number, help: string) => {
    sink(loadRules.brokenVariableList, { message, place: source.place(offset, offset + 1), note: 'nothing in it was checked', help })
    return undefined
  }
  let tree: Root
  try {
    tree = fromXml(source.text)
  } catch (error) {
    const { reason, offset } = xmlFault(error, source)
    return refuse(`the variable list is not valid XML: ${reason}`, offset, 'export it again from the programming system')
  }
  const project = tree.children.find(isElement)
  if (!project || nameOf(project) !== 'project')
    return refuse('the file is no PLCopen XML: its first element is no `project`', 0, 'export the project or its global variables as PLCopen XML')
  const records: TableRow[] = []
  collect(project, false, (variable, isGlobal) => {
    const record = rowOf(variable, source)
    const [, address] = record.cells
    if (isGlobal || address?.value !== '') records.push(record)
  })
  const start = startOfFile(source.file)
  return {
    header: columns.map((value) => ({ value, place: start })),
    records,
    beyond: [],
    start,
    columnsFrom: 'the columns are those of a PLCopen XML variable',
    columnName: (index) => columns[index] ?? '',
    surplusHelp: '',
    headingHelp: 'name the file under `data.symbols`: PLCopen XML holds variables',
  }
}

const isElement = (node: Nodes): node is Element => node.type === 'element'
const nameOf = ({ name }: Element) => name.slice(name.indexOf(':') + 1).toLowerCase()

/** Every variable below an element, in the order of the file, and whether it is a global one. */
function collect(element: Element, isGlobal: boolean, take: (variable: Element, isGlobal: boolean) => void): void {
  for (const child of element.children.filter(isElement)) {
    if (nameOf(child) === 'variable') take(child, isGlobal)
    else collect(child, isGlobal || nameOf(child) === 'globalvars', take)
  }
}

function rowOf(variable: Element, source: SourceText): TableRow {
  const child = (name: string) => variable.children.filter(isElement).find((it) => nameOf(it) === name)
  const address = child('address')
  const type = child('type')
  const documentation = child('documentation')
  const cells: Cell[] = [
    attributeCell(variable, 'name', source),
    attributeCell(address && variable.attributes.address === undefined ? address : variable, 'address', source),
    { value: type ? typeOf(type) : '', place: placeOf(type ?? variable, source) },
    { value: documentation ? textOf(documentation).trim().replace(/\s+/g, ' ') : '', place: placeOf(documentation ?? variable, source) },
  ]
  return { cells, place: placeOf(variable, source), sound: true }
}

/** The type of a variable: an element of that name, `<derived name="T"/>`, or a text. */
function typeOf(type: Element): string {
  const inner = type.children.find(isElement)
  return inner ? (inner.attributes.name ?? (textOf(inner).trim() || nameOf(inner).toUpperCase())) : textOf(type).trim()
}

const textOf = (node: Nodes): string => ('children' in node ? node.children.map(textOf).join('') : 'value' in node ? (node.value ?? '') : '')

function placeOf({ position }: Element, source: SourceText) {
  return source.place(position?.start.offset ?? 0, position?.end.offset ?? 0)
}

/** An attribute and the place between its quotes; the opening tag was accepted by the parser, so that this scan is certain. */
function attributeCell(element: Element, name: string, source: SourceText): Cell {
  const start = element.position?.start.offset ?? 0
  const attribute = /\s*(?:([^\s=/>]+)\s*=\s*("[^"]*"|'[^']*'))?/y
  attribute.lastIndex = start + 1 + element.name.length
  for (let found = attribute.exec(source.text); found?.[2] !== undefined; found = attribute.exec(source.text)) {
    const end = attribute.lastIndex - 1
    if (found[1] === name) return { value: element.attributes[name] ?? '', place: source.place(end - (found[2].length - 2), end) }
  }
  return { value: '', place: source.place(start, start + 1 + element.name.length) }
}
