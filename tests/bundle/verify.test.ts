import { appendFileSync, copyFileSync, mkdirSync, readFileSync, renameSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { unzipSync, type Zippable, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { type VerifyResult, verify } from '../../src/bundle/verify.ts'
import { zipFolder } from '../../src/bundle/zip.ts'
import { identity, workFolder, writeBundle, writeFiles } from './bundles.ts'

const whole = { machine: identity.machine, checkValue: identity.checkValue, changed: [], missing: [], added: [] }

type Lists = Partial<Pick<VerifyResult, 'changed' | 'missing' | 'added'>>

/** Changes a built folder, then verifies the folder and the zip of it. */
async function checkFolderAndZip(change: (dir: string) => void, expected: Lists): Promise<void> {
  const work = workFolder()
  const dir = writeBundle(join(work, 'site'))
  change(dir)
  expect(await verify(dir)).toEqual({ ...whole, ...expected })
  zipFolder(dir, join(work, 'site.zip'), 'rcw')
  expect(await verify(join(work, 'site.zip'))).toEqual({ ...whole, ...expected })
}

/** Takes the zip of a whole build apart, changes the entries and packs them again. */
async function checkZip(change: (entries: Zippable) => Zippable, expected: Partial<VerifyResult>): Promise<void> {
  const work = workFolder()
  zipFolder(writeBundle(join(work, 'site')), join(work, 'site.zip'), 'rcw')
  const entries: Zippable = { ...unzipSync(readFileSync(join(work, 'site.zip'))) }
  writeFileSync(join(work, 'changed.zip'), zipSync(change(entries)))
  expect(await verify(join(work, 'changed.zip'))).toEqual(expected)
}

const namesAndText = (zip: Uint8Array) => Object.entries(unzipSync(zip)).map(([name, content]) => [name, Buffer.from(content).toString('latin1')])

const text = (content: string) => new TextEncoder().encode(content)

describe('a folder and its zip', () => {
  test('as built are whole', () => checkFolderAndZip(() => {}, {}))

  test('each changed, missing and added file is named', () =>
    checkFolderAndZip(
      (dir) => {
        appendFileSync(join(dir, 'start.html'), ' ')
        writeFileSync(join(dir, 'tags/PRS-1 #2.html'), '<h1>PRS-1 #3</h1>')
        rmSync(join(dir, 'photos/Wäsche über Tank.png'))
        writeFiles(dir, { 'added #1.html': '', 'tags/.hidden': '' })
      },
      {
        changed: ['start.html', 'tags/PRS-1 #2.html'],
        missing: ['photos/Wäsche über Tank.png'],
        added: ['added #1.html', 'tags/.hidden'],
      },
    ))

  test('a file under a new name is missing and added', () =>
    checkFolderAndZip((dir) => renameSync(join(dir, 'start.html'), join(dir, 'Start.html')), { missing: ['start.html'], added: ['Start.html'] }))

  test('an edited manifest is told from the files, which the sums still know', () =>
    checkFolderAndZip(
      (dir) => {
        const path = join(dir, 'manifest.json')
        writeFileSync(
          path,
          readFileSync(path, 'utf8')
            .replace(/"sha256": "[0-9b-f]/, '"sha256": "a')
            .replace('"size": 2', '"size": 9'),
        )
      },
      { changed: ['manifest.json'] },
    ))

  test('an edited page is found though the manifest was made to fit it', () =>
    checkFolderAndZip(
      (dir) => {
        const sums = readFileSync(join(dir, 'SHA256SUMS'))
        writeBundle(dir, { 'start.html': 'other' })
        writeFileSync(join(dir, 'SHA256SUMS'), sums)
      },
      { changed: ['manifest.json', 'start.html'] },
    ))

  test.each([
    ['of one file', (sums: string) => sums.replace(/^[0-9a-f]{64}(?= {2}start\.html)/m, 'f'.repeat(64))],
    ['cut off', (sums: string) => sums.slice(0, 30)],
    ['empty', () => ''],
  ])('edited sums, %s, blame no page', (_, edit) =>
    checkFolderAndZip((dir) => writeFileSync(join(dir, 'SHA256SUMS'), edit(readFileSync(join(dir, 'SHA256SUMS'), 'utf8'))), {
      changed: ['SHA256SUMS'],
    }),
  )

  test('absent sums are missing', () => checkFolderAndZip((dir) => rmSync(join(dir, 'SHA256SUMS')), { missing: ['SHA256SUMS'] }))
})

describe('a folder', () => {
  test('links are not followed, also when they lead to the same content', async () => {
    const work = workFolder()
    const dir = writeBundle(join(work, 'site'))
    copyFileSync(join(dir, 'start.html'), join(work, 'same.html'))
    rmSync(join(dir, 'start.html'))
    symlinkSync(join(work, 'same.html'), join(dir, 'start.html'))
    renameSync(join(dir, 'search'), join(work, 'search'))
    symlinkSync(join(work, 'search'), join(dir, 'search'))
    expect(await verify(dir)).toEqual({ ...whole, changed: ['start.html'], missing: ['search/index.js'], added: ['search'] })
  })

  test.each([
    ['that is empty', {}, 'not a built manual: it holds no `manifest.json`'],
    ['with a manifest that is not JSON', { 'manifest.json': '{' }, '`manifest.json` is not JSON'],
    [
      'with a manifest of another kind',
      { 'manifest.json': '{"format":"app","files":[]}' },
      '`manifest.json` has the format `app`; known here is `fettle-manifest-1`',
    ],
    [
      'with a manifest that lies about its format',
      { 'manifest.json': '{"format":"fettle-manifest-1","files":"all"}' },
      '`manifest.json` says it has the format `fettle-manifest-1` but has not: at `tool`',
    ],
  ])('%s is unreadable', async (_, files, reason) => {
    const dir = workFolder()
    writeFiles(dir, files)
    expect(await verify(dir)).toEqual({ changed: [], missing: [], added: [], unreadable: expect.stringContaining(reason) })
  })

  test('that is not there is unreadable', async () => {
    expect(await verify(join(workFolder(), 'absent'))).toMatchObject({ unreadable: 'there is no such file or folder' })
  })

  test('a manifest that lists files outside reads none of them', async () => {
    const work = workFolder()
    const dir = writeBundle(join(work, 'site'))
    writeFileSync(join(work, 'secret.txt'), 'x')
    const path = join(dir, 'manifest.json')
    writeFileSync(path, readFileSync(path, 'utf8').replace('"start.html"', '"../secret.txt"'))
    rmSync(join(dir, 'SHA256SUMS'))
    expect(await verify(dir)).toMatchObject({ missing: ['../secret.txt', 'SHA256SUMS'], added: ['start.html'] })
  })
})

describe('a zip', () => {
  test('packed again by another program, with or without the folder around it, is whole', async () => {
    await checkZip((entries) => Object.fromEntries(Object.entries(entries).toReversed()), whole)
    await checkZip((entries) => Object.fromEntries(Object.entries(entries).map(([name, content]) => [name.slice('rcw/'.length), content])), whole)
  })

  test('entries outside the folder are named, and nothing is written to disk', async () => {
    const outside = '../fettle-verify-outside.txt'
    await checkZip(
      (entries) => ({ ...entries, [`rcw/${outside}`]: text('x'), '../up.txt': text('x'), '/etc/passwd': text('x'), 'start.html': text('x') }),
      {
        ...whole,
        added: ['../../up.txt', '..//etc/passwd', '../fettle-verify-outside.txt', '../start.html'],
      },
    )
  })

  test('two entries of one name are a changed file, whichever of them a program would take', async () => {
    const work = workFolder()
    const zip = join(work, 'site.zip')
    zipFolder(writeBundle(join(work, 'site')), zip, 'rcw')
    const entries: Zippable = { ...unzipSync(readFileSync(zip)), 'rcw/start.htmX': text('<h1>other</h1>') }
    const bytes = Buffer.from(zipSync(entries))
    for (let at = bytes.indexOf('start.htmX'); at >= 0; at = bytes.indexOf('start.htmX')) bytes.write('start.html', at)
    writeFileSync(zip, bytes)
    expect(await verify(zip)).toEqual({ ...whole, changed: ['start.html'] })
  })

  test('an entry that calls itself otherwise than the directory does is a changed file', async () => {
    const work = workFolder()
    const zip = join(work, 'site.zip')
    zipFolder(writeBundle(join(work, 'site')), zip, 'rcw')
    const bytes = readFileSync(zip)
    bytes.write('evil', bytes.indexOf('start.html'))
    writeFileSync(zip, bytes)
    expect(await verify(zip)).toEqual({ ...whole, changed: ['start.html'] })
  })

  test('an entry that unpacks to more than it says is a changed file', async () => {
    const work = workFolder()
    const zip = join(work, 'site.zip')
    zipFolder(writeBundle(join(work, 'site')), zip, 'rcw')
    const entries = { ...unzipSync(readFileSync(zip)), 'rcw/start.html': text('x'.repeat(1_000_000)) }
    const bytes = Buffer.from(zipSync(entries))
    const header = bytes.lastIndexOf('rcw/start.html') - 46
    bytes.writeUInt32LE(1, header + 24)
    writeFileSync(zip, bytes)
    expect(await verify(zip)).toEqual({ ...whole, changed: ['start.html'] })
  })

  test.each([
    ['cut off at the end', (zip: string) => truncateSync(zip, 900)],
    ['cut off at the start', (zip: string) => writeFileSync(zip, readFileSync(zip).subarray(100))],
    ['empty', (zip: string) => truncateSync(zip, 0)],
    ['a page', (zip: string) => writeFileSync(zip, '<h1>not found</h1>')],
  ])('%s is unreadable', async (_, damage) => {
    const work = workFolder()
    const zip = join(work, 'site.zip')
    zipFolder(writeBundle(join(work, 'site')), zip, 'rcw')
    damage(zip)
    expect(await verify(zip)).toEqual({ changed: [], missing: [], added: [], unreadable: expect.stringContaining('not a whole zip file') })
  })

  test('without a manual in it is unreadable', async () => {
    const work = workFolder()
    mkdirSync(join(work, 'site'))
    zipFolder(writeFiles(join(work, 'site'), { 'a.txt': '' }), join(work, 'a.zip'), 'x')
    expect(await verify(join(work, 'a.zip'))).toMatchObject({ unreadable: 'not a built manual: it holds no `manifest.json`' })
  })
})

test('no single changed byte of a zip goes unseen where it changes what is unpacked', async () => {
  const work = workFolder()
  const zip = join(work, 'site.zip')
  zipFolder(writeBundle(join(work, 'site'), { 'start.html': 'The drain valve is closed. '.repeat(9) }), zip, 'rcw')
  const sound = readFileSync(zip)
  for (let at = 0; at < sound.length; at++) {
    const bytes = Buffer.from(sound)
    bytes.writeUInt8((bytes.readUInt8(at) + 1) % 256, at)
    writeFileSync(zip, bytes)
    const { unreadable, changed, missing, added } = await verify(zip)
    if (unreadable !== undefined || changed.length + missing.length + added.length > 0) continue
    expect(namesAndText(bytes)).toEqual(namesAndText(sound))
  }
})
