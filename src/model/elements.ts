import { writtenPhases } from './lockout-phases.ts'
import type { NamedThing } from './machine.ts'
import { probabilities, severities } from './schema/hazards-file.ts'
import { signalTypes } from './schema/tables.ts'

/** What an attribute of an MDX element refers to, if it names something that the machine must have. */
export type ReferenceKind = Exclude<NamedThing, 'card' | 'lesson' | 'lockout' | 'role'>

export interface Attribute {
  required?: true
  refersTo?: ReferenceKind
  oneOf?: readonly string[]
  number?: true
  /** The number of a sheet, or a reference to a field of it. */
  sheet?: true
  /** Takes several names, with spaces between them. */
  list?: true
  description: string
}

export interface Element {
  description: string
  attributes: Record<string, Attribute>
  /** Elements that may stand directly around it; without it, anywhere. */
  inside?: readonly string[]
}

/** Kinds of safety messages in a manual. Source: ANSI Z535.6, in its manner. */
export const messageKinds = ['section', 'grouped', 'embedded', 'directive'] as const

/** How often an alarm has a cause, the most likely first. */
export const likelihoods = ['usual', 'often', 'sometimes', 'rare'] as const

const signalWords = ['danger', 'warning', 'caution', 'notice'] as const

/** Facts of a device that a page can show. */
export const facts = [
  'tag',
  'kind',
  'description',
  'place',
  'area',
  'address',
  'symbol',
  'card',
  'channel',
  'terminal',
  'wire',
  'pin',
  'meaning',
  'range',
  'drawing',
  'part',
] as const

/** Every element that a page may use. No import is needed, and no other element is accepted. */
export const elements: Record<string, Element> = {
  Tag: {
    description: 'A device, set as its label',
    attributes: { id: { required: true, refersTo: 'tag', description: 'Tag as in the device list' } },
  },
  Part: {
    description: 'A part number',
    attributes: { number: { required: true, refersTo: 'part', description: 'Part number as in the bill of materials' } },
  },
  Drawing: {
    description: 'A drawing, at a sheet, with a device marked on it',
    attributes: {
      number: { required: true, refersTo: 'drawing', description: 'Drawing number' },
      sheet: { sheet: true, description: 'Sheet, from 1; or a reference with the column and the row of its field: /12.4:C' },
      tag: { refersTo: 'tag', description: 'Device to mark on the sheet' },
      zone: { description: 'Zone of the sheet to mark, where no device is named: B4, or a column alone: 4' },
    },
  },
  Alarm: { description: 'An alarm', attributes: { number: { required: true, refersTo: 'alarm', description: 'Alarm number' } } },
  Terminal: {
    description: 'A terminal in the cabinet, linked to the device whose signal is on it',
    attributes: { id: { required: true, refersTo: 'terminal', description: 'Terminal as in the I/O list: X2:14' } },
  },
  Page: {
    description: 'Another page; its own title is shown where the element is empty',
    attributes: { id: { required: true, refersTo: 'page', description: '<collection>/<page>, with #anchor for a heading' } },
  },
  Term: { description: 'A word of the glossary', attributes: { id: { required: true, refersTo: 'term', description: 'Id in glossary.yaml' } } },
  Safety: {
    description: 'A safety message. The signal word follows from severity and the two probabilities',
    attributes: {
      hazard: { refersTo: 'hazard', list: true, description: 'Hazards of hazards.yaml: text and signal word follow from them' },
      severity: { oneOf: severities, description: 'Worst credible harm, where no hazard is named' },
      accident: { oneOf: probabilities, description: 'Does an accident happen if the hazard is not avoided; needed for death or serious injury' },
      injury: { oneOf: probabilities, description: 'Does the accident cause death or serious injury; needed for death or serious injury' },
      kind: {
        oneOf: messageKinds,
        description:
          'Section message (before the first step), grouped in a safety chapter, embedded in or before a step, or a directive to read on; in a step it is embedded',
      },
      word: { oneOf: signalWords, description: 'Signal word, where the author wants it checked against the table' },
      symbols: { list: true, description: 'ISO 7010 codes of the signs beside it: W012 M021' },
    },
  },
  Hazard: { description: 'Nature of the hazard', attributes: {}, inside: ['Safety'] },
  Consequence: { description: 'What will or could happen', attributes: {}, inside: ['Safety'] },
  Avoid: { description: 'How to avoid it', attributes: {}, inside: ['Safety'] },
  Include: {
    description: 'A standard caution from content/cautions',
    attributes: { caution: { required: true, refersTo: 'caution', description: 'Id of the caution' } },
  },
  SafetySummary: {
    description: 'Every hazard of hazards.yaml with its message, grouped by what threatens, and what the signal words mean',
    attributes: {},
  },
  Fitted: {
    description: 'Text, steps or figures that are kept only where an option is fitted',
    attributes: { option: { required: true, refersTo: 'option', description: 'Option of machine.yaml' } },
  },
  Steps: {
    description: 'Numbered operations; in a lockout, those of one phase',
    attributes: { phase: { oneOf: writtenPhases, description: 'Phase of a lockout. `restore`: after the locks are off and the people are told' } },
  },
  Step: {
    description: 'One operation',
    attributes: {
      point: { refersTo: 'point', description: 'In a lockout: stands for the composed step of this isolation point' },
      source: { refersTo: 'energy', description: 'In a lockout: stands for the composed step of this energy source' },
    },
    inside: ['Steps'],
  },
  Result: { description: 'What is seen when the step worked', attributes: {}, inside: ['Step'] },
  Causes: { description: 'What may have raised an alarm, the most likely first', attributes: {} },
  Cause: {
    description: 'One cause: how it shows, and what is done about it',
    attributes: {
      likelihood: { required: true, oneOf: likelihoods, description: 'How often it is this' },
      tags: { refersTo: 'tag', list: true, description: 'Devices where it is looked for: the page leads to their places and readings' },
    },
    inside: ['Causes'],
  },
  Reading: {
    description: 'What should be measured or seen at one point of a signal path',
    attributes: {
      at: { required: true, oneOf: ['device', 'pin', 'terminal', 'card', 'address', 'screen', 'gauge'], description: 'Point of the signal path' },
      state: { description: 'In which state of the machine: target present' },
      low: { number: true, description: 'Lowest good value' },
      high: { number: true, description: 'Highest good value' },
      unit: { description: 'Unit of the values' },
      expect: { description: 'What is seen, where it is not a number: lamp on, 1, 0' },
      basis: { description: 'Where the limits come from: data sheet, standard, generic limit' },
    },
  },
  Fact: {
    description: 'A fact from the data about a device; in a lesson, about the device the page is made for',
    attributes: {
      of: { required: true, oneOf: facts, description: 'Which fact' },
      tag: { refersTo: 'tag', description: 'Device, where it is not the device of the page' },
    },
  },
  Figure: {
    description: 'A picture',
    attributes: {
      image: { required: true, refersTo: 'image', description: 'Path from the machine folder, or from content/' },
      alt: { required: true, description: 'What it shows, in words' },
      caption: { description: 'Text under it' },
    },
  },
  Callout: {
    description: 'A numbered mark on a picture; what it holds stands below the picture, beside the same number',
    attributes: {
      n: { required: true, number: true, description: 'Number of the mark: 1, 2, 3 in the order of the picture' },
      x: { required: true, number: true, description: 'Where it stands, in percent of the width from the left' },
      y: { required: true, number: true, description: 'Where it stands, in percent of the height from the top' },
    },
    inside: ['Figure'],
  },
  Table: {
    description: 'A table made from the data',
    attributes: {
      of: { required: true, oneOf: ['devices', 'signals', 'alarms', 'parts', 'energy', 'formats', 'isolation'], description: 'What it lists' },
      area: { refersTo: 'area', description: 'Only this area' },
      type: { oneOf: signalTypes, description: 'Only signals of this type' },
      spare: { oneOf: ['wear', 'spare', 'consumable'], description: 'Only parts of this spare class' },
    },
  },
  Anchor: { description: 'A fixed address inside a page', attributes: { id: { required: true, description: 'Kebab case' } } },
}
