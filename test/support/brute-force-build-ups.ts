/**
 * Every build-up there is, tried one by one and held against the judge as a whole: what the search must not do worse
 * than. Written apart from it: it shares neither its graph nor its costs.
 */
import {
  type BondBook,
  type Exposed,
  type Fault,
  type Grit,
  hidingOf,
  judge,
  type Offer,
  practiceOf,
  type Search,
  type StackLayer,
} from '#core/coating'

export type Tried = {
  readonly sheets: readonly string[]
  readonly stripped: boolean
  readonly layers: readonly StackLayer[]
  readonly ground: readonly Exposed[]
  readonly unpricedMl: number
  readonly coins: number
  readonly days: number
  readonly lifeHours: number
  readonly misses: number
}

const bad = new Set([
  'fails',
  'may fail',
  'untold',
  'disputed',
  'not sanded',
  'between not sanded',
  'window never open',
  'film over',
  'build over',
  'out of order',
])

/** All build-ups that end in what is wanted; with `missing` also those that do not hold. */
export function everyBuildUp(
  book: BondBook,
  search: Search,
  { grits, missing }: { readonly grits: readonly Grit[]; readonly missing: boolean },
): readonly Tried[] {
  const { offers, wish, where, mostLayers, areaM2 } = search
  const strip = book.strips.find(({ of }) =>
    search.ground.some(
      ({ material }) => material.age === 'old' && of.some(({ family }) => family === material.family),
    ),
  )
  const bare = search.ground.map((exposed) =>
    strip &&
    exposed.material.age === 'old' &&
    strip.of.some(({ family }) => family === exposed.material.family)
      ? { ...exposed, material: { ...exposed.material, ...strip.leaves }, maybe: [] }
      : exposed,
  )
  const grounds = strip
    ? [
        { ground: search.ground, stripped: false, days: 0 },
        { ground: bare, stripped: true, days: Math.max(1, Math.ceil((strip.hoursPerM2 * areaM2) / 8)) },
      ]
    : [{ ground: search.ground, stripped: false, days: 0 }]
  const found: Tried[] = []

  const layerOf = (offer: Offer, before: Grit | 'none', between: Grit | 'none'): StackLayer => ({
    ...offer,
    coats: Math.max(
      practiceOf(book.practice, offer)?.coats ?? 1,
      offer.role === 'finish' ? (hidingOf(book.hiding, offer)?.coats ?? 0) : 0,
    ),
    covers: true,
    before,
    between,
  })
  const faultsOf = (ground: readonly Exposed[], layers: readonly StackLayer[]): readonly Fault[] =>
    judge(book, { ground, layers, where, weathers: false }).faults

  const grow = (begun: (typeof grounds)[number], done: Tried): void => {
    const last = done.layers.at(-1)
    if (last && last.role === wish.role && (wish.family ?? last.family) === last.family) {
      const stack = { ground: begun.ground, layers: done.layers, where, weathers: true }
      const weathered = !judge(book, stack).faults.some(({ kind }) => kind === 'not topcoated')
      if (weathered && (wish.sheet ?? last.id) === last.id) found.push(done)
    }
    if (done.layers.length === mostLayers) return
    for (const offer of offers) {
      if (offer.id === last?.id) continue
      const next = bestLayer(begun.ground, done.layers, offer)
      if (next.misses > 0 && !missing) continue
      const litres = offer.litresPerM2 * areaM2 * next.layer.coats
      const priced = offer.coinsPerL !== undefined
      grow(begun, {
        ...done,
        sheets: [...done.sheets, offer.id],
        layers: [...done.layers, next.layer],
        unpricedMl: done.unpricedMl + (priced ? 0 : Math.round(litres * 1000)),
        coins: done.coins + (priced ? Math.round(litres * offer.coinsPerL) : 0),
        days: done.days + next.days,
        lifeHours: practiceOf(book.practice, offer)?.lifeHours ?? 0,
        misses: done.misses + next.misses,
      })
    }
  }

  /** Unsanded if that holds, else with any paper that does; what it takes is counted from what lies below. */
  const bestLayer = (ground: readonly Exposed[], done: readonly StackLayer[], offer: Offer) => {
    const papers = ['none' as const, ...grits]
    const own = (layer: StackLayer) =>
      faultsOf(ground, [...done, layer]).filter(({ layer: id, kind }) => id === layer.id && bad.has(kind))
    const between =
      papers.find(
        (paper) => !own(layerOf(offer, 'none', paper)).some(({ kind }) => kind === 'between not sanded'),
      ) ?? 'none'
    const usual = between === 'none' ? (practiceOf(book.practice, offer)?.between ?? 'none') : between
    const before =
      papers.find(
        (paper) =>
          !own(layerOf(offer, paper, between)).some(({ kind }) =>
            ['not sanded', 'window never open'].includes(kind),
          ),
      ) ?? 'none'
    const layer = layerOf(offer, before, usual)
    const joints = judge(book, { ground, layers: [...done, layer], where, weathers: false }).joints
    const waits = joints
      .filter(({ layer: id, kind }) => id === layer.id && kind === 'on surface')
      .flatMap(({ bond, branches }) => [bond, ...branches.map((branch) => branch.bond)])
      .map(({ wait }) => wait?.hours ?? 0)
    const under = done.at(-1)
    const fresh = under
      ? [under.clocks]
      : ground.filter(({ material }) => material.age === 'fresh').map(({ clocks }) => clocks)
    const drying = fresh.map((clocks) => hours(clocks, before !== 'none'))
    const first = Math.max(0, ...waits, ...drying)
    const later = hours(layer.clocks, usual !== 'none')
    return {
      layer,
      days: whole(first) + (layer.coats - 1) * whole(later),
      misses: own(layer).length > 0 ? 1 : 0,
    }
  }

  for (const begun of grounds)
    grow(begun, {
      sheets: [],
      stripped: begun.stripped,
      layers: [],
      ground: begun.ground,
      unpricedMl: 0,
      coins: 0,
      days: begun.days,
      lifeHours: 0,
      misses: 0,
    })
  return found
}

const hours = ({ recoatLeastH = 0, drySandH = 0 }: StackLayer['clocks'], sanded: boolean): number =>
  sanded ? Math.max(recoatLeastH, drySandH) : recoatLeastH

const whole = (h: number): number => Math.max(1, Math.ceil(h / 24))

/** The best by a list of figures, the first of them first. */
export const least = (all: readonly Tried[], figures: (one: Tried) => readonly number[]): readonly number[] =>
  all.map(figures).sort((a, b) => {
    const at = a.findIndex((value, index) => value !== b[index])
    return at === -1 ? 0 : a[at]! - b[at]!
  })[0] ?? []
