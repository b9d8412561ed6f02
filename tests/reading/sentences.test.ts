import { describe, expect, test } from 'vitest'
import { hasEndMark, sentencesOf } from '../../src/reading/sentences.ts'

/** Hand-made cases of technical text; `|` is the only place where a sentence ends. */
const cases = [
  'Set the pressure to 6.5 bar.|Do not go above 8.0 bar.',
  'Use grease no. 2 on the bearing.|Wipe off the excess.',
  'See Fig. 3 for the location of valve V-12.',
  'See Figs. 3 and 4.|Then close the door.',
  'Refer to Sec. 4.2.1 before you start.',
  'Tighten the bolts (see Table 2.1) to 45 N·m.',
  'The supply is 24 V d.c. and the load is 2 A.',
  'The supply voltage is 24 V DC.|The relay coil draws 90 mA.',
  'Use a seal, e.g. an O-ring, on the shaft.',
  'Consumables (filters, seals, etc.) are listed in Chapter 9.',
  'Check filters, seals, etc.|Replace them if they are worn.',
  'Check the level approx. 10 min. after the stop.',
  'Wait approx. 5 min.|Then open the drain valve.',
  'The gap must be min. 0.2 mm and max. 0.5 mm.',
  'Max. pressure is 10 bar.',
  'The cycle takes 3.2 s.|The next cycle starts at once.',
  'Part No. 4711-08 replaces part no. 4711-07.',
  'Mr. Jones signed the report.|Dr. Smith approved it.',
  'The machine conforms to EN ISO 13849-1, i.e. PL d.',
  'Performance level d is required, i.e. Category 3.|Check this once a year.',
  'Stop the machine!|Lock out the supply.',
  'Is the lamp on?|If yes, go to step 4.',
  '"Is the lamp on?" the display asks.',
  'The display shows "Door open."|Close the door.',
  'The display shows "Door open!" and the horn sounds.',
  'Press START.|The motor runs.',
  'Set P0.10 to 50.0 Hz.',
  'Set parameter P3.1.4 to 1.|Set parameter P3.1.5 to 0.',
  'Valve Y1.2 opens.|Valve Y1.3 closes.',
  'Open the file config.json in the editor.',
  'The program is in C:\\Data\\main.prg.|Do not change it.',
  'Go to www.example.com for updates.',
  'Go to www.example.com.|Download the file.',
  'Do this at 8 a.m. each day.',
  'The shift starts at 6 a.m.|Do the checks before then.',
  'Use a 1/2 in. hose.',
  'Use a 1/2 in. hose and a 3 in. clamp.',
  'The hose is 3 ft. long.|Cut it to 2 ft. with a knife.',
  'Use Loctite-type thread lock, cf. Section 8.',
  'ACME Inc. supplied the pump.',
  'The pump was made by ACME Inc.|It has a serial number.',
  'Pump (Fa. Müller GmbH u. Co. KG) is in place.',
  'Rev. B of the drawing applies.',
  'Use drawing 12-345 rev. C.|Older drawings are void.',
  'Vol. 2 has the spare parts list.',
  'The temperature is 82 °C.|Let the oil cool to 40 °C.',
  'The temperature is 82 deg. C in the tank.',
  'Wait... the pump needs time to prime.',
  'The pump stops...|The alarm comes on.',
  'WARNING: Hot surface.|Do not touch the plate.',
  'NOTE. The guard must be closed.',
  '1. Open the valve.|2. Drain the tank.',
  'Step 1. Open the valve.',
  'a) Remove the cover.|b) Remove the filter.',
  'Sensors B1, B2, etc. are on the left side.',
  'Check sensors B1 to B4 (incl. cables).|Clean them.',
  'The motor (3~, 400 V, 7.5 kW) is in Zone A.',
  'Relay K1 pulls in.|K2 drops out.',
  'Turn S1 to pos. 2.|Turn S2 to pos. 0.',
  'Turn S1 to pos. II and wait.',
  'Speed is 1,450 rev./min. at 50 Hz.',
  'Turn the shaft at 10 r.p.m. by hand.',
  'Torque M8 bolts to 25 N·m.|Torque M10 bolts to 49 N·m.',
  'Use oil ISO VG 46.|Do not mix oils.',
  'The IP code is IP 54.|The class is F.',
  'The I/O card is in slot 3.|PX-104 is on channel 7.',
  'If PX-104 reads < 4.0 mA, check the cable.',
  'Refer to 29 CFR 1910.147.|Obey the lockout rule.',
  'Obey OSHA 1910.147 (c)(4)(i).|Keep a record.',
  'The plant is in the U.S. and the supply is 60 Hz.',
  'The plant is in the U.S.|The supply is 60 Hz.',
  'The vessel was tested in Jan. 2024.',
  'The vessel was tested by J. P. Weber.|The test was good.',
  'Use item 7 (qty. 4) and item 8 (qty. 2).',
  'Clean the lens with alcohol (approx. 70 vol. %).',
  'Do not use water.|do not use acid.',
  'The software version is 2.4.1.|Version 2.5 is not released.',
  'iPumps start on demand.|eStop is wired in series.',
  'pH must be 7.0.|pH 9 is too high.',
  'Close valve V12 (1.5 turns).|Open V13.',
  'Loosen screw (4) approx. 2 turns.|Lift cover (5).',
  'Connect the cable to X1.3.|Connect the shield to PE.',
  'The gauge reads 0.|The line is safe.',
  'Use tool no. 7.|Do not force it.',
  'Do the check once per wk. and log it.',
  'See Ch. 5, pp. 12-14, for the procedure.',
  'St. Gallen is the place of manufacture.',
  'Torque: 12 Nm.|Grade: 8.8.',
  'The gearbox, i.e., the reducer, is sealed for life.|It needs no oil.',
  'Keep clear of the moving parts (conveyor, arm, etc.).|Stay behind the line.',
]

const split = (text: string, language = 'en') => sentencesOf({ kind: 'paragraph', text }, language).map((sentence) => sentence.text)

describe('an English text', () => {
  test.each(cases)('%s', (text) => {
    const parts = text.split('|')
    expect(split(parts.join(' '))).toEqual(parts)
  })
})

test.each([
  ['de', 'Schließen Sie das Ventil.|Warten Sie, bis der Druck auf null sinkt.'],
  ['de', 'Verwenden Sie z. B. Fett Nr. 2 auf dem Lager.|Siehe Abb. 3.'],
  ['de', 'Die Anlage läuft seit dem 3. Mai.|Stellen Sie den Schalter auf 2.|Drehen Sie die Welle.'],
  ['de', 'Prüfen Sie Filter, Dichtungen usw. am Gehäuse.|Der Druck beträgt max. 6 bar, d. h. er ist niedrig.'],
  ['es', 'Cierre la válvula de entrada.|Espere aprox. 5 min.|Abra la tapa.'],
  ['es', 'Use una junta, p. ej. una junta tórica.|¿Está encendida la lámpara?|Vea la fig. 3 y la pág. 12.'],
  ['es', 'Compruebe filtros, juntas, etc.|El Sr. Gómez firma el informe.'],
  ['fr', 'Fermez la vanne.|Attendez env. 5 min.|Ouvrez le capot.'],
  ['fr', 'Voir fig. 3, p. 12.|La lampe est-elle allumée ?|Si oui, allez à l’étape 4.'],
  ['it', 'Chiudere la valvola di ingresso.|Attendere che la pressione scenda a zero.'],
])('in %s: %s', (language, text) => {
  const parts = text.split('|')
  expect(split(parts.join(' '), language)).toEqual(parts)
})

describe('places', () => {
  test.each(cases)('of sentences and words are those in the block: %s', (text) => {
    const block = `  ${text.replaceAll('|', '\n')} `
    for (const sentence of sentencesOf({ kind: 'paragraph', text: block }, 'en')) {
      expect(block.slice(sentence.start, sentence.end)).toBe(sentence.text)
      let from = sentence.start
      for (const token of sentence.tokens) {
        expect(block.slice(token.start, token.end)).toBe(token.text)
        expect(token.start).toBeGreaterThanOrEqual(from)
        from = token.end
      }
      expect(from).toBeLessThanOrEqual(sentence.end)
    }
  })

  test('take in a list marker and a signal word, which are no words of the sentence', () => {
    const [first, second] = sentencesOf({ kind: 'message', text: 'WARNING: Hot surface. 2. Wait.' }, 'en')
    expect(first).toMatchObject({ start: 0, text: 'WARNING: Hot surface.' })
    expect(first?.tokens.map((token) => token.text)).toEqual(['Hot', 'surface'])
    expect(second?.tokens.map((token) => token.text)).toEqual(['Wait'])
  })
})

test.each([
  ['', []],
  [' … ', []],
  ['Oil level', ['Oil level']],
  ['Stop. Then wait', ['Stop.', 'Then wait']],
  ['Stop!!! Wait?', ['Stop!!!', 'Wait?']],
])('%j', (text, expected) => expect(split(text)).toEqual(expected))

test.each([
  ['Open the valve.', true],
  ['It shows "Door open."', true],
  ['the inlet valve is open', false],
  ['Make sure that:', false],
])('%s ends with a mark: %s', (text, expected) => expect(hasEndMark({ text })).toBe(expected))
