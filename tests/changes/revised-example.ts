import { expect } from 'vitest'
import { diskFolder, type Folder, memoryFolder } from '../../src/load/folder.ts'

const example = diskFolder('example-machine', '')

/** `[what stands there, what stands there in the new revision]` */
export type Edit = readonly [was: string, is: string]

/** The example machine with some texts replaced, by file. Each text stands there once, or the edit is wrong. */
export function revised(edits: Readonly<Record<string, readonly Edit[]>>): Folder {
  const files = new Map<string, string | Uint8Array>(example.list().map((path) => [path, example.read(path)]))
  for (const [path, list] of Object.entries(edits)) {
    let text = new TextDecoder().decode(example.read(path))
    for (const [was, is] of list) {
      expect(text.split(was).length - 1, `${was} in ${path}`).toBe(1)
      text = text.replace(was, () => is)
    }
    files.set(path, text)
  }
  return memoryFolder(files)
}

/** Known changes of every kind. Two tags are exchanged, one number is given to another alarm and one to another part. */
export const edits: Readonly<Record<string, readonly Edit[]>> = {
  'data/devices.csv': [
    ['\nPRS204,', '\nPRS299,'],
    ['\nPRS205,', '\nPRS204,'],
    ['\nPRS299,', '\nPRS205,'],
    ['\nCB201,', '\nCB209,'],
    ['\nPI224,pressure gauge,manómetro,Air pressure in the clamp,', '\nPI224,pressure gauge,manómetro,Pressure of the air in the clamp,'],
    ['lift,346,268,"lift frame, left post, cam rail"', 'lift,360,268,"lift frame, right post, cam rail"'],
    ['4466-0005,E-106,1', '4466-0007,E-106,1'],
    ['5130-0006,P-201,1,', '5130-0006,W-301,1,'],
    ['\nPIN208,locking pin', '\nLED209,lamp,lámpara,Lights the lift frame,Ilumina el bastidor,lamp,lift,,,,,E-107,1,\nPIN208,locking pin'],
  ],
  'data/io-list.csv': [
    ['%IX0.3,I_LiftBottom,PRS204', '%IX0.3,I_LiftBottom,PRS205'],
    ['%IX0.4,I_LiftTop,PRS205', '%IX0.4,I_LiftTop,PRS204'],
    ['%IX0.6,', '%IX3.7,'],
    ['X2:9,', 'X2:32,'],
    ['104209,,NO,on when there is oil', '104209,,NC,on when there is oil'],
  ],
  'data/bom.csv': [
    [
      '\n0012-0100,"Fuse link 5 x 20 mm, 2 A, slow, for 24 V branches","Fusible 5 x 20 mm, 2 A, lento, para ramas de 24 V",6,pcs,Quenby Electric,002.000,consumable,12,,,',
      '',
    ],
    ['Rodillo guía del carro del elevador,8,', 'Rodillo guía del carro del elevador,6,'],
    ['\n3110-0309,', '\n3110-0388,'],
    [
      '1010-0110,Belt scraper,Rascador de banda,1,pcs,Lindmoor Conveying,LB400-SC',
      '1010-0110,Oil pump for the lift chain,Bomba de aceite,1,pcs,Quenby Electric,OP-7',
    ],
    ['none,,1030-0040,,', 'none,,1030-0052,,'],
  ],
  'data/drawings.csv': [
    [
      '"Lift: power, inputs, outputs","Elevador: potencia, entradas, salidas",schematic,3,C',
      '"Lift: power, inputs, outputs","Elevador: potencia, entradas, salidas",schematic,3,D',
    ],
  ],
  'data/alarms.csv': [
    [
      'A0102;Light curtain interrupted;Cortina fotoeléctrica interrumpida;stop',
      'A0102;Light curtain interrupted;Cortina fotoeléctrica interrumpida;hold',
    ],
    ['\nA0301;', '\nA0399;'],
    ['\nA0401;', '\nA0301;'],
    ['A0203;Clamp not closed;', 'A0203;Clamp did not close;'],
  ],
  'data/energy.yaml': [['    waitS: 300\n    waitBasis: { en: Label on the drives', '    waitS: 420\n    waitBasis: { en: Label on the drives']],
  'data/hazards.yaml': [
    [
      'minor-or-moderate-injury }\n    builtIn:\n      - en: Lockable valve',
      'death-or-serious-injury, accident: could, injury: could }\n    builtIn:\n      - en: Lockable valve',
    ],
    ['The noise could damage your hearing for good.', 'The noise could make you deaf.'],
    ['symbols: [W011]', 'symbols: [W011, M008]'],
  ],
  'data/formats.csv': [
    [
      'C6420,lift-step,Lift step from crate to crate,Paso del elevador de caja a caja,186,',
      'C6420,lift-step,Lift step from crate to crate,Paso del elevador de caja a caja,190,',
    ],
  ],
  'data/cards.csv': [['TC1,"2 inputs for thermocouples, with cold junction"', 'TC1,"2 inputs for thermocouples, with a cold junction inside"']],
  'machine.yaml': [["revision: 'D'", "revision: 'E'"]],
}
