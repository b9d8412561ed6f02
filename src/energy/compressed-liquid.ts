import { law } from './law.ts'

/** Energy in joule of a liquid under pressure. Bulk modulus from memory: mineral oil about 1.5 GPa, water about 2.2 GPa. */
export const compressedLiquidEnergy = law({
  formula: 'E = p²·V/(2·K)',
  unit: 'J',
  inputs: ['gaugePressurePa', 'volumeM3', 'bulkModulusPa'],
  value: ({ gaugePressurePa, volumeM3, bulkModulusPa }) => (gaugePressurePa ** 2 * volumeM3) / (2 * bulkModulusPa),
})
