/** Constants of heat that surfaces send out. */

/** W/(m² K⁴). Source: CODATA 2018. */
export const stefanBoltzmann = 5.670374419e-8

/** Kelvin at 0 °C. */
export const kelvin = 273.15
