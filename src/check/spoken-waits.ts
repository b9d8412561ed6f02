/** A waiting time that a text orders. */
export interface SpokenWait {
  seconds: number
  /** Half-open range of the time in the text. */
  start: number
  end: number
}

interface Language {
  /** Words before the time that make it one to wait at least. */
  before: string
  numbers: Readonly<Record<string, number>>
  units: readonly (readonly [pattern: string, seconds: number])[]
}

const languages: Readonly<Record<string, Language>> = {
  en: {
    before:
      '(?:wait(?:ing)?(?: for)?|after(?: waiting)?|(?:leave|keep|let)(?![\\p{L}])[^.;:!?]{0,60}? for)(?: (?:at least|about|another full|a full|more than|over))?',
    numbers: {
      'half an': 0.5,
      'half a': 0.5,
      half: 0.5,
      a: 1,
      an: 1,
      one: 1,
      two: 2,
      three: 3,
      four: 4,
      five: 5,
      six: 6,
      eight: 8,
      ten: 10,
      fifteen: 15,
    },
    units: [
      ['s|sec(?:ond)?s?', 1],
      ['min(?:ute)?s?', 60],
      ['h|hours?', 3600],
    ],
  },
  es: {
    before:
      '(?:esper(?:e|ar|ando)|(?:tras|después de|transcurridos|pasados)(?: esperar)?|(?:dej(?:e|ar)|manten(?:ga|er))(?![\\p{L}])[^.;:!?]{0,60}? durante)(?: (?:al menos|como mínimo|por lo menos|durante|unos|más de))*',
    numbers: { medio: 0.5, media: 0.5, un: 1, una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6, ocho: 8, diez: 10, quince: 15 },
    units: [
      ['s|seg(?:undo)?s?', 1],
      ['min(?:uto)?s?', 60],
      ['h|horas?', 3600],
    ],
  },
}

const patterns = new Map(Object.entries(languages).map(([language, it]) => [language, patternOf(it)]))

/** Every time that a text orders to wait. A further time after another one, or a longest one, is none. */
export function spokenWaits(text: string, language: string): SpokenWait[] {
  const [own, pattern] = [languages[language], patterns.get(language)]
  if (!own || !pattern) return []
  return [...text.matchAll(pattern)].flatMap((match) => {
    const { number = '', unit = '', time = '' } = match.groups ?? {}
    const count = own.numbers[number.toLowerCase()] ?? Number(number.replace(',', '.'))
    const scale = own.units.find(([it]) => new RegExp(`^(?:${it})$`, 'iu').test(unit))?.[1]
    if (scale === undefined || !Number.isFinite(count)) return []
    const end = match.index + match[0].length
    return [{ seconds: count * scale, start: end - time.length, end }]
  })
}

function patternOf({ before, numbers, units }: Language): RegExp {
  const number = `\\d+(?:[.,]\\d+)?|${Object.keys(numbers).join('|')}`
  const unit = units.map(([it]) => it).join('|')
  return new RegExp(`(?<![\\p{L}])${before} (?<time>(?<number>${number})[\\s\\u202f\\u00a0-]?(?<unit>${unit}))(?![\\p{L}\\p{N}])`, 'giu')
}
