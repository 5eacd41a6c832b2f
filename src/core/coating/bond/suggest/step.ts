/** One layer put on what is there, prepared as the rules ask, with what it takes. */

import { breaks, type Fault } from '../fault.ts'
import { practiceOf } from '../film-limits.ts'
import type { Bond } from '../joint.ts'
import { type Judging, judgeInItself, judgeOnSurfaces } from '../judge.ts'
import type { Grit } from '../rule.ts'
import type { Exposed, Sanding, Stack, StackLayer } from '../stack.ts'
import { isGrit, materialOf } from '../stack.ts'
import { add, type Cost } from './cost.ts'
import { coatsOf, type Offer } from './offer.ts'

export type Step = {
  readonly offer: Offer
  readonly layer: StackLayer
  readonly cost: Cost
  /** It may be suggested: nothing keeps it from holding or leaves it in doubt. */
  readonly holds: boolean
  /** What does, where it may not; looked for only when somebody wants to know. */
  readonly faults: () => readonly Fault[]
}

/** What is the same for an offer wherever it goes. */
export type Plain = {
  readonly offer: Offer
  /** Put on after this sanding; the same object for the same paper. */
  readonly after: (sanding: Sanding) => StackLayer
  readonly refused: readonly Fault[]
}

export type At = {
  readonly below: readonly Exposed[]
  readonly plain: Plain
  readonly where: Stack['where']
  readonly areaM2: number
}

const doubtful: ReadonlySet<Fault['kind']> = new Set(['untold', 'disputed', 'may fail'])
/** A suggestion takes no chances: what nobody knows, what is disputed and what may fail is left out with what fails. */
export const isRefused = (fault: Fault): boolean => breaks(fault) || doubtful.has(fault.kind)

/** The offer as a layer in as many coats as it takes, sanded between them where it has to be or usually is. */
export function plainOf(judging: Judging, offer: Offer, where: Stack['where']): Plain {
  const { verdict, preparation } = judging.bondOf({ under: materialOf(offer), over: offer, where })
  const always = verdict !== 'no' && preparation.key === 'always' ? preparation.grit?.finest : undefined
  const layer: StackLayer = {
    id: offer.id,
    family: offer.family,
    role: offer.role,
    ...(offer.shade === undefined ? {} : { shade: offer.shade }),
    coats: coatsOf(judging.book, offer),
    covers: true,
    before: 'none',
    between: always ?? practiceOf(judging.book.practice, offer)?.between ?? 'none',
    ...(offer.dryFilmM === undefined ? {} : { dryFilmM: offer.dryFilmM }),
    clocks: offer.clocks,
    colour: offer.colour,
  }
  const layers = new Map<string, StackLayer>()
  return {
    offer,
    after: (sanding) => {
      const key = isGrit(sanding) ? sanding.name : 'none'
      const made = layers.get(key) ?? { ...layer, before: sanding ?? 'none' }
      layers.set(key, made)
      return made
    },
    refused: judgeInItself(judging, layer, where).faults.filter(isRefused),
  }
}

/** The offer on what lies below, prepared as it asks for. */
export function stepOn(judging: Judging, at: At): Step {
  const { below, plain, where } = at
  const bonds = below.flatMap((exposed) =>
    (exposed.maybe.length > 0 ? exposed.maybe : [exposed.material]).map((under) => ({
      exposed,
      bond: judging.bondOf({ under, over: plain.offer, where, cleared: exposed.cleared }),
    })),
  )
  const layer = plain.after(sandingFor(bonds))
  const faults = () => [
    ...judgeOnSurfaces(judging, { below, layer, where }).faults.filter(isRefused),
    ...plain.refused,
  ]
  return {
    offer: plain.offer,
    layer,
    cost: costOf(at, layer, bonds),
    holds: plain.refused.length === 0 && bonds.every(({ bond }) => isSure(bond)),
    faults,
  }
}

/** Sanding is planned where it is needed, so all that can be refused is the bond itself. */
const isSure = ({ verdict, disputed }: Bond): boolean =>
  (verdict === 'yes' || verdict === 'care') && !disputed

type Met = { readonly exposed: Exposed; readonly bond: Bond }

/** Sanded where anything below asks for it: with the finest paper that every source still takes for a key. */
function sandingFor(bonds: readonly Met[]): Sanding {
  const wanted = bonds.filter(({ exposed, bond }) => needsKey(exposed, bond))
  const spans = wanted.flatMap(({ bond }) => bond.says.flatMap(({ grit }) => (grit ? [grit] : [])))
  const [first, ...rest] = spans
  if (!first) return undefined
  const coarsest = rest.reduce((found, { coarsest: one }) => smaller(found, one), first.coarsest)
  const finest = rest.reduce((found, { finest: one }) => larger(found, one), first.finest)
  return smaller(coarsest, finest)
}

const smaller = (one: Grit, other: Grit): Grit => (other.sizeM < one.sizeM ? other : one)
const larger = (one: Grit, other: Grit): Grit => (other.sizeM > one.sizeM ? other : one)

function needsKey({ material, clocks }: Exposed, { verdict, preparation: { key }, wait }: Bond): boolean {
  if (verdict === 'no') return false
  if (key !== 'past the window') return key === 'always'
  const least = Math.max(clocks.recoatLeastH ?? 0, wait?.hours ?? 0)
  return material.age === 'old' || least > (clocks.recoatMostH ?? Number.POSITIVE_INFINITY)
}

/** A coat a day at most, more where the one below is slower. */
const daysFor = (hours: number): number => Math.max(1, Math.ceil(hours / 24))

function costOf({ below, plain: { offer }, areaM2 }: At, layer: StackLayer, bonds: readonly Met[]): Cost {
  const litres = offer.litresPerM2 * areaM2 * layer.coats
  const first = Math.max(
    0,
    ...below.map((exposed) => waitOn(exposed, layer.before)),
    ...bonds.map(({ bond }) => bond.wait?.hours ?? 0),
  )
  const between = waitOf(layer.clocks, layer.between)
  const paid: Cost = {
    misses: 0,
    unpricedMl: offer.coinsPerL === undefined ? Math.round(litres * 1000) : 0,
    coins: offer.coinsPerL === undefined ? 0 : Math.round(litres * offer.coinsPerL),
    days: daysFor(first),
    layers: 1,
  }
  return add(paid, { ...nothing, days: (layer.coats - 1) * daysFor(between) })
}

const nothing: Cost = { misses: 0, unpricedMl: 0, coins: 0, days: 0, layers: 0 }

const waitOn = ({ material, clocks }: Exposed, sanding: Sanding): number =>
  material.age === 'old' ? 0 : waitOf(clocks, sanding)

const waitOf = ({ recoatLeastH = 0, drySandH = 0 }: Exposed['clocks'], sanding: Sanding): number =>
  sanding === undefined || sanding === 'none' ? recoatLeastH : Math.max(recoatLeastH, drySandH)
