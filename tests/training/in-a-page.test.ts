import { runInNewContext } from 'node:vm'
import { build } from 'esbuild'
import { expect, test } from 'vitest'

test('a plan is made in a page, without anything of Node and by a small script', async () => {
  const { outputFiles } = await build({
    stdin: { contents: "export { sessionsOf } from './sessions.ts'", resolveDir: 'src/training', loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    globalName: 'training',
    platform: 'browser',
    target: 'chrome80',
  })
  const script = outputFiles[0]?.text ?? ''
  const lessons = [
    { id: 'A', minutes: 30, needs: ['B'], needsSignedOff: [] },
    { id: 'B', minutes: 10, needs: [], needsSignedOff: [] },
  ]
  const result = runInNewContext(`${script}\nJSON.stringify(training.sessionsOf(${JSON.stringify(lessons)}, { minutes: 45 }))`)
  expect(JSON.parse(result)).toEqual({ sessions: [{ minutes: 40, lessons: ['B', 'A'] }], optimal: true, lowerBound: 1, nearest: true })
  expect(script.length).toBeLessThan(14_000)
})
