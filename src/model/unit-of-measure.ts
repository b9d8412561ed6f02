const pieces = ['pc', 'pcs', 'piece', 'pieces', 'ea', 'each', 'unit', 'units', 'st', 'stk', 'stück', 'pza', 'pzas', 'ud', 'uds', 'u', 'nr', 'no']

/** Whether a quantity in this unit counts single things. A quantity without a unit does. */
export function countsPieces(unit: string | undefined): boolean {
  return unit === undefined || pieces.includes(unit.toLowerCase().replace(/\.$/, ''))
}
