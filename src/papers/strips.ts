/**
 * What flows down a sheet: strips of a known height that are never cut, gathered into units that stay together where
 * a page has room for them.
 */
import type { Drawing } from './shapes.ts'

/** Draws itself with its upper edge at `top`; x is already where it belongs. */
export type Strip = { readonly height: number; readonly draw: (top: number) => Drawing }

/** Stays on one page unless it is higher than a page. */
export type Unit = readonly Strip[]

export type Flowing = {
  /** Stays with the first unit. */
  readonly heading?: Strip
  /** Head of a table: under the heading, and again on every page the units go on to. */
  readonly repeat?: Strip
  readonly units: readonly Unit[]
  /** Space before, mm; none at the top of a page. */
  readonly gap: number
}

export const heightOf = (strips: readonly Strip[]): number =>
  strips.reduce((sum, strip) => sum + strip.height, 0)

export const space = (height: number): Strip => ({ height, draw: () => [] })

/** Several things side by side, as high as the highest. */
export const beside = (strips: readonly Strip[]): Strip => ({
  height: Math.max(0, ...strips.map((strip) => strip.height)),
  draw: (top) => strips.flatMap((strip) => strip.draw(top)),
})

/** One under the other, as one strip. */
export const stacked = (strips: readonly Strip[]): Strip => ({
  height: heightOf(strips),
  draw: (top) => {
    let y = top
    return strips.flatMap((strip) => {
      const drawing = strip.draw(y)
      y += strip.height
      return drawing
    })
  },
})
