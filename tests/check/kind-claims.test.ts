import { expect, test } from 'vitest'
import { kindClaim } from '../../src/check/kind-claims.ts'
import { kindWords } from '../../src/check/kind-words.ts'
import { diskFolder } from '../../src/load/folder.ts'
import { loadMachine } from '../../src/load/load-machine.ts'
import { graphOf } from '../../src/model/graph.ts'
import type { Device } from '../../src/model/machine.ts'

const [machine] = loadMachine(diskFolder('example-machine', ''), diskFolder('content', 'content/')).machines
if (!machine) throw new Error('the example machine is broken')
const { devices } = machine
const kinds = kindWords(graphOf(machine))

/** Whether a sentence that calls a device by a kind is taken as wrong. */
function isWrong(language: string, kind: string, device: Device): boolean {
  const words = kinds.get(language)
  if (!words) throw new Error(`no kinds in ${language}`)
  const text = `${language === 'en' ? 'Look at the' : 'Mire el'} ${kind} ${device.tag.value}.`
  const claim = kindClaim(text, { start: text.indexOf(device.tag.value), end: text.length - 1 }, words)
  return claim !== undefined && !words.suits(claim.kind, device)
}

test.each(['en', 'es'])('in %s no device is wrong under its own kind, and nearly each is under that of another technology', (language) => {
  const said = (device: Device) => device.kind[language]?.value ?? ''
  expect(devices.filter((device) => isWrong(language, said(device), device)).map(({ tag }) => tag.value)).toEqual([])
  const pairs = devices.flatMap((device) =>
    devices
      .filter(({ technology }) => technology && device.technology && technology.value !== device.technology.value)
      .map((other) => [device, other] as const),
  )
  const wrong = pairs.filter(([device, other]) => isWrong(language, said(other), device))
  // biome-ignore lint/suspicious/noConsole: the share is read by people
  console.info(
    `${language}: of ${pairs.length} tags under the kind of another technology ${((wrong.length / pairs.length) * 100).toFixed(1)} % are found`,
  )
  expect(wrong.length / pairs.length).toBeGreaterThan(0.9)
})
