import { z } from 'zod'

/** The screen on the machine, where its reader stands, and the hand that touches it. */
export const panel = z
  .strictObject({
    diagonalInch: z.number().positive().optional().describe('From corner to corner of the picture, in inches; or `diagonalMm`'),
    diagonalMm: z.number().positive().optional().describe('The same in mm'),
    widthPx: z.number().int().min(240).max(8192).describe('Pixels of the screen, in the position in which it is fitted'),
    heightPx: z.number().int().min(240).max(8192),
    distanceMm: z.number().min(200).max(3000).describe('From the eye to the screen, in mm'),
    touch: z.enum(['gloves', 'bare']).optional().describe('The hand that touches it: targets of 15 mm or of 9.5 mm. Without it gloves'),
    textArcMin: z
      .number()
      .min(8)
      .max(60)
      .optional()
      .describe('Angle in minutes of arc under which a capital letter of the text is seen: 20 to 22 is preferred, 16 the least. Without it 20'),
    backToStartMin: z
      .number()
      .min(0)
      .max(240)
      .optional()
      .describe('Minutes without a touch after which this screen goes back to the start page; 0: never. Without it 10'),
  })
  .refine(({ diagonalInch, diagonalMm }) => (diagonalInch === undefined) !== (diagonalMm === undefined), {
    message: 'The diagonal is given once, in inches or in mm',
  })
