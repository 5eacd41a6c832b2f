/** Millilitres and grams as a cup and a scale are read, whatever the boat is measured in: what they add up to shows. */
import { writeAs } from '#units'
import type { JobView } from '../../job/job-view.ts'

type Reader = Pick<JobView, 'locale'>

export const inCup = (ml: number, decimals: number, { locale }: Reader): string =>
  writeAs(ml * 1e-6, 'ml', { locale, decimals })

export const onScales = (g: number, { locale }: Reader): string =>
  writeAs(g * 1e-3, 'g', { locale, decimals: g < 20 ? 1 : 0 })
