import { flowSwitchBands } from '../signals/flow-switch.ts'
import { law } from '../signals/law.ts'
import { pressureSwitchBands } from '../signals/pressure-switch.ts'
import { between, type Expectation, stated } from './expectation.ts'
import type { Wired } from './wiring.ts'

/** Where a pressure switch trips and resets, in bar. */
export function pressureExpectations({ values }: Wired): Expectation[] {
  const bands = pressureSwitchBands({
    setBar: values.number('setBar'),
    deadBandBar: values.number('deadBandBar'),
    tolerancePercent: values.number('tolerancePercent'),
    fullScaleBar: values.number('fullScaleBar'),
  })
  const frame = { measured: 'switch-pressure', point: 'device', unit: 'bar' } as const
  return [
    between({ ...frame, state: 'rising' }, bands.tripLow, bands.tripHigh),
    between({ ...frame, state: 'falling' }, bands.resetLow, bands.resetHigh),
  ]
}

const setLess = law({
  formula: 't = t₁ − c',
  unit: '°C',
  inputs: ['temperatureC', 'fixedK'],
  value: ({ temperatureC, fixedK }) => temperatureC - fixedK,
})
const setMore = law({
  formula: 't = t₁ + c',
  unit: '°C',
  inputs: ['temperatureC', 'fixedK'],
  value: ({ temperatureC, fixedK }) => temperatureC + fixedK,
})

/** Where a temperature switch trips, in °C; one that is reset by hand has no dead band. */
export function temperatureSwitchExpectations({ values }: Wired): Expectation[] {
  const [temperatureC, fixedK, deadBand] = [values.number('setC'), values.number('toleranceK'), values.number('deadBandK')]
  const frame = { measured: 'switch-temperature', point: 'device', unit: '°C' } as const
  const naming = (it: Expectation): Expectation =>
    it.notComputed ? { ...it, notComputed: [...(temperatureC ? [] : ['setC']), ...(fixedK ? [] : ['toleranceK'])] } : it
  const trip = naming(between({ ...frame, state: 'rising' }, setLess({ temperatureC, fixedK }), setMore({ temperatureC, fixedK })))
  if (!temperatureC || !deadBand) return [trip]
  const reset = { ...temperatureC, value: temperatureC.value - deadBand.value }
  return [trip, naming(between({ ...frame, state: 'falling' }, setLess({ temperatureC: reset, fixedK }), setMore({ temperatureC: reset, fixedK })))]
}

/** The level in mm at which a level switch changes. */
export function levelSwitchExpectations({ values }: Wired): Expectation[] {
  const level = values.number('switchLevelMm')
  const frame = { measured: 'switch-level', point: 'device', state: 'rising', unit: 'mm' } as const
  return [level ? stated({ ...frame, value: level.value }, level) : { ...stated(frame), notComputed: ['switchLevelMm'] }]
}

/** Where a flow switch trips and resets, in l/min. */
export function flowSwitchExpectations({ values }: Wired): Expectation[] {
  const bands = flowSwitchBands({
    setLPerMin: values.number('setLPerMin'),
    deadBandLPerMin: values.number('deadBandLPerMin'),
    toleranceLPerMin: values.number('toleranceLPerMin'),
  })
  const frame = { measured: 'switch-flow', point: 'device', unit: 'l/min' } as const
  return [
    between({ ...frame, state: 'rising' }, bands.tripLow, bands.tripHigh),
    between({ ...frame, state: 'falling' }, bands.resetLow, bands.resetHigh),
  ]
}
