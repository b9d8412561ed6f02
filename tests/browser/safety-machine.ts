import { readFileSync } from 'node:fs'
import type { MessageForm } from '../../src/hazard/panel.ts'
import { type BuiltMachine, buildSoundMachine } from './build-sound-machine.ts'

/** Attributes that give each signal word, in the order of harm, and the verb that its consequence takes. */
const harms = [
  ['severity="death-or-serious-injury" accident="will" injury="will"', 'It will crush your hand.'],
  ['severity="death-or-serious-injury" accident="could" injury="will"', 'It could crush your hand.'],
  ['severity="minor-or-moderate-injury"', 'It could bruise your hand.'],
  ['severity="property-damage"', 'The clamp can jam.'],
] as const

const message = (kind: string, at: number) => {
  const [attributes, consequence] = harms[at] ?? harms[0]
  return [
    `<Safety ${attributes} kind="${kind}"${at === 1 ? ' symbols="W024 M009 M069"' : ''}>`,
    '  <Hazard>The clamp closes.</Hazard>',
    `  <Consequence>${consequence}</Consequence>`,
    '  <Avoid>Keep out of the clamp. See <Tag id="DISC1" /> and [use](front/use).</Avoid>',
    '</Safety>',
  ].join('\n')
}

const kinds = ['section', 'grouped', 'embedded'] as const
const page = `---
title: Messages
---
<Safety kind="directive">Read <Page id="front/use" /> first.</Safety>

${kinds.map((kind) => `## Messages of the kind ${kind}\n\n${harms.map((_, at) => message(kind, at)).join('\n\n')}`).join('\n\n')}

## In steps

<Steps>
  <Step>
${message('embedded', 1).replace(/^/gm, '    ')}

    Close the clamp.
  </Step>
  <Step>Open it.</Step>
</Steps>
`

const hazards = `hazards:
  - id: pinch
    name: { en: Pinch point, es: Atrapamiento }
    group: mechanical
    origin: { en: The clamp, es: La pinza }
    areas: [press]
    tags: [PS-101]
    phases: [operation]
    message:
      hazard: { en: The clamp closes., es: La pinza se cierra. }
      consequence: { en: It could bruise your hand., es: Podría golpearle la mano. }
      avoid: { en: Keep your hands out., es: No meta las manos. }
    residual: { severity: minor-or-moderate-injury }
    builtIn: [{ en: Slow closing, es: Cierre lento }]
    user: [{ en: Instruct the operators, es: Instruir a los operadores }]
    assessment: RA-1 no. 1
    symbols: [W024]
  - id: crush
    name: { en: Clamp, es: Pinza }
    group: mechanical
    origin: { en: The clamp, es: La pinza }
    areas: [press]
    phases: [maintenance]
    caution: crush
    residual: { severity: death-or-serious-injury, accident: could, injury: could }
    builtIn: []
    user: [{ en: Lock out, es: Bloquear }]
    assessment: RA-1 no. 2
`

/**
 * Builds the sound machine with a page that shows every signal word in every kind of message, in one form:
 * `front/messages.html` and `front/summary.html`, in Spanish below `es/`.
 */
export function buildMessages(form: MessageForm): Promise<BuiltMachine> {
  const top = readFileSync('tests/fixtures/sound-machine/machine.yaml', 'utf8')
  return buildSoundMachine({
    'machine.yaml': `${top.trimEnd()}\n  hazards: { file: data/hazards.yaml }\nsafetyMessages: { form: ${form} }\n`,
    'data/hazards.yaml': hazards,
    'pages/front/messages.mdx': page,
    'pages/front/summary.mdx': '---\ntitle: Summary\n---\n## Hazards\n\n<SafetySummary />\n',
  })
}
