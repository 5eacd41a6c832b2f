/** How much of the sun a colour takes in. */

export type PaintColour = {
  readonly name: string
  /** Share of the sun's light, seen and unseen, that is taken in, 0..1. */
  readonly absorptance: number
  readonly source: string
}

/** Share of heat that paints of any colour take in and send out, 0..1. Source: ASTM E1980-11; 0.83 to 0.90 measured. */
export const paintEmittance = 0.9

const code = 'Australian building code 2019, values by ASTM E903'
const measured = 'measured paints, spacecraft thermal design tables'
const between = 'assumed, by the colours beside it'

/** From the coolest to the hottest. How light a colour looks says little: half of the sun is not seen. */
export const paintColours: readonly PaintColour[] = [
  { name: 'white', absorptance: 0.26, source: measured },
  { name: 'light cream', absorptance: 0.3, source: code },
  { name: 'off-white', absorptance: 0.35, source: code },
  { name: 'light grey', absorptance: 0.45, source: code },
  { name: 'light blue', absorptance: 0.5, source: between },
  { name: 'buff', absorptance: 0.6, source: code },
  { name: 'yellow', absorptance: 0.6, source: code },
  { name: 'medium grey', absorptance: 0.7, source: between },
  { name: 'red', absorptance: 0.75, source: code },
  { name: 'green', absorptance: 0.75, source: code },
  { name: 'dark grey', absorptance: 0.9, source: code },
  { name: 'dark blue', absorptance: 0.9, source: between },
  { name: 'black', absorptance: 0.95, source: measured },
]
