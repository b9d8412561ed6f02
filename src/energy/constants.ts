/** Source: ISO 2533, standard atmosphere at sea level. */
export const standardAtmospherePa = 101_325

/** Source: ISO 80000-3, standard acceleration of free fall. */
export const standardGravityMPerS2 = 9.80665
