import { law } from './law.ts'

/** Energy in joule of a liquid under pressure. Mineral oil has a bulk modulus of about 1.5 GPa (from memory). */
export const compressedOilEnergy = law({
  formula: 'E = p²·V/(2·K)',
  unit: 'J',
  inputs: ['gaugePressurePa', 'volumeM3', 'bulkModulusPa'],
  value: ({ gaugePressurePa, volumeM3, bulkModulusPa }) => (gaugePressurePa ** 2 * volumeM3) / (2 * bulkModulusPa),
})
