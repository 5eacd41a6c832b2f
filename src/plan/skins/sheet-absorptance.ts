/** How much of the sun a product takes in once it is on. */
import { absorptanceOf, type Shade } from '#core/climate'
import type { ResolvedSheet } from '../types.ts'

/** Share, by its colour or at least its shade; undefined where nothing is said of it. */
export const sheetAbsorptance = ({
  colour,
  shade,
}: Pick<ResolvedSheet, 'colour' | 'shade'>): number | undefined =>
  absorptanceOf({ colour, shade: shade === '' ? undefined : (shade as Shade) })
