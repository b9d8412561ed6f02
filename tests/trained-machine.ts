import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** The sound machine with a lesson that asks: two questions, of which both have to be right. */
const lesson = `---
title: Stop the press & lock it
revision: A
minutes: 15
objectives: [Stop the press and say who locks it]
roles: [operator]
needs: [look-round]
questions:
  - ask: Who takes a lock away?
    answers:
      - { text: Who put it there, right: true, because: Only that person knows that the work is done. }
      - { text: The shift leader, because: The person at the machine may still be inside it. }
  - ask: What comes after the lock?
    answers:
      - { text: The work, because: A lock says nothing about energy that is still there. }
      - { text: The proof that nothing moves, right: true, because: Only a try shows that the energy is gone. }
passPercent: 100
practical: [Stop the press and lock it]
---
Stop the press. Find <Fact of="tag" tag="PS-101" /> and read <Page id="lockout/lo-1" />. <Page id="lessons/look-round" /> comes first.
`

const training = `roles: [{ id: operator, name: Operator }]
sequences:
  - { id: first-day, name: First day, role: operator, lessons: [look-round, stop-and-lock] }
  - { id: sensors, name: Sensors, role: operator, lessons: [check-pressure] }
`

/** A copy on disk of the sound machine, with \`stop-and-lock\`, and with a sequence of lessons that are made for devices; `shared` has no pages. */
export function writeTrainedMachine(): { folder: string; shared: string; dir: string; remove(): void } {
  const dir = mkdtempSync(join(tmpdir(), 'fettle-trained-'))
  const folder = join(dir, 'machine')
  cpSync('tests/fixtures/sound-machine', folder, { recursive: true })
  writeFileSync(join(folder, 'pages/lessons/stop-and-lock.mdx'), lesson)
  writeFileSync(join(folder, 'training.yaml'), training)
  const shared = join(dir, 'shared')
  mkdirSync(shared)
  return { folder, shared, dir, remove: () => rmSync(dir, { recursive: true, force: true }) }
}
