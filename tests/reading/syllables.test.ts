import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { exceptionsFile, ordinaryWords } from '../../src/reading/make/english-exceptions.ts'
import { findExceptions } from '../../src/reading/make/find-exceptions.ts'
import { dictionaryCounts } from '../../src/reading/make/word-lists.ts'
import { countWith } from '../../src/reading/syllables/english.ts'
import { exceptions } from '../../src/reading/syllables/english-exceptions.ts'
import { syllableCounter, syllablesOf } from '../../src/reading/syllables/syllables-of.ts'

/** A word with the counts that are accepted for it. */
const cases = (list: string): [string, string][] =>
  list
    .trim()
    .split(/,\s+/)
    .map((entry) => entry.split(' ') as [string, string])

const english = `valve 1, locked 1, blocked 1, tagged 1, pressed 1, checked 1, switched 1, plugged 1, charged 1, purged 1, torque 1, torqued 1, probe 1,
  tire 1|2, wire 1|2, hour 1|2, hinged 1, flanged 1, splined 1, safety 2, machine 2, engine 2, nameplate 2, baseplate 2, eyebolt 2, guideline 2,
  wireless 2|3, brushes 2, switches 2, wrenches 2, glasses 2, pulses 2, fluid 2, fluids 2, opened 2, loosened 2, tightened 2, metered 2, filtered 2,
  welded 2, mounted 2, table 2, handle 2, axle 2, idler 2|3, litre 2, sequence 2, technique 2, sensor 2, voltage 2, pinion 2, union 2, linear 3,
  nuclear 3, reactor 3, reactive 3, radius 3, radii 3, period 3, ambient 3, aqueous 3, hydraulic 3, pneumatic 3, controller 3, maintenance 2|3,
  temperature 3|4, processes 3, reassemble 4, reinforce 3, impeller 3, isolate 3, actuated 4, coefficient 4, dielectric 4, deactivate 4, petroleum 4,
  photoelectric 5, polyurethane 5, permeability 6, potentiometer 6, electropneumatic 6, hydraulically 4|5, automatically 5|6`
const joined = `don't 1, didn't 2, can't 1, isn't 2, won't 1, haven't 2, weren't 1, it'll 1, you're 1, pump's 1, glass's 2, machine’s 2, café 2, O-ring 2,
  3-phase 2, battle-field 3, quick-release 3, on/off 2, WARNING 2, tem\u00ADperature 3|4`
const spanish = `válvula 3, tubería 4, presión 2, hidráulico 4, enfriamiento 4, aéreo 4, línea 3, cigüeñal 3, agua 2, leer 2, oír 2, frecuencia 3, anual 2,
  construir 2, mantenimiento 5, reúne 3, ahí 2, rey 1, y 1, ciudad 2, vacío 3, quien 1, guía 2, vehículo 4, averiguáis 4, tornillo 3`
const german = `Ventil 2, Öl 1, Steuerung 3, Sicherheitshinweis 5, Frequenzumrichter 5, beeinflussen 4, geeignet 3, Material 4, Drehmoment 3,
  Inbetriebnahme 5, Station 3, Linie 3, Folien 3, Batterien 4, Papier 2, reguliert 3, Museum 3, Vakuum 3, zuerst 2, Reaktion 4, beachten 3, Boot 1,
  Koordinaten 5, Team 1, manuell 3, Quotient 3, bedient 2, Energie 3, geerdet 3, Ingenieur 4, Bauelement 4, 24-V-Netzteil 4,
  Niveau 2, loyal 2, Zuordnung 3, Not-Aus 2, Hydraulikaggregat 6, Schutzeinrichtung 4, Näherungsschalter 5, Temperaturfühler 6`
const french = `vanne 1, machine 2, pression 2, sécurité 4, température 4, roue 1, électrique 3, nettoyez 3, filtre 1, que 1, huile 1, rouille 1,
  feuille 1, appareil 3, client 2, ouvrier 3, moteur 2, fusible 2, réactif 3, l’eau 1, ouest 1, maïs 2, tuyau 2, bruit 1, coefficient 4, appuyez 3,
  vérin 2, courroie 2, tuyauterie 4, poulie 2, moyeu 2, bouteille 2, pluie 1, aiguille 2, œil 1, août 1, théorie 3, oublier 3, février 3, créée 2,
  vidange 2, alimentation 5`

describe.each([
  ['en', english],
  ['en', joined],
  ['es', spanish],
  ['de', german],
  ['fr', french],
])('in %s', (language, list) => {
  test.each(cases(list))('%s has %s', (word, accepted) => expect(accepted.split('|').map(Number)).toContain(syllablesOf(word, language)))
})

test('a language without a counter has no syllables, a region counts like its language', () => {
  expect([syllablesOf('valvola', 'it'), syllableCounter('it'), syllablesOf('valve', 'constructor')]).toEqual([undefined, undefined, undefined])
  expect(syllablesOf('válvula', 'es-MX')).toBe(3)
})

test('own words are asked first, whole and in parts', () => {
  const own = new Map([
    ['fettle', 9],
    ['o-ring', 4],
  ])
  expect(['Fettle', 'O-ring', 'fettle-ring', 'ring'].map((word) => syllablesOf(word, 'en', own))).toEqual([9, 4, 10, 1])
})

test.each(['en', 'es', 'de', 'fr'])('in %s every word has at least one syllable and no more than it has letters', (language) => {
  fc.assert(
    fc.property(fc.string({ minLength: 1 }), (word) => {
      const count = syllablesOf(word, language) ?? 0
      expect(count).toBeGreaterThanOrEqual(1)
      expect(count).toBeLessThanOrEqual(word.length + 1)
    }),
  )
})

// Tens of thousands of words: more than the usual time on a busy computer.
describe('English words against the dictionary', { timeout: 60_000 }, () => {
  const gold = ordinaryWords()
  const dictionary = dictionaryCounts()
  const handCounts = new Map(
    readFileSync('tests/fixtures/reading/hand-counts.tsv', 'utf8')
      .trim()
      .split('\n')
      .map((line) => line.split('\t'))
      .map(([word = '', counts = '']) => [word, counts.split('|').map(Number)]),
  )
  const share = (words: readonly (readonly [string, readonly number[]])[], count: (word: string) => number | undefined) =>
    words.filter(([word, accepted]) => accepted.includes(count(word) ?? 0)).length / words.length

  test('technical words: 99 % at least', () => {
    const words = readFileSync('tests/fixtures/reading/technical-words.txt', 'utf8').trim().split('\n')
    expect(words).toHaveLength(3388)
    const counted = words.map((word) => [word, dictionary.get(word) ?? handCounts.get(word) ?? []] as const)
    expect(share(counted, (word) => syllablesOf(word, 'en'))).toBeGreaterThanOrEqual(0.999)
    expect(share(counted, (word) => countWith(new Map(), word))).toBeGreaterThanOrEqual(0.99)
  })

  test('unseen words, by 5-fold cross-validation: 97 % at least', () => {
    const words = [...gold]
    expect(words.length).toBeGreaterThan(40_000)
    const right = [0, 1, 2, 3, 4].map((fold) => {
      const known = findExceptions(new Map(words.filter((_, index) => index % 5 !== fold)))
      const unseen = words.filter((_, index) => index % 5 === fold)
      return share(unseen, (word) => countWith(known, word)) * unseen.length
    })
    expect(right.reduce((sum, count) => sum + count) / words.length).toBeGreaterThanOrEqual(0.98)
  })

  test('the exceptions are those that the script makes, and do not move unseen', () => {
    const file = readFileSync('src/reading/syllables/english-exceptions.ts', 'utf8')
    expect(file).toBe(exceptionsFile(findExceptions(gold)))
    expect(file.length).toBeLessThanOrEqual(12_000)
    const pairs = [...exceptions].map(([word, count]) => `${word} ${count}`).sort()
    expect(createHash('sha256').update(pairs.join('\n')).digest('hex')).toBe('4a77b9d45661e1475634ae1045fad3ef24f8466cc7ae75470f57a8484012f648')
  })
})
