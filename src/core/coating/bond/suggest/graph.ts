/**
 * The graph that is searched: places are what the next layer meets, edges are layers. A place is the ground, the
 * ground stripped, or the fresh film of one sheet; nothing else tells what may go on it.
 */

import { type Bond, judgeBond, type Pair } from '../joint.ts'
import { type Judging, standsWeather } from '../judge.ts'
import { type Coat, fit, type Material } from '../material.ts'
import type { BondBook, StripRule } from '../rule.ts'
import { type Exposed, materialOf } from '../stack.ts'
import type { Cost } from './cost.ts'
import { grants, type Offer, type Search } from './offer.ts'
import { plainOf, type Step, stepOn } from './step.ts'

export type Start = {
  readonly ground: readonly Exposed[]
  readonly cost: Cost
  readonly strip?: StripRule
  /** Person-hours of stripping. */
  readonly hours: number
}

export type Graph = {
  readonly starts: readonly Start[]
  readonly offers: readonly Offer[]
  /** From a start (below 0: -1 is the first) or an offer to an offer. */
  readonly step: (from: number, to: number) => Step
  /** The build-up may end here. */
  readonly ends: (offer: number) => boolean
}

/** Hours a person strips in a day. */
const STRIPPING_DAY_H = 8

export function graphOf(book: BondBook, search: Search): Graph {
  const judging = remembering(book)
  const starts = startsOf(book, search)
  const { offers, where, areaM2, wish } = search
  const tops = offers.map((offer): readonly Exposed[] => [
    {
      id: offer.id,
      material: materialOf(offer),
      maybe: [],
      clocks: offer.clocks,
      colour: offer.colour,
      cleared: [],
    },
  ])
  const plains = offers.map((offer) => plainOf(judging, offer, where))
  const steps = new Map<number, Step>()
  return {
    starts,
    offers,
    step: (from, to) => {
      const key = (from + starts.length) * offers.length + to
      const known = steps.get(key)
      if (known) return known
      const below = from < 0 ? starts[-1 - from]!.ground : tops[from]!
      const made = stepOn(judging, { below, plain: plains[to]!, where, areaM2 })
      steps.set(key, made)
      return made
    },
    ends: (at) => {
      const offer = offers[at]!
      return grants(wish, offer) && (where === 'below water' || standsWeather(judging, offer))
    },
  }
}

/** Many sheets are of few kinds: each pair of kinds is judged once, all of them at the one place of the search. */
function remembering(book: BondBook): Judging {
  const under = numbering<Material>((one) => `${kindOf(one)}/${one.age}/${one.states.join('+')}`)
  const over = numbering<Coat>(kindOf)
  const known: Bond[][] = []
  const bondOf = (pair: Pair): Bond => {
    if (pair.cleared && pair.cleared.length > 0) return judgeBond(book.rules, pair)
    const [below, at] = [under(pair.under), over(pair.over)]
    const row = known[below] ?? []
    const bond = row[at] ?? judgeBond(book.rules, pair)
    row[at] = bond
    known[below] = row
    return bond
  }
  return { book, bondOf }
}

const kindOf = ({ family, role, shade = '' }: Coat): string => `${family}/${role}/${shade}`

/** A small number for each kind; a thing that was asked for before is not spelled out again. */
function numbering<T extends object>(kind: (one: T) => string): (one: T) => number {
  const numbers = new Map<string, number>()
  const asked = new WeakMap<T, number>()
  return (one) => {
    const before = asked.get(one)
    if (before !== undefined) return before
    const text = kind(one)
    const number = numbers.get(text) ?? numbers.size
    numbers.set(text, number)
    asked.set(one, number)
    return number
  }
}

function startsOf(book: BondBook, { ground, areaM2 }: Search): readonly Start[] {
  const free: Cost = { misses: 0, unpricedMl: 0, coins: 0, days: 0, layers: 0 }
  const asItIs: Start = { ground, cost: free, hours: 0 }
  const strip = book.strips.find(({ of }) => ground.some(({ material }) => isOn(material, of)))
  if (!strip) return [asItIs]
  const hours = strip.hoursPerM2 * areaM2
  return [
    asItIs,
    {
      ground: ground.map((exposed) => stripped(exposed, strip)),
      cost: { ...free, days: Math.max(1, Math.ceil(hours / STRIPPING_DAY_H)) },
      strip,
      hours,
    },
  ]
}

const isOn = (material: Material, of: StripRule['of']): boolean =>
  material.age === 'old' && fit(of, material) >= 0

const stripped = (exposed: Exposed, { of, leaves }: StripRule): Exposed =>
  isOn(exposed.material, of)
    ? {
        ...exposed,
        material: { ...exposed.material, family: leaves.family, role: leaves.role ?? 'finish' },
        maybe: [],
      }
    : exposed
