import { readdirSync } from 'node:fs'
import { runInNewContext } from 'node:vm'
import { build } from 'esbuild'
import { expect, test } from 'vitest'

/** A classic script, minified, that leaves what it exports in `signals`. */
async function scriptOf(source: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: source, resolveDir: 'src/signals', loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    globalName: 'signals',
    platform: 'browser',
    target: 'es2022',
  })
  return outputFiles[0]?.text ?? ''
}

test('the meter of a page runs without anything of Node, and is small', async () => {
  const script = await scriptOf(`
    export { diagnose } from './fault/diagnose.ts'
    export { readQuantity } from './read-quantity.ts'
    export { inputLimits } from './digital-input.ts'
    export { signalWords } from './words/words.ts'
  `)
  const first = runInNewContext(`${script}
    const { value } = signals.readQuantity('0,1 V', 'V')
    const circuit = { output: 'pnp', contact: 'NO', card: 'sinking', supplyV: 24, dropV: 3.5, limits: signals.inputLimits['Type 1'] }
    const led = { state: 'target', indicator: 'output-led', shows: 'lit' }
    const { diagnoses } = signals.diagnose([led, { state: 'target', point: 'input-at-card', value }], circuit)
    signals.signalWords('es').faults[diagnoses[0].row.id].diagnosis`)
  expect(first).toBe('El hilo de señal está cortado entre el sensor y la tarjeta.')
  expect(script.length).toBeLessThan(60_000)
})

test('all calculators together are small', async () => {
  const files = readdirSync('src/signals', { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'))
  expect(files.length).toBeGreaterThan(40)
  const script = await scriptOf(files.map((file, index) => `export * as f${index} from './${file.replaceAll('\\', '/')}'`).join('\n'))
  expect(runInNewContext(`${script}\nObject.keys(signals).length`)).toBe(files.length)
  expect(script.length).toBeLessThan(115_000)
})
