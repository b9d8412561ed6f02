export type ThermocoupleType = 'J' | 'K' | 'T'

export interface Segment {
  fromC: number
  toC: number
  /** In mV, by rising power of the temperature in °C. */
  coefficients: readonly number[]
}

/**
 * Reference functions of ITS-90 against a junction at 0 °C. Source: NIST ITS-90 Thermocouple Database (Standard
 * Reference Database 60), public domain; the same functions as IEC 60584-1.
 */
export const segments: Readonly<Record<ThermocoupleType, readonly Segment[]>> = {
  J: [
    {
      fromC: -210,
      toC: 760,
      coefficients: [
        0.0, 0.050381187815, 3.047583693e-5, -8.568106572e-8, 1.3228195295e-10, -1.7052958337e-13, 2.0948090697e-16, -1.2538395336e-19,
        1.5631725697e-23,
      ],
    },
    { fromC: 760, toC: 1200, coefficients: [296.45625681, -1.4976127786, 0.0031787103924, -3.1847686701e-6, 1.5720819004e-9, -3.0691369056e-13] },
  ],
  K: [
    {
      fromC: -270,
      toC: 0,
      coefficients: [
        0.0, 0.039450128025, 2.3622373598e-5, -3.2858906784e-7, -4.9904828777e-9, -6.7509059173e-11, -5.7410327428e-13, -3.1088872894e-15,
        -1.0451609365e-17, -1.9889266878e-20, -1.6322697486e-23,
      ],
    },
    {
      fromC: 0,
      toC: 1372,
      coefficients: [
        -0.017600413686, 0.038921204975, 1.8558770032e-5, -9.9457592874e-8, 3.1840945719e-10, -5.6072844889e-13, 5.6075059059e-16, -3.2020720003e-19,
        9.7151147152e-23, -1.2104721275e-26,
      ],
    },
  ],
  T: [
    {
      fromC: -270,
      toC: 0,
      coefficients: [
        0.0, 0.038748106364, 4.4194434347e-5, 1.1844323105e-7, 2.0032973554e-8, 9.0138019559e-10, 2.2651156593e-11, 3.6071154205e-13,
        3.8493939883e-15, 2.8213521925e-17, 1.4251594779e-19, 4.8768662286e-22, 1.079553927e-24, 1.3945027062e-27, 7.9795153927e-31,
      ],
    },
    {
      fromC: 0,
      toC: 400,
      coefficients: [
        0.0, 0.038748106364, 3.329222788e-5, 2.0618243404e-7, -2.1882256846e-9, 1.0996880928e-11, -3.0815758772e-14, 4.547913529e-17,
        -2.7512901673e-20,
      ],
    },
  ],
}

/** Type K from 0 °C on, besides: a₀·exp(a₁·(t − a₂)²) in mV. The same source. */
export const exponentialK = { a0: 0.1185976, a1: -0.1183432e-3, a2: 126.9686 } as const
