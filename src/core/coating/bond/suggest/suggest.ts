/** Build-ups from what is there to the finish wanted, out of the sheets at hand: the three best, or why there is none. */
import type { Fault } from '../fault.ts'
import { practiceOf } from '../film-limits.ts'
import type { BondBook, StripRule } from '../rule.ts'
import type { Stack } from '../stack.ts'
import { add, type Criterion, compareBy, criteria, outdoes, type Worth } from './cost.ts'
import { type Graph, graphOf } from './graph.ts'
import { grants, type Search } from './offer.ts'
import { type Label, nearestWay, pathOf, waysThatHold } from './search.ts'
import type { Step } from './step.ts'

/** An offer as the layer that it makes. */
export type Laid = Pick<Step, 'offer' | 'layer'>

export type Suggestion = {
  readonly stack: Stack
  /** Plain data: it may be sent to another thread. */
  readonly steps: readonly Laid[]
  readonly worth: Worth
  /** Stripping that comes first. */
  readonly strip?: StripRule
  readonly stripHours: number
  /** What it is the best by, of all that hold. */
  readonly best: readonly Criterion[]
}

/** A build-up that does not hold, and where. */
export type Miss = {
  readonly stack: Stack
  readonly worth: Worth
  readonly faults: readonly Fault[]
}

export type Suggested = {
  /** At most three, the cheapest first; those that are best by nothing come last. */
  readonly suggestions: readonly Suggestion[]
  /** Why there is none: no sheet is such a finish, or no way to it holds; then the nearest miss. */
  readonly none?: { readonly why: 'no finish' | 'no way'; readonly miss?: Miss }
  /** Shorter or other ways to the finish of the first suggestion of several layers that do not hold. */
  readonly shortcuts: readonly Miss[]
}

const SUGGESTIONS = 3

/**
 * Finds build-ups.
 * @param book rules. @param search ground, sheets and what is wanted. @returns of all build-ups of at most
 * `mostLayers` layers without a fault those that no other outdoes in cost, life, days and layers; of these the best
 * by each, up to three, filled up with the cheapest that ends in another finish or goes another way.
 */
export function suggest(book: BondBook, search: Search): Suggested {
  if (!search.offers.some((offer) => grants(search.wish, offer)))
    return { suggestions: [], none: { why: 'no finish' }, shortcuts: [] }
  const graph = graphOf(book, search)
  const front = frontOf({ book, graph, search }, new Set())
  if (front.length === 0) {
    const nearest = nearestWay(graph, search.mostLayers)
    return {
      suggestions: [],
      none: { why: 'no way', ...(nearest ? { miss: missOf(nearest, { book, graph, search }) } : {}) },
      shortcuts: [],
    }
  }
  const picked = filledUp(pick(front), { book, graph, search })
  const built = picked.find(({ steps }) => steps.length > 1)
  return { suggestions: picked, shortcuts: built ? shortcutsTo(built, { book, graph, search }) : [] }
}

/** Those that hold and that no other outdoes. */
const frontOf = (all: In, without: ReadonlySet<number>): readonly Suggestion[] =>
  undone(
    waysThatHold(all.graph, { mostLayers: all.search.mostLayers, without }).map((label) =>
      suggestionOf(label, all),
    ),
  )

/** With fewer than three that nothing outdoes, the cheapest with another finish, then by another way to the same. */
function filledUp(picked: readonly Suggestion[], all: In): readonly Suggestion[] {
  const { offers } = all.graph
  const placesOf = (steps: readonly Laid[]) => steps.map(({ offer }) => offers.indexOf(offer))
  let chosen = picked
  while (chosen.length < SUGGESTIONS) {
    const finishes = new Set(chosen.flatMap(({ steps }) => placesOf(steps.slice(-1))))
    const under = new Set(chosen.flatMap(({ steps }) => placesOf(steps.slice(0, -1))))
    const other =
      cheapest(frontOf(all, finishes)) ?? (under.size > 0 ? cheapest(frontOf(all, under)) : undefined)
    if (!other || chosen.some((one) => samePath(one, other))) break
    chosen = [...chosen, other]
  }
  return chosen
}

const cheapest = (front: readonly Suggestion[]): Suggestion | undefined =>
  [...front].sort((a, b) => compareBy('cost', a.worth, b.worth))[0]

const samePath = (one: Suggestion, other: Suggestion): boolean =>
  one.strip === other.strip &&
  one.steps.length === other.steps.length &&
  one.steps.every(({ offer }, at) => offer === other.steps[at]?.offer)

type In = { readonly book: BondBook; readonly graph: Graph; readonly search: Search }

function suggestionOf(label: Label, { book, graph, search }: In): Suggestion {
  const { start, offers } = pathOf(label)
  const begun = graph.starts[start]!
  const steps = stepsAlong(graph, { start, offers })
  return {
    stack: stackOf(graph, { start, offers }, search),
    steps: steps.map(({ offer, layer }) => ({ offer, layer })),
    worth: worthOf(book, label, graph),
    ...(begun.strip ? { strip: begun.strip } : {}),
    stripHours: begun.hours,
    best: [],
  }
}

type Path = ReturnType<typeof pathOf>

const stepsAlong = (graph: Graph, { start, offers }: Path): readonly Step[] =>
  offers.map((offer, at) => graph.step(at === 0 ? -1 - start : offers[at - 1]!, offer))

const stackOf = (graph: Graph, path: Path, { where }: Search): Stack => ({
  ground: graph.starts[path.start]!.ground,
  layers: stepsAlong(graph, path).map(({ layer }) => layer),
  where,
  weathers: true,
})

const worthOf = (book: BondBook, { at, cost }: Label, graph: Graph): Worth => ({
  ...cost,
  lifeHours: practiceOf(book.practice, graph.offers[at]!)?.lifeHours ?? 0,
})

/** Those that no other outdoes; of equals the first. */
const undone = (found: readonly Suggestion[]): readonly Suggestion[] =>
  found.filter(
    (one, at) =>
      !found.some(
        (other, index) =>
          index !== at && outdoes(other.worth, one.worth) && (index < at || !outdoes(one.worth, other.worth)),
      ),
  )

/** The best by each criterion in turn, each build-up once; then the cheapest of the rest. */
function pick(front: readonly Suggestion[]): readonly Suggestion[] {
  const bestBy = (criterion: Criterion): Suggestion =>
    front.reduce((best, one) => (compareBy(criterion, one.worth, best.worth) < 0 ? one : best))
  const winners = new Map(criteria.map((criterion) => [criterion, bestBy(criterion)]))
  const rest = [...front].sort((a, b) => compareBy('cost', a.worth, b.worth))
  const chosen = [...new Set([...winners.values(), ...rest])].slice(0, SUGGESTIONS)
  return chosen.map((one) => ({
    ...one,
    best: criteria.filter((criterion) => winners.get(criterion) === one),
  }))
}

function missOf(label: Label, { book, graph, search }: In): Miss {
  const path = pathOf(label)
  return {
    stack: stackOf(graph, path, search),
    worth: worthOf(book, label, graph),
    faults: stepsAlong(graph, path).flatMap(({ holds, faults }) => (holds ? [] : faults())),
  }
}

/** Straight on the ground, or with one layer of another kind between: what somebody in a hurry would try. */
function shortcutsTo({ stack, worth, steps }: Suggestion, { book, graph, search }: In): readonly Miss[] {
  const last = graph.offers.indexOf(steps.at(-1)!.offer)
  const tried = [[last], ...graph.offers.flatMap((_, first) => (first === last ? [] : [[first, last]]))]
  const failing = tried
    .filter((offers) => offers.length <= stack.layers.length)
    .map((offers) => {
      const label = offers.reduce<Label>(
        (from, to) => {
          const { cost, holds } = graph.step(from.at, to)
          return { at: to, cost: add(from.cost, { ...cost, misses: holds ? 0 : 1 }), from }
        },
        { at: -1, cost: graph.starts[0]!.cost },
      )
      return missOf(label, { book, graph, search })
    })
    .filter(({ faults, worth: own }) => faults.length > 0 && own.layers <= worth.layers)
    .sort((a, b) => a.worth.layers - b.worth.layers || compareBy('cost', a.worth, b.worth))
  return failing.filter((one, at) => failing.findIndex((other) => sameReasons(one, other)) === at).slice(0, 2)
}

const sameReasons = (one: Miss, other: Miss): boolean => reasonsOf(one) === reasonsOf(other)

const reasonsOf = ({ faults }: Miss): string =>
  [...new Set(faults.map((fault) => ('reason' in fault ? fault.reason : fault.kind)))].sort().join(' ')
