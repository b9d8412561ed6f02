import { expect, test } from 'vitest'
import { spokenWaits } from '../../src/check/spoken-waits.ts'

test.each([
  ['en', 'Wait 5 minutes.', [300]],
  ['en', 'Wait for at least 90 s, then measure.', [90]],
  ['en', 'After two hours open the lid.', [7200]],
  ['en', 'Leave the tank with its cover open for half an hour.', [1800]],
  ['en', 'Keep the guard shut for 1.5 min', [90]],
  ['en', 'Wait another 10 s.', []],
  ['en', 'Wait up to 20 s.', []],
  ['en', 'Wait until the wheel stands still, about 20 s.', []],
  ['en', 'Wait 5 mins or 3 sheets.', [300]],
  ['en', 'The wheel turns for 80 s.', []],
  ['es', 'Espere 5 min.', [300]],
  ['es', 'Esperar al menos durante 90 segundos.', [90]],
  ['es', 'Después de dos horas abra la tapa.', [7200]],
  ['es', 'Deje el tanque con la tapa abierta durante media hora.', [1800]],
  ['es', 'Mantenga cerrado el resguardo durante 1,5 minutos', [90]],
  ['es', 'Espere otros 10 s.', []],
  ['de', 'Warten Sie 5 min.', []],
])('%s: %s', (language, text, seconds) => {
  const waits = spokenWaits(text, language)
  expect(waits.map((wait) => wait.seconds)).toEqual(seconds)
  for (const { start, end } of waits) expect(text.slice(start, end)).toMatch(/^[\p{L}\d.,]+ \p{L}+( \p{L}+)?$/u)
})
