import type { Rule } from '../rule.ts'

export const positionOutsideArea: Rule = {
  id: 'position-outside-area',
  severity: 'note',
  summary: 'A device is placed outside its own area and inside another one.',
  why: 'The plan and the list send the reader to two different places.',
  source: 'house rule',

  *check({ devices, areas }) {
    for (const { tag, area: own, x, y } of devices) {
      const outline = areas.find(({ id }) => id.value === own?.value)?.outline
      if (!own || !x || !y || !outline || holds(outline, x.value, y.value)) continue
      // Beside every outline a device may hang on the frame of its area.
      const other = areas.find(({ outline: around }) => around && holds(around, x.value, y.value))
      if (!other) continue
      yield {
        message: `\`${tag.value}\` is of area \`${own.value}\`, and lies in \`${other.id.value}\` on the plan`,
        place: own.place,
        related: [
          { label: 'its position', place: x.place },
          { label: `\`${other.id.value}\` is drawn here`, place: other.id.place },
        ],
        help: 'correct the area, the position or the outline',
      }
    }
  },
}

const holds = ([left, top, width, height]: readonly [number, number, number, number], x: number, y: number) =>
  x >= left && x <= left + width && y >= top && y <= top + height
