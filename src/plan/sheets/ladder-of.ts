/** The grits with which a surface is brought to what the next layer wants, from what lies there. */
import { fillsScratches, type Grit, type LadderStart, rungsOf } from '#core/coating'
import type { Note } from '#core/note'
import type { Ground } from '../grounds.ts'
import type { Known } from '../known.ts'
import { sandRate } from '../steps/sand-rate.ts'
import type { LadderRung, ResolvedSheet, ZoneLayer } from '../types.ts'
import { discFor } from './disc-for.ts'
import { fills } from './fillers.ts'

export type Sanded = {
  readonly areaM2: number
  /** Of the filler or fairing compound that the layer lies on. */
  readonly filledM2: number
  /** What was done to the zone; only for the first layer that is no filler. */
  readonly ground: Ground | undefined
  readonly sandBefore: string
}

type Papers = Pick<Known, 'grits' | 'gritStep' | 'rates' | 'usualGrits' | 'consumableRates'>

/** Rungs, coarse to fine, the last over all of it; none where nothing is sanded. */
export function ladderOf(surface: Sanded, papers: Papers): readonly LadderRung[] {
  const { areaM2, sandBefore } = surface
  if (sandBefore === '' || sandBefore === 'none') return []
  const { grits, gritStep, rates } = papers
  const rung = (grit: string, area: number): LadderRung => rungOf(grit, area, papers)
  const last = grits.find(({ name }) => name === sandBefore)
  if (!last) return [rung(sandBefore, areaM2)]
  // Paper that the shop has a rate for is paper that it has.
  const atHand = grits.filter(({ name }) => name.startsWith('P') && name.slice(1) in rates.sandHoursPerM2)
  return rungsOf({
    starts: startsOf(surface, papers),
    area: areaM2,
    last,
    grits: atHand,
    mostRatio: gritStep.value,
  }).map(({ grit, area }) => rung(grit.name, area))
}

/** One grit over an area, by its rate and its disc. */
export const rungOf = (
  grit: string,
  areaM2: number,
  papers: Pick<Known, 'rates' | 'consumableRates'>,
): LadderRung => ({
  grit,
  areaM2,
  hoursPerM2: sandRate(papers.rates, grit),
  disc: discFor(grit, papers),
})

/** A knife leaves ridges in filler and repairs; a grinder leaves its scratches where the old pattern was. */
function startsOf(
  { areaM2, filledM2, ground }: Sanded,
  { grits, usualGrits }: Papers,
): readonly LadderStart[] {
  const { patternOff = 'none', mendedM2 = 0, sandedWith = '' } = ground ?? {}
  const start = (name: string, state: LadderStart['state'], area: number): readonly LadderStart[] => {
    const grit = grits.find((one) => one.name === name)
    return grit && area > 0 ? [{ grit, state, area: Math.min(area, areaM2) }] : []
  }
  const patternM2 = patternOff === 'none' ? 0 : patternOff === 'whole' ? areaM2 : patternOff
  return [
    // Fairing goes over the repairs first.
    ...start(usualGrits.fillerCut, 'proud', Math.max(filledM2, mendedM2)),
    // Filler over all of it hides what the grinder left.
    ...start(usualGrits.patternOff, 'scratched', Math.max(0, patternM2 - filledM2)),
    ...start(sandedWith, 'scratched', Math.max(0, areaM2 - filledM2)),
  ]
}

/** Scratches of the last grit that show: under a dark finish by custom, in any other film by its thickness. */
export function scratchNotes(
  layer: ZoneLayer,
  sheet: ResolvedSheet | undefined,
  known: Pick<Known, 'grits' | 'gritOverFilm' | 'usualGrits'>,
): readonly Note[] {
  const { grits, gritOverFilm, usualGrits } = known
  const last = grits.find(({ name }) => name === layer.sandBefore)
  if (!last || fills(layer.role)) return []
  const about = { zone: layer.zone, layer: layer.layer, name: layer.name, grit: last.name }
  if (layer.role === 'finish') {
    const finest = grits.find(({ name }) => name === usualGrits.underDark)
    if (sheet?.shade !== 'dark' || !finest || last.sizeM <= finest.sizeM) return []
    return [
      {
        code: 'buildup.scratchesUnderDark',
        severity: 'caution',
        data: { ...about, finer: finest.name },
        source: 'common practice',
      },
    ]
  }
  if (!layer.dryFilmM) return []
  const filmM = layer.dryFilmM.value * layer.coats
  const mostRatio = gritOverFilm.value
  if (fillsScratches({ sizeM: last.sizeM, filmM, mostRatio })) return []
  return [
    {
      code: 'buildup.scratchesShow',
      severity: 'caution',
      data: { ...about, filmUm: filmM * 1e6, finer: finerFor(filmM * mostRatio, grits)?.name ?? '' },
      source: 'assumed',
    },
  ]
}

/** The coarsest of the same system whose scratches are still levelled. */
const finerFor = (mostM: number, grits: readonly Grit[]): Grit | undefined =>
  grits
    .filter(({ name, sizeM }) => name.startsWith('P') && sizeM <= mostM)
    .sort((a, b) => b.sizeM - a.sizeM)[0]
