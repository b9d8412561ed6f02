import { expect, test } from 'vitest'
import { type StartEntry, startPageMark, startPages } from '../../src/site/start-page.ts'

const parts = { style: 'p{}', script: 'x("</script>")' }
const washer: StartEntry = {
  folder: 'rcw-400',
  name: { en: 'Crate <washer>', es: 'Lavadora' },
  model: 'RCW 400',
  serial: '0400-017',
  revision: 'D',
  languages: ['en', 'es'],
}
const skid: StartEntry = { folder: 'dosis 1', name: { es: 'Dosificador' }, model: 'D & 2', serial: '7', revision: 'A', languages: ['es'] }
const old: StartEntry = { folder: 'before', name: {}, model: 'RCW 400', serial: '0400-003', revision: 'A', languages: [] }

const linksOf = (text: string | undefined) => [...(text ?? '').matchAll(/<a class="machine" href="([^"]*)"/g)].map(([, href]) => href)

test('machines stand by model and serial number, in any order of the folders', () => {
  const pages = startPages([washer, skid, old], parts)
  expect(linksOf(pages.get('index.html'))).toEqual(['dosis%201/index.html', 'before/index.html', 'rcw-400/index.html'])
  expect([...startPages([old, washer, skid], parts)]).toEqual([...pages])
})

test('there is a page for each language, and the one that most machines are written in is the first', () => {
  expect([...startPages([washer, skid, { ...skid, folder: 'dosis 2' }], parts).keys()]).toEqual(['index.html', 'index.en.html'])
  const pages = startPages([washer, washer, skid], parts)
  expect([...pages.keys()]).toEqual(['index.html', 'index.es.html'])
  expect(pages.get('index.html')).toContain('<html lang="en">')
  expect(pages.get('index.es.html')).toContain('3 máquinas')
  expect([...startPages([{ ...skid, languages: ['de'] }], parts).keys()]).toEqual(['index.html'])
})

test('a machine opens in the language of the page where it has it, and else in its own', () => {
  const pages = startPages([washer, washer, skid], parts)
  expect(linksOf(pages.get('index.es.html'))).toEqual(['dosis%201/index.html', 'rcw-400/es/index.html', 'rcw-400/es/index.html'])
  expect(pages.get('index.html')).toContain('<span class="machine-name" lang="es">Dosificador</span>')
  expect(pages.get('index.html')).toContain('<a class="plate-language" hreflang="es" lang="es" href="rcw-400/es/index.html">')
})

test('what a machine is called is text, and the script cannot end early', () => {
  const text = startPages([washer, skid], parts).get('index.html') ?? ''
  expect(text).toContain('Crate &lt;washer&gt;')
  expect(text).toContain('D &amp; 2')
  expect(text).toContain('x("<\\/script>")')
  expect(text).toContain(startPageMark)
})

test('a build that does not tell its name is known by its model', () => {
  expect(startPages([old], parts).get('index.html')).toContain('<span class="machine-name">RCW 400</span>')
})
