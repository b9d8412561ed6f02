import type { Machine, Sheet } from './machine.ts'

/** The sheet that shows the machine from above. Undefined where machine.yaml names none, or one that is not in the register. */
export function planSheet({ file: { plan }, drawings }: Pick<Machine, 'file' | 'drawings'>): Sheet | undefined {
  const sheets = plan && drawings.find(({ number }) => number.value === plan.drawing)?.sheetList
  return sheets?.find(({ number }) => number === (plan?.sheet ?? 1))
}
