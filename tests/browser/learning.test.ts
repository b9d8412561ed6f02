import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Locator, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { readJournal } from '../../src/training/journal-file.ts'
import { statementProblems } from '../../src/training/statement-problems.ts'
import { violations } from './axe.ts'
import { builtSite } from './built-site.ts'
import type { OpenedPage, openPage } from './chromium.ts'
import { buildLearning } from './learning-machine.ts'
import { usePage } from './use-page.ts'

const panel = { width: 1024, height: 768, touch: true }
const lock = 'lessons/stop-and-lock.html'
const path = 'paths/operator.html'

const site = builtSite(() => buildLearning())

async function onPage(start: string, act: (page: Page, opened: OpenedPage) => Promise<void>, options: Parameters<typeof openPage>[1] = panel) {
  await usePage(site.browser, options, async (page, opened) => {
    await page.goto(site.fromDisk(start))
    await act(page, opened)
  })
}

const button = (page: Page | Locator, name: string) => page.getByRole('button', { name, exact: true })
const live = (page: Page) => page.locator('[data-quiz-live]')
const said = (page: Page) => page.locator('[data-lesson-end] > [data-said]')

/** Answers the question that is shown, by touch, and reads what it says. */
async function answer(page: Page, ...choices: readonly string[]): Promise<string | null> {
  for (const choice of choices) await live(page).getByText(choice, { exact: true }).tap()
  await button(live(page), 'Answer').tap()
  return live(page).locator('.quiz-verdict').textContent()
}

async function answerAllRight(page: Page): Promise<void> {
  expect(await answer(page, 'Who put it there')).toBe('Right.')
  await button(page, 'Next question').tap()
  expect(await answer(page, 'A raised load', 'Compressed air')).toBe('Right.')
  await button(page, 'See the result').tap()
}

async function record(page: Page, id = 'P-0042', name = 'Ana Gómez'): Promise<void> {
  const form = page.locator('[data-record-form]')
  await form.getByLabel('Id of the learner').fill(id)
  await form.getByLabel('Name of the learner').fill(name)
  await button(form, 'Record it').tap()
}

async function saved(page: Page, act: () => Promise<void>): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()])
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') }
}

/** What the records on this device hold, in short. */
async function recordsOn(page: Page): Promise<string[]> {
  await page.goto(site.fromDisk('lessons.html'))
  const { text } = await saved(page, () => button(page, 'Save as a file').first().tap())
  const read = readJournal(text)
  if ('problem' in read) throw new Error(JSON.stringify(read.problem))
  return read.entries.map(({ body }) => ('person' in body ? `${body.event} ${body.person}` : body.event))
}

describe('by touch, opened from disk', () => {
  test('two lessons with a reload in the middle, a failure, a sign-off, and the path that goes with them', async () => {
    await onPage('lessons.html', async (page) => {
      await expect.poll(() => page.locator('[data-records-count]').textContent()).toBe('No records yet.')
      await page.locator('.my-path').getByText('Operator').tap()
      await page.waitForURL(/paths\/operator\.html$/)
      expect(await page.locator('[data-path-lesson] .row-main > span').allTextContents()).toEqual([
        'Look round',
        'Stop the press & lock it',
        'Read the lamps',
      ])
      expect(await page.locator('[data-path-who]').isVisible()).toBe(false)

      // A lesson that asks nothing is recorded as taken.
      await page.locator('[data-path-lesson="look-round"] a').tap()
      await record(page)
      await expect.poll(() => said(page).textContent()).toMatch(/^Recorded for Ana Gómez \(P-0042\): entry 1\. Hash [0-9a-f]{8}\.$/)

      await page.goto(site.fromDisk(path))
      await expect.poll(() => page.locator('[data-path-count]').textContent()).toBe('1 of 3 lessons hold.')
      const next = page.locator('[data-path-next]')
      expect(await next.textContent()).toContain('Stop the press & lock it')
      expect(await next.textContent()).toContain('It comes next because these need it: Read the lamps.')
      expect(await next.textContent()).toContain('What it needs is done: Look round.')
      expect(await page.locator('[data-path-lesson="read-lamps"]').textContent()).toContain('open. Waits for: Stop the press & lock it')
      await button(page, 'Take this lesson')
        .or(page.getByRole('link', { name: 'Take this lesson' }))
        .tap()

      // Wrong, with the reason of each answer; a reload; then right.
      expect(await answer(page, 'The shift leader')).toBe('Not right.')
      expect(await live(page).textContent()).toContain('Only that person knows that the work is done.')
      expect(await live(page).textContent()).toContain('The person at the machine may still be inside it.')
      await page.reload()
      expect(await live(page).locator('.quiz-number').textContent()).toBe('Question 2 of 2')
      expect(await live(page).locator('.quiz-kept').textContent()).toMatch(/^Answers of .+ are kept on this device\. Are they not yours\?/)
      expect(await answer(page, 'A raised load')).toBe('Not right.')
      await button(page, 'See the result').tap()
      expect(await live(page).textContent()).toContain('Not passed.')
      expect(await live(page).textContent()).toContain('0 of 2 right. 100 % pass.')
      // The learner is known from the lesson before.
      expect(await page.locator('[data-record-form]').getByLabel('Name of the learner').inputValue()).toBe('Ana Gómez')
      await button(page, 'Record it').tap()
      await expect.poll(() => said(page).textContent()).toContain('entry 2')

      await page.reload()
      await answerAllRight(page)
      expect(await live(page).textContent()).toContain('Passed.')
      // Another spelling of the same id is the same person.
      await record(page, ' p0042 ', 'Ana Gómez')
      await expect.poll(() => said(page).textContent()).toContain('(P-0042): entry 3')

      const signOff = page.locator('[data-sign-off]')
      await signOff.getByLabel('Id of the person who signs').fill('p-0042')
      await signOff.getByLabel('Name of the person who signs').fill('Ana Gómez')
      await button(page, 'Sign off').tap()
      await expect.poll(() => signOff.locator('[data-said]').textContent()).toBe('Another person has to sign, not the learner.')
      await signOff.getByLabel('Id of the person who signs').fill('P-0007')
      await signOff.getByLabel('Name of the person who signs').fill('Jörg Weiß')
      await button(page, 'Sign off').tap()
      await expect.poll(() => signOff.locator('[data-said]').textContent()).toBe('Tick every item first. Open: 2.')
      for (const item of ['Stop the press', 'Lock it, and try to start it']) await signOff.getByText(item, { exact: true }).tap()
      await button(page, 'Sign off').tap()
      await expect
        .poll(() => signOff.locator('[data-said]').textContent())
        .toMatch(/^Jörg Weiß \(P-0007\) has signed off Ana Gómez \(P-0042\): entry 5\./)

      await page.goto(site.fromDisk(path))
      await expect.poll(() => page.locator('[data-path-count]').textContent()).toBe('2 of 3 lessons hold.')
      expect(await page.locator('[data-path-lesson="stop-and-lock"]').textContent()).toMatch(/holds until/)
      expect(await page.locator('[data-path-next]').textContent()).toContain('Read the lamps')
      expect(await recordsOn(page)).toEqual([
        'named P-0042',
        'completed P-0042',
        'failed P-0042',
        'passed P-0042',
        'named P-0007',
        'signed-off P-0042',
      ])
    })
  })

  test('nothing is recorded without id and name, and nobody signs off what nobody has passed', async () => {
    await onPage(lock, async (page) => {
      await button(live(page), 'Answer').tap()
      expect(await live(page).getByRole('alert').textContent()).toBe('Choose an answer first.')
      await answerAllRight(page)
      await button(page, 'Record it').tap()
      expect(await page.locator('[data-record-form] .field-wrong').allTextContents()).toEqual(['Enter the id.', 'Enter the name.'])
      await page.locator('[data-record-form]').getByLabel('Id of the learner').fill('P-1')
      await button(page, 'Record it').tap()
      expect(await page.locator('[data-record-form] .field-wrong').allTextContents()).toEqual(['Enter the name.'])

      const signOff = page.locator('[data-sign-off]')
      for (const item of await signOff.getByRole('checkbox').all()) await item.tap()
      await signOff.getByLabel('Id of the learner').fill('P-1')
      await signOff.getByLabel('Id of the person who signs').fill('P-7')
      await signOff.getByLabel('Name of the person who signs').fill('Sam')
      await button(page, 'Sign off').tap()
      await expect.poll(() => signOff.locator('[data-said]').textContent()).toContain('There is nothing of P-1 on this device.')
      expect(await recordsOn(page)).toEqual([])
    })
  })

  test('a trainer excuses a learner with a reason, and takes it back', async () => {
    await onPage(lock, async (page) => {
      const part = page.locator('[data-decision]')
      const outcome = part.locator('[data-said]')
      await part.getByText('For the trainer').tap()
      for (const [label, text] of [
        ['Id of the learner', 'P-1'],
        ['Name of the learner', 'Ana'],
        ['Id of the trainer', 'p1'],
        ['Name of the trainer', 'Sam'],
      ] as const)
        await part.getByLabel(label).fill(text)
      await button(part, 'Need not take it').tap()
      await expect.poll(() => outcome.textContent()).toBe('Another person has to decide, not the learner.')
      await part.getByLabel('Id of the trainer').fill('T-1')
      await button(part, 'Need not take it').tap()
      await expect.poll(() => outcome.textContent()).toBe('Enter a reason.')
      await part.getByLabel('Reason').fill('Trained by the maker of the press')
      await button(part, 'Need not take it').tap()
      await expect.poll(() => outcome.textContent()).toMatch(/^Ana \(P-1\) need not take this lesson: entry 2\./)
      await page.goto(site.fromDisk(path))
      await page.locator('[data-path-person]').selectOption('P-1')
      await expect.poll(() => page.locator('[data-path-lesson="stop-and-lock"]').textContent()).toContain('holds until')

      await page.goto(site.fromDisk(lock))
      await part.getByText('For the trainer').tap()
      await part.getByLabel('Id of the learner').fill('P-1')
      await part.getByLabel('Id of the trainer').fill('T-1')
      await part.getByLabel('Reason').fill('Did not try the start button')
      await button(part, 'Has to take it again').tap()
      await expect.poll(() => outcome.textContent()).toMatch(/^Ana \(P-1\) has to take this lesson again: entry 3\./)
      await page.goto(site.fromDisk(path))
      await page.locator('[data-path-person]').selectOption('P-1')
      await expect
        .poll(() => page.locator('[data-path-lesson="stop-and-lock"]').textContent())
        .toContain('It was taken back: Did not try the start button')
      expect(await recordsOn(page)).toEqual(['named P-1', 'named T-1', 'waived P-1', 'revoked P-1'])
    })
  })

  test('whoever finds the answers of somebody else begins anew', async () => {
    await onPage(lock, async (page) => {
      await answer(page, 'The shift leader')
      await page.reload()
      await button(page, 'Begin anew').tap()
      expect(await live(page).locator('.quiz-number').textContent()).toBe('Question 1 of 2')
      expect(await live(page).locator('.quiz-kept').count()).toBe(0)
      await page.reload()
      expect(await live(page).locator('.quiz-number').textContent()).toBe('Question 1 of 2')
      expect(await live(page).locator('.quiz-kept').count()).toBe(0)
      await answerAllRight(page)
      expect(await live(page).textContent()).toContain('Passed.')
    })
  })

  test('in Spanish', async () => {
    await onPage(`es/${lock}`, async (page) => {
      await live(page).getByText('Quien lo puso').tap()
      await button(page, 'Responder').tap()
      expect(await live(page).textContent()).toContain('Solo esa persona sabe que el trabajo ha terminado.')
      await button(page, 'Pregunta siguiente').tap()
      for (const choice of ['Una carga elevada', 'Aire comprimido']) await live(page).getByText(choice).tap()
      await button(page, 'Responder').tap()
      await button(page, 'Ver el resultado').tap()
      expect(await live(page).textContent()).toContain('Aprobado.')
      const form = page.locator('[data-record-form]')
      await form.getByLabel('Número de quien aprende').fill('P-0042')
      await form.getByLabel('Nombre de quien aprende').fill('Ana')
      await button(page, 'Registrar').tap()
      await expect.poll(() => said(page).textContent()).toMatch(/^Registrado para Ana \(P-0042\): entrada 1\./)
      await page.goto(site.fromDisk(`es/${path}`))
      await expect.poll(() => page.locator('[data-path-lesson="stop-and-lock"]').textContent()).toContain('espera una firma')
    })
  })
})

describe('the records of a device', () => {
  const take = async (page: Page, id: string) => {
    await page.goto(site.fromDisk('lessons/look-round.html'))
    await record(page, id, `Name of ${id}`)
    await expect.poll(() => said(page).textContent()).toContain(`(${id}): entry`)
  }
  const load = (page: Page, name: string, text: string) =>
    page.locator('[data-records-import]').setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) })
  const outcome = (page: Page) => page.locator('[data-records] [data-said]')

  test('are saved, wiped after two questions, and taken over again', async () => {
    await onPage('lessons.html', async (page) => {
      await take(page, 'P-1')
      await take(page, 'P-2')
      await page.goto(site.fromDisk('lessons.html'))
      const { name, text } = await saved(page, () => button(page, 'Save as a file').first().tap())
      const read = readJournal(text)
      if ('problem' in read) throw new Error(JSON.stringify(read.problem))
      const hash = read.entries[3]?.hash.slice(0, 8)
      expect(read.entries).toHaveLength(4)
      expect(await page.locator('[data-records-count]').textContent()).toBe(`4 entries. Hash of the last: ${hash}. Write these 8 digits on paper.`)
      expect(name).toMatch(new RegExp(`^tiny-\\d{4}-\\d{2}-\\d{2}-${hash}-records\\.jsonl$`))
      const xapi = await saved(page, () => button(page, 'Save as xAPI statements').tap())
      const statements: unknown[] = JSON.parse(xapi.text)
      expect(statements).toHaveLength(2)
      expect(statements.flatMap(statementProblems)).toEqual([])

      await button(page, 'Wipe all records').tap()
      expect(await page.locator('[data-wipe-first]').textContent()).toContain('Save the records as a file first.')
      await button(page, 'Go on to wipe').tap()
      await expect
        .poll(() => page.locator('[data-wipe-count]').textContent())
        .toBe('Wipe 4 entries now? They cannot be brought back from this device.')
      await button(page, 'Keep the records').tap()
      await page.reload()
      await expect.poll(() => page.locator('[data-records-count]').textContent()).toContain('4 entries')
      await button(page, 'Wipe all records').tap()
      await button(page, 'Go on to wipe').tap()
      await button(page, 'Wipe now').tap()
      await expect.poll(() => outcome(page).textContent()).toBe('All records on this device are wiped.')
      await page.reload()
      await expect.poll(() => page.locator('[data-records-count]').textContent()).toBe('No records yet.')

      await load(page, name, text)
      await expect.poll(() => outcome(page).textContent()).toBe('4 entries were taken over.')
      await load(page, name, text)
      await expect.poll(() => outcome(page).textContent()).toBe('All of this file is here already.')
      expect(await page.locator('[data-records-count]').textContent()).toContain(hash)

      for (const [changed, expected] of [
        [text.replace('Name of P-2', 'Name of P-3'), 'Nothing was taken over. The content of entry 2 was changed.'],
        [text.split('\n').slice(1).join('\n'), 'Nothing was taken over. Entry 0 is missing: number 1 stands in its place.'],
        [text.slice(0, -30), 'Nothing was taken over. The file ends inside entry 3.'],
        ['tag;text\n', 'Nothing was taken over. Entry 0 is not written as records are.'],
      ] as const) {
        await load(page, 'changed.jsonl', changed)
        await expect.poll(() => outcome(page).textContent()).toBe(expected)
      }
      expect(await page.locator('[data-records-count]').textContent()).toContain('4 entries')
    })
  })

  test('that went on apart are told from each other, and none is lost', async () => {
    let elsewhere = ''
    await onPage('lessons.html', async (page) => {
      await take(page, 'P-9')
      await page.goto(site.fromDisk('lessons.html'))
      elsewhere = (await saved(page, () => button(page, 'Save as a file').first().tap())).text
    })
    await onPage('lessons.html', async (page) => {
      await take(page, 'P-1')
      await page.goto(site.fromDisk('lessons.html'))
      await load(page, 'elsewhere.jsonl', elsewhere)
      await expect.poll(() => outcome(page).textContent()).toContain('Nothing was taken over. Entry 0 is another one than on this device.')
      expect(await recordsOn(page)).toEqual(['named P-1', 'completed P-1'])
    })
  })

  test('of two tabs that record at once are one chain with both', async () => {
    await onPage('lessons/look-round.html', async (page, { context }) => {
      const other = await context.newPage()
      await other.goto(site.fromDisk('lessons/look-round.html'))
      await Promise.all([record(page, 'P-1', 'Ana'), record(other, 'P-2', 'Sam')])
      await expect.poll(() => said(page).textContent()).toMatch(/^Recorded for Ana \(P-1\): entry [13]\./)
      await expect.poll(() => said(other).textContent()).toMatch(/^Recorded for Sam \(P-2\): entry [13]\./)
      expect((await recordsOn(page)).sort()).toEqual(['completed P-1', 'completed P-2', 'named P-1', 'named P-2'])
    })
  })

  test('of another tab are said where they are shown', async () => {
    await onPage('lessons.html', async (page, { context }) => {
      await expect.poll(() => page.locator('[data-records-count]').textContent()).toBe('No records yet.')
      await take(await context.newPage(), 'P-2')
      await expect.poll(() => outcome(page).textContent()).toBe('Another tab has added a record.')
      expect(await page.locator('[data-records-count]').textContent()).toContain('2 entries')
    })
  })

  test('hold the yearly inspection of a lockout, by another person than those included', async () => {
    await onPage('lockout/lo-1.html', async (page) => {
      const part = page.locator('[data-inspection]')
      const refused = part.locator('[data-said]')
      await expect.poll(() => part.locator('[data-inspection-status]').textContent()).toBe('No inspection is recorded on this device.')
      await part.getByText('Record an inspection').tap()
      await part.getByLabel('Id of the inspector').fill('A-1')
      await part.getByLabel('Name of the inspector').fill('Sam Reed')
      const people = part.getByLabel('Ids of the people included')
      await button(part, 'Record it').tap()
      await expect.poll(() => refused.textContent()).toBe('Tick that the inspector is authorised and does not use this procedure.')
      await part.getByRole('checkbox').tap()
      await button(part, 'Record it').tap()
      await expect.poll(() => refused.textContent()).toBe('Enter who was included.')
      await people.fill('P-1, a1')
      await button(part, 'Record it').tap()
      await expect.poll(() => refused.textContent()).toBe('The inspector cannot be one of the people included.')
      await people.fill('P-1, P-2')
      await part.getByLabel('Ids of those who have to be trained again').fill('P-3')
      await button(part, 'Record it').tap()
      await expect.poll(() => refused.textContent()).toBe('Only people who were included can be sent to training by this inspection.')
      await part.getByLabel('Ids of those who have to be trained again').fill('P-2')
      await button(part, 'Record it').tap()
      await expect.poll(() => refused.textContent()).toBe('Enter what has to be trained again.')
      await part.getByLabel('What has to be trained again').fill('The try before the work')
      await button(part, 'Record it').tap()
      await expect.poll(() => refused.textContent()).toMatch(/^The inspection is recorded: entry 1\. Hash [0-9a-f]{8}\.$/)
      await expect
        .poll(() => part.locator('[data-inspection-status]').textContent())
        .toMatch(/^Last inspection: .+, by Sam Reed\. The next is due on .+\.$/)
      // The sheet to sign is for paper, the form for the screen.
      expect(await page.locator('.signing').isVisible()).toBe(false)
      await page.emulateMedia({ media: 'print' })
      expect(await part.isVisible()).toBe(false)
      expect(await page.locator('.signing').isVisible()).toBe(true)
      await page.emulateMedia({ media: 'screen' })
      expect(await recordsOn(page)).toEqual(['named A-1', 'inspected'])
    })
  })

  test('say when the clock of the device has gone back', async () => {
    await onPage('lessons.html', async (page) => {
      await take(page, 'P-1')
      await page.clock.setFixedTime(new Date('2020-02-03T10:00:00'))
      await page.goto(site.fromDisk('lessons/look-round.html'))
      await record(page, 'P-2', 'Sam')
      await expect
        .poll(() => said(page).textContent())
        .toMatch(/entry 3\. .+ The clock of this device shows Feb 3, 2020, and there is a record of .+: set the clock\.$/)
      expect(await recordsOn(page)).toHaveLength(4)
    })
  })

  test('are not wiped when another tab has just added one', async () => {
    await onPage('lessons.html', async (page, { context }) => {
      await take(page, 'P-1')
      await page.goto(site.fromDisk('lessons.html'))
      await button(page, 'Wipe all records').tap()
      await button(page, 'Go on to wipe').tap()
      const other = await context.newPage()
      await take(other, 'P-2')
      await button(page, 'Wipe now').tap()
      await expect.poll(() => outcome(page).textContent()).toBe('Another tab has just added a record. Nothing was wiped.')
      expect(await recordsOn(page)).toHaveLength(4)
    })
  })

  /** Changes an entry behind the back of the site. */
  const tamper = (page: Page) =>
    page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const request = indexedDB.open('tiny.training-records')
          request.onerror = () => reject(request.error)
          request.onsuccess = () => {
            const transaction = request.result.transaction('entries', 'readwrite')
            const store = transaction.objectStore('entries')
            const got = store.get(1)
            got.onsuccess = () => store.put({ ...got.result, body: { ...got.result.body, date: '2020-01-01' } })
            transaction.oncomplete = () => {
              request.result.close()
              resolve()
            }
          }
        }),
    )

  test('that somebody has changed are said, nothing is added, and the result can be saved', async () => {
    await onPage(lock, async (page) => {
      await take(page, 'P-1')
      await tamper(page)
      await page.goto(site.fromDisk(lock))
      await answerAllRight(page)
      await record(page, 'P-2', 'Sam')
      await expect
        .poll(() => said(page).textContent())
        .toContain('The records on this device were changed. The content of entry 1 was changed. Nothing was added.')
      expect(await live(page).textContent()).toContain('Passed.')
      const pending = await saved(page, () => button(page, 'Save this result as a file').tap())
      expect(readJournal(pending.text)).toMatchObject({ entries: [{ body: { event: 'named' } }, { body: { event: 'passed', person: 'P-2' } }] })
      const asKept = await saved(page, () => button(page, 'Save the changed records as they are').tap())
      expect(asKept.text.split('\n').filter(Boolean)).toHaveLength(2)
      expect(asKept.text).toContain('2020-01-01')
      // After a reload the answers are still there.
      await page.reload()
      expect(await live(page).textContent()).toContain('Passed.')
      await page.goto(site.fromDisk('lessons.html'))
      await expect.poll(() => outcome(page).textContent()).toContain('The content of entry 1 was changed')
      await page.goto(site.fromDisk(path))
      await expect.poll(() => page.locator('[data-path] [data-said]').textContent()).toContain('The content of entry 1 was changed')
    })
  })

  test('cannot be kept in a private window: it is said, and the result can be saved', async () => {
    await onPage('lessons.html', async (page) => {
      await page.addInitScript(() => {
        const refuse = () => {
          throw new DOMException('The operation is insecure.', 'SecurityError')
        }
        Object.defineProperty(window, 'indexedDB', { get: refuse })
        Object.defineProperty(window, 'localStorage', { get: refuse })
        Object.defineProperty(window, 'sessionStorage', { get: refuse })
      })
      await page.goto(site.fromDisk(lock))
      await answerAllRight(page)
      await record(page)
      await expect.poll(() => said(page).textContent()).toContain('This device keeps no records: the window is private, or storage is off.')
      const { text } = await saved(page, () => button(page, 'Save this result as a file').tap())
      expect(readJournal(text)).toMatchObject({
        entries: [{ body: { name: 'Ana Gómez' } }, { body: { event: 'passed', score: { right: 2, of: 2 } } }],
      })
      expect(await live(page).textContent()).toContain('Passed.')
    })
  })

  const isFull = 'The storage of this device is full. Nothing was recorded and nothing was lost.'

  test('that find no room are said, and are recorded from the same page once there is room', async () => {
    await onPage(lock, async (page, { context }) => {
      const devTools = await context.newCDPSession(page)
      const quota = (quotaSize?: number) =>
        devTools.send('Storage.overrideQuotaForOrigin', { origin: 'file://', ...(quotaSize ? { quotaSize } : {}) })
      await quota(1)
      await answerAllRight(page)
      await record(page, 'P-2', 'Sam')
      await expect.poll(() => said(page).textContent()).toContain(isFull)
      await quota()
      await button(page, 'Record it').tap()
      await expect.poll(() => said(page).textContent()).toContain('Recorded for Sam (P-2): entry 1')
      expect(await recordsOn(page)).toEqual(['named P-2', 'passed P-2'])
    })
  })

  // The browser measures its room at the first write and remembers it, so here the write itself is refused.
  test('that find no more room stay as they are, and the file of the result goes on from them', async () => {
    await onPage('lessons.html', async (page) => {
      await take(page, 'P-1')
      await page.addInitScript(() => {
        IDBObjectStore.prototype.add = () => {
          throw new DOMException('The quota has been exceeded.', 'QuotaExceededError')
        }
      })
      await page.goto(site.fromDisk(lock))
      await answerAllRight(page)
      await record(page, 'P-2', 'Sam')
      await expect.poll(() => said(page).textContent()).toContain(isFull)
      const { text } = await saved(page, () => button(page, 'Save this result as a file').tap())
      expect(readJournal(text)).toMatchObject({
        entries: [{}, { body: { person: 'P-1' } }, { body: { name: 'Sam' } }, { body: { event: 'passed', person: 'P-2' } }],
      })
      expect(await recordsOn(page)).toEqual(['named P-1', 'completed P-1'])
    })
  })
})

describe('without scripts and on paper', () => {
  test('the questions stand there, with their reasons folded below', async () => {
    await onPage(
      lock,
      async (page) => {
        const all = page.locator('[data-quiz-all]')
        expect(await all.getByText('Who takes a lock away?').isVisible()).toBe(true)
        expect(await all.getByText('Only that person knows that the work is done.').isVisible()).toBe(false)
        await all.getByText('Answers and reasons').first().click()
        expect(await all.getByText('Only that person knows that the work is done.').isVisible()).toBe(true)
        expect(await page.locator('form:visible, [data-lesson-record]:visible').count()).toBe(0)
        await page.emulateMedia({ media: 'print' })
        expect(await all.getByText('Its weight pulls it down.').isVisible()).toBe(true)
        await page.goto(site.fromDisk(path))
        expect(await page.locator('[data-path-lesson="read-lamps"]').textContent()).toContain('After: Stop the press & lock it')
      },
      { ...panel, context: { javaScriptEnabled: false } },
    )
  })

  test('with scripts the paper has all questions, their reasons and lines to sign', async () => {
    await onPage(lock, async (page) => {
      expect(await page.locator('[data-quiz-all]').isVisible()).toBe(false)
      await page.emulateMedia({ media: 'print' })
      expect(await page.locator('[data-quiz-all]').getByText('Its weight pulls it down.').isVisible()).toBe(true)
      expect(await page.locator('[data-quiz-live]:visible, form:visible').count()).toBe(0)
      expect(await page.locator('.lines-on-paper .sign-line:visible').count()).toBe(2)
    })
  })
})

describe('for everyone', () => {
  test.each([
    ['light', 1024, 768],
    ['dark', 1024, 768],
    ['light', 800, 480],
    ['dark', 800, 480],
  ] as const)('axe finds nothing, no page is too wide, and answers fit a glove: %s, %d x %d', async (colorScheme, width, height) => {
    await onPage(
      lock,
      async (page) => {
        const look = async (name: string) => {
          const folder = process.env.FETTLE_PICTURES
          if (folder) await page.screenshot({ path: join(folder, `learning-${name}-${colorScheme}-${width}.png`), fullPage: true })
          expect(await violations(page)).toEqual([])
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
        }
        await look('question')
        const targets = await page
          .locator('.quiz-choice, .act-main:visible, .person input:visible')
          .evaluateAll((all) => all.map((it) => it.getBoundingClientRect().height))
        expect(Math.min(...targets)).toBeGreaterThanOrEqual(56)
        await answer(page, 'The shift leader')
        await look('reasons')
        await button(page, 'Next question').tap()
        await answer(page, 'A raised load', 'Compressed air')
        await button(page, 'See the result').tap()
        await button(page, 'Record it').tap()
        await look('result')
        await record(page)
        await expect.poll(() => said(page).textContent()).toContain('Recorded')
        await page.getByText('For the trainer').tap()
        await look('recorded')
        await page.goto(site.fromDisk('lessons/look-round.html'))
        await record(page)
        await expect.poll(() => said(page).textContent()).toContain('Recorded')
        await page.goto(site.fromDisk(path))
        await expect.poll(() => page.locator('[data-path-count]').textContent()).toBe('1 of 3 lessons hold.')
        await look('path')
        await page.goto(site.fromDisk('lessons.html'))
        await button(page, 'Wipe all records').tap()
        await look('records')
        await page.goto(site.fromDisk('lockout/lo-1.html'))
        await page.getByText('Record an inspection').tap()
        await look('inspection')
      },
      { width, height, touch: true, context: { colorScheme } },
    )
  })
})
