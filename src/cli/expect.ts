import { advice, suggestFrom } from '../check/suggest.ts'
import { checkoutOf } from '../checkout/checkout-of.ts'
import type { Expectation } from '../checkout/expectation.ts'
import { judgeTaken, loopStateOf, readTaken, type Taken, wherePossible } from '../checkout/reading.ts'
import { checkoutWords } from '../checkout/words/words.ts'
import { graphOf } from '../model/graph.ts'
import type { Device, Machine } from '../model/machine.ts'
import { readQuantity } from '../signals/read-quantity.ts'
import { signalWords } from '../signals/words/words.ts'
import { expectText, faultsOf, meaningIn, type Told } from './expect-text.ts'
import { machineToPrint } from './load.ts'
import { type Options, UsageError } from './options.ts'

/** Prints what a device should read, and judges what was read. Nothing is printed of a folder with errors: a limit from it may be wrong. */
export async function run(options: Options): Promise<number> {
  const [path = '.', tag] = options.words
  if (tag === undefined) throw new UsageError('it takes the tag of a device')
  const machine = await machineToPrint(path, options, 'expect', 'limit')
  if (!machine) return 1
  const device = deviceOf(tag, machine)
  const language = options.get('language') ?? machine.sourceLanguage
  const [words, signals] = [checkoutWords(language), signalWords(language)]
  if (!words || !signals) throw new UsageError(`there are no words for measuring in the language \`${language}\``)
  const checkout = checkoutOf(device, machine, graphOf(machine), supplyOf(options.get('supply')))
  if (!checkout) throw new UsageError(`\`${tag}\` has no technology with anything to measure`)
  const taken = options.all('measured').map(takenOf)
  const told: Told = { device, machine, checkout, taken, words, signals, language }
  process.stdout.write(options.get('format') === 'json' ? `${JSON.stringify(recordOf(told), null, 2)}\n` : expectText(told))
  return 0
}

function deviceOf(tag: string, { devices, absent }: Machine): Device {
  const device = devices.find((it) => it.tag.value === tag)
  if (device) return device
  if (absent.has(`tag:${tag}`)) throw new UsageError(`\`${tag}\` is not fitted to this unit; \`--serial\` names another`)
  const near = suggestFrom(devices.map((it) => it.tag.value))(tag)
  throw new UsageError(`no device has the tag \`${tag}\`; ${advice(near, 'tag', 'the device list has them all')}`)
}

/** The supply in V: a plain number is one, as the option names no other quantity. */
function supplyOf(typed: string | undefined): number | undefined {
  if (typed === undefined) return undefined
  const read = readQuantity(/[a-z]/i.test(typed) ? typed : `${typed} V`, 'V')
  if ('unread' in read || read.value < 0) throw new UsageError(`--supply takes a voltage such as \`23.6\`, not \`${typed}\``)
  return read.value
}

function takenOf(typed: string): Taken {
  const taken = readTaken(typed)
  if ('unread' in taken) {
    const perhaps = taken.perhaps ? `; perhaps ${taken.perhaps.map((it) => `\`${it}\``).join(', ')}` : ''
    throw new UsageError(
      `--measured takes a value with its unit such as \`12.1 mA\`, not \`${typed}\` (${taken.unread.replace(/-/g, ' ')}${perhaps})`,
    )
  }
  const unknown = wherePossible(taken)
  if (unknown) throw new UsageError(`\`${typed}\`: \`${unknown.written}\` is no ${unknown.kind}; it takes ${unknown.known.join(', ')}`)
  return taken
}

/** The contract of `--format json`: fields are added, never renamed. */
function recordOf(told: Told) {
  const { device, checkout, taken } = told
  return {
    tag: device.tag.value,
    technology: checkout.technology,
    supplyV: checkout.circuit?.supplyV,
    circuits: checkout.circuits.map(({ signal, circuit, notComputed, refused }) => ({
      address: signal.address.value,
      signal: signal.signal?.value,
      output: circuit?.output,
      card: circuit?.card,
      contact: circuit?.contact,
      notComputed,
      refused,
    })),
    expectations: checkout.expectations.map(plain),
    approval: checkout.approval,
    readings: taken.map((it) => ({
      typed: it.typed,
      meaning: meaningIn(told, it),
      loop: loopStateOf(it, checkout),
      verdicts: judgeTaken(it, checkout).map(({ expectation, value, verdict }) => ({
        measured: expectation.measured,
        signal: expectation.signal,
        point: expectation.point,
        state: expectation.state,
        value,
        unit: expectation.unit,
        verdict,
      })),
    })),
    faults: faultsOf(told),
  }
}

const plain = ({ restsOn: { bases, generic, fromMemory, inputs }, ...rest }: Expectation) => ({
  ...rest,
  restsOn: { bases, generic, fromMemory, inputs },
})
