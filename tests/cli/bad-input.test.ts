import {
  closeSync,
  cpSync,
  ftruncateSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type DefaultTreeAdapterTypes, parse } from 'parse5'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type Ran, runFettle } from './run-fettle.ts'

let dir: string
beforeEach(() => {
  dir = join(mkdtempSync(join(tmpdir(), 'fettle-')), 'machine')
  cpSync('tests/fixtures/sound-machine', dir, { recursive: true })
})
afterEach(() => rmSync(join(dir, '..'), { recursive: true, force: true }))

const put = (path: string, content: string | Uint8Array) => {
  mkdirSync(join(dir, path, '..'), { recursive: true })
  writeFileSync(join(dir, path), content)
}

/** Rules found, each with its file. */
function found({ stdout }: Ran): string[] {
  return stdout
    .trim()
    .split('\n')
    .filter(Boolean)
    .map((line) => `${/([^/]+?):\d+:\d+: /.exec(line)?.[1]} ${/\[([a-z0-9-]+)\]$/.exec(line)?.[1]}`)
}

const check = () => runFettle(['check', dir, '--format', 'short', '--shared', join(dir, 'none')])

describe('a folder that cannot be checked gets one clear finding', () => {
  beforeEach(() => mkdirSync(join(dir, 'none')))

  test('the sound machine has none', async () => expect(await check()).toMatchObject({ code: 0, stdout: '' }))

  test('empty', async () => {
    rmSync(dir, { recursive: true })
    mkdirSync(join(dir, 'none'), { recursive: true })
    expect(found(await check())).toEqual(['machine.yaml not-a-machine'])
  })

  test('not there', async () => {
    rmSync(dir, { recursive: true })
    const ran = await runFettle(['check', dir, '--format', 'short'])
    expect([ran.code, found(ran)[0]]).toEqual([1, 'machine unreadable-file'])
  })

  test('without the folder of shared pages that was named', async () => {
    const ran = await runFettle(['check', dir, '--shared', join(dir, 'nowhere')])
    expect(ran).toMatchObject({ code: 2, stdout: '' })
    expect(ran.stderr).toContain('there is no folder')
  })

  test('half written', async () => {
    put('machine.yaml', readFileSync(join(dir, 'machine.yaml'), 'utf8').slice(0, 120))
    const ran = await check()
    expect(ran.code).toBe(1)
    expect(found(ran).every((it) => it.startsWith('machine.yaml '))).toBe(true)
  })
})

describe('one bad file gets one clear finding, and the rest is still checked', () => {
  beforeEach(() => {
    mkdirSync(join(dir, 'none'))
    put('pages/front/second.mdx', '---\ntitle: Second\n---\nSee <Tag id="XX-9" />.\n')
  })
  const rest = 'second.mdx unknown-tag'

  test('a CSV that is binary', async () => {
    put('data/alarms.csv', new Uint8Array([0x50, 0x4b, 3, 4, 0, 0, 8]))
    expect(found(await check())).toEqual(['alarms.csv not-text', rest])
  })

  test('a CSV in UTF-16', async () => {
    put('data/alarms.csv', new Uint8Array([0xff, 0xfe, 0x6e, 0]))
    expect(found(await check())).toEqual(['alarms.csv not-text', rest])
  })

  test('a CSV of 200 MB', async () => {
    const file = openSync(join(dir, 'data/alarms.csv'), 'w')
    ftruncateSync(file, 200_000_000)
    closeSync(file)
    expect(found(await check())).toEqual(['alarms.csv file-too-large', rest])
  })

  test('a YAML bomb', async () => {
    put(
      'training.yaml',
      [
        'a: &a [x, x, x, x, x, x, x, x, x]',
        ...Array.from(
          { length: 12 },
          (_, n) =>
            `b${n}: &b${n} [${Array(9)
              .fill(n === 0 ? '*a' : `*b${n - 1}`)
              .join(', ')}]`,
        ),
      ].join('\n'),
    )
    expect(found(await check())).toEqual([rest, 'training.yaml yaml-alias'])
  })

  test('a page that imports code', async () => {
    put('pages/front/first.mdx', '---\ntitle: First\n---\nimport { rm } from "node:fs"\n\nText.\n')
    expect(found(await check())).toEqual(['first.mdx code-in-page', rest])
  })

  test('a page that runs code', async () => {
    put('pages/front/first.mdx', '---\ntitle: First\n---\nNow {process.exit(0)} and <Tag id={globalThis} />.\n')
    expect(found(await check())).toEqual(['first.mdx expression-in-prose', 'first.mdx expression-in-prose', rest])
  })

  test('two pages with one id', async () => {
    put('pages/front/Second.mdx', '---\ntitle: Second\n---\nText.\n')
    expect(found(await check())).toContain('second.mdx duplicate-page')
  })

  test('a link to a file that is gone', async () => {
    symlinkSync('nowhere.mdx', join(dir, 'pages/front/gone.mdx'))
    expect(found(await check())).toEqual(['gone.mdx unreadable-file', rest])
  })
})

describe('names that other programs trip over', () => {
  test('a tag that is a script, and file names with spaces, umlauts and #, are shown as text and can be opened', async () => {
    const tag = '<script>alert(1)</script>'
    const edit = (path: string, ...pairs: [string, string][]) =>
      put(
        path,
        pairs.reduce((text, [was, is]) => text.replaceAll(was, is), readFileSync(join(dir, path), 'utf8')),
      )
    edit('machine.yaml', ['designation: nfpa79', "designation: { pattern: '.+' }"])
    edit('data/devices.csv', ['DISC1,main', `"${tag}",main`])
    edit('data/energy.yaml', ['tag: DISC1', `tag: '${tag}'`])
    edit('pages/lockout/lo-1.mdx', ['<Tag id="DISC1" />', '<Tag id="&lt;script>alert(1)&lt;/script>" />'])
    edit('drawings/E-1.1.svg', ['>DISC1<', '>&lt;script>alert(1)&lt;/script><'])
    put('pages/front/Türe #2 neu.mdx', '---\ntitle: "Türe <b>2</b>"\n---\nSee <Page id="front/use" />.\n')
    mkdirSync(join(dir, 'none'))
    const out = join(dir, '../out')
    const ran = await runFettle(['build', dir, '--shared', join(dir, 'none'), '--out', out, '--no-zip'])
    expect([ran.code, ran.stdout, ran.code === 0 ? '' : ran.stderr]).toEqual([0, '', ''])
    const page = readFileSync(join(out, 'tags/~3cscript~3ealert~281~29~3c~2fscript~3e.html'), 'utf8')
    expect(page).toContain('&lt;script&gt;alert(1)')
    for (const file of readdirSync(out, { recursive: true, encoding: 'utf8' })) {
      if (file.endsWith('.html')) expect(inlineScripts(readFileSync(join(out, file), 'utf8')).join(), file).not.toContain('alert')
    }
    expect(readFileSync(join(out, 'front/T~c3~bcre~20~232~20neu.html'), 'utf8')).toContain('Türe &lt;b&gt;2&lt;/b&gt;')
  })
})

/** The text of every script element that a browser would run; one of another type holds data. */
function inlineScripts(html: string): string[] {
  const texts: string[] = []
  const visit = (node: DefaultTreeAdapterTypes.Node) => {
    const isData = 'attrs' in node && node.attrs.some(({ name, value }) => name === 'type' && value === 'application/json')
    if (node.nodeName === 'script' && !isData && 'childNodes' in node)
      texts.push(node.childNodes.map((child) => ('value' in child ? child.value : '')).join(''))
    if ('childNodes' in node) for (const child of node.childNodes) visit(child)
  }
  visit(parse(html))
  return texts
}
