import type { EnergySource } from '../../model/machine.ts'
import type { Words } from '../../model/words.ts'
import { address } from '../address.ts'
import { type Context, langOf } from '../context.ts'
import { rangeOf } from './fact.ts'
import { quantities, reactionLabel, spareLabel } from './said.ts'
import { energyText, waitText } from './stored-energy.ts'

export interface TableQuery {
  of: 'devices' | 'signals' | 'alarms' | 'parts' | 'energy' | 'formats' | 'isolation'
  area?: string
  type?: string
  spare?: string
}

export interface TableCell {
  text: string
  /** Language, where it is not that of the page. */
  lang?: string | undefined
  href?: string
  /** Set as a device label. */
  tag?: true
  mono?: true
}

export interface TableData {
  headings: string[]
  rows: TableCell[][]
}

/** A table of the machine's data, as a page asks for it. */
export function tableOf(context: Context, { of, area, type, spare }: TableQuery): TableData {
  const { machine, graph, labels, language, link, say } = context
  const words = (it: Words | undefined): TableCell => {
    const said = it && say(it)
    return said ? { text: said.text, lang: langOf(context, said) } : { text: '' }
  }
  const mono = (text: string | undefined): TableCell => ({ text: text ?? '', mono: true })
  const tagCell = (tag: string): TableCell => ({ text: tag, tag: true })
  const inArea = (tag: string) => area === undefined || graph.device(tag)?.area?.value === area
  switch (of) {
    case 'devices':
      return {
        headings: [labels.device, labels.description, labels.kind, labels.place],
        rows: machine.devices
          .filter((it) => area === undefined || it.area?.value === area)
          .map((it) => [tagCell(it.tag.value), words(it.description), words(it.kind), words(it.place)]),
      }
    case 'signals':
      return {
        headings: [labels.device, labels.address, labels.terminal, labels.wire, labels.card, labels.meaning, labels.range],
        rows: machine.signals
          .filter((it) => inArea(it.tag.value) && (type === undefined || it.type.value === type))
          .map((it) => [
            tagCell(it.tag.value),
            mono(it.address.value),
            mono(it.terminal?.value),
            mono(it.wire?.value),
            mono([it.card?.value, it.channel?.value].filter(Boolean).join('.')),
            words(it.meaning),
            { text: rangeOf(it) ?? '' },
          ]),
      }
    case 'alarms':
      return {
        headings: [labels.alarm, labels.description, labels.reaction],
        rows: machine.alarms
          .filter((it) => area === undefined || it.area?.value === area)
          .map((it) => [
            { text: it.number.value, href: link(address.alarm(it.number.value)), mono: true },
            words(it.text),
            { text: reactionLabel(labels, it.reaction.value) },
          ]),
      }
    case 'parts':
      return {
        headings: [labels.part, labels.description, labels.quantityFitted, labels.spareClass],
        rows: machine.parts
          .filter((it) => spare === undefined || it.spare?.value === spare)
          .map((it) => [
            { text: it.number.value, href: link(address.part(it.number.value)), mono: true },
            words(it.description),
            { text: `${it.quantity.value} ${it.unit?.value ?? ''}` },
            { text: it.spare ? spareLabel(labels, it.spare.value) : '' },
          ]),
      }
    case 'energy':
      return {
        headings: [labels.energy, labels.magnitude, labels.storedEnergy, labels.waitingTime, labels.hazard, labels.isolationPoint],
        rows: machine.energy
          .filter((it) => inAreas(it, area))
          .map((it) => [
            words(it.name),
            { text: quantities(it.magnitude) },
            { text: energyText(it, labels, language) ?? '' },
            { text: waitText(it, labels, language)?.text ?? '' },
            words(it.hazard),
            { text: it.isolation.map(({ point, tag }) => `${point.value} ${tag.value}`).join(', ') || labels.noIsolation },
          ]),
      }
    case 'isolation': {
      const points = machine.energy.filter((it) => inAreas(it, area)).flatMap((it) => it.isolation)
      // One device can cut off several sources; it is one point.
      const distinct = [...new Map(points.map((point) => [point.point.value, point])).values()]
      return {
        headings: [labels.isolationPoint, labels.device, labels.place, labels.turnTo, labels.lockWith],
        rows: distinct.map((point) => [
          mono(point.point.value),
          tagCell(point.tag.value),
          words(point.place),
          words(point.safe),
          words(point.hardware),
        ]),
      }
    }
    case 'formats': {
      const formats = [...new Set(machine.formats.map(({ format }) => format.value))]
      const settings = [...new Map(machine.formats.map((it) => [it.setting.value, it])).values()]
      return {
        headings: [labels.setting, labels.device, ...formats],
        rows: settings.map((it) => [
          words(it.description),
          it.tag ? tagCell(it.tag.value) : { text: '' },
          ...formats.map((format): TableCell => {
            const row = machine.formats.find((other) => other.format.value === format && other.setting.value === it.setting.value)
            return { text: row ? `${row.value.value}\u00a0${row.unit.value}` : '' }
          }),
        ]),
      }
    }
  }
}

function inAreas({ areas }: EnergySource, area: string | undefined): boolean {
  return area === undefined || areas.some(({ value }) => value === area)
}
