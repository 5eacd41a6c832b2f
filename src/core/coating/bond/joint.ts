/** One coat on one surface: what the rules that fit best say, put together. */
import { type Coat, fit, type Material, type Selector } from './material.ts'
import type { BondRule, Cited, Grit, Verdict, Where } from './rule.ts'

/** One rule's word on a joint. */
export type Said = Cited & {
  readonly rule: string
  readonly aspect: string
  readonly verdict: Verdict
  readonly reason: string
  readonly dissent: boolean
  readonly grit?: { readonly coarsest: Grit; readonly finest: Grit }
}

export type Preparation = {
  readonly waterWash: boolean
  readonly dewax: boolean
  readonly solvent: 'as usual' | 'wipe' | 'never'
  /** From the coarsest to the finest that any of the sources gives; nothing where no sanding is asked for. */
  readonly grit?: { readonly coarsest: Grit; readonly finest: Grit }
  readonly key: 'always' | 'past the window' | 'none'
  readonly tie: readonly Selector[]
  readonly clear: readonly string[]
  readonly only: readonly string[]
}

export type Wait = { readonly hours: number; readonly until: string }

export type Bond = {
  /** `untold`: no rule speaks of it. */
  readonly verdict: Verdict | 'untold'
  /** Sources contradict each other; all of them stand in `says`. */
  readonly disputed: boolean
  /** Everything said, what decides first. */
  readonly says: readonly Said[]
  readonly preparation: Preparation
  /** Longest of the waits that rules ask for. */
  readonly wait?: Wait
}

export type Pair = {
  readonly under: Material
  readonly over: Coat
  readonly where: Where
  /** Remedies that are planned, by code: what they put right is no longer refused, only minded. */
  readonly cleared?: readonly string[]
}

const rank: Readonly<Record<Verdict, number>> = { yes: 0, care: 1, no: 2 }

/**
 * Judges one coat on one surface.
 * @param rules any; of each aspect only those that fit most closely speak.
 * @returns the worst verdict of the aspects. Within one aspect rules that fit equally closely are taken together and
 * the more cautious counts, but a rule marked as dissent is only shown.
 */
export function judgeBond(rules: readonly BondRule[], pair: Pair): Bond {
  const speaking = speakingOn(rules, pair).map((rule) => minded(rule, pair.cleared ?? []))
  const deciding = speaking.filter((rule) => !rule.dissent)
  const bonding = deciding.filter((rule) => rule.aspect === 'bond')
  const worst = deciding.reduce<Verdict>(
    (found, { verdict }) => (rank[verdict] > rank[found] ? verdict : found),
    'yes',
  )
  const waits = deciding.flatMap(({ wait }) => (wait ? [wait] : [])).sort((a, b) => b.hours - a.hours)
  return {
    verdict: bonding.length === 0 && worst !== 'no' ? 'untold' : worst,
    disputed: disputedIn(speaking),
    says: [...speaking]
      .sort((a, b) => Number(a.dissent) - Number(b.dissent) || rank[b.verdict] - rank[a.verdict])
      .map(saidBy),
    preparation: preparationOf(deciding),
    ...(waits[0] ? { wait: waits[0] } : {}),
  }
}

/** A refusal whose remedy is planned holds once that is done. */
const minded = (rule: BondRule, cleared: readonly string[]): BondRule =>
  rule.verdict === 'no' && rule.clear !== undefined && cleared.includes(rule.clear)
    ? { ...rule, verdict: 'care', only: rule.clear }
    : rule

function speakingOn(rules: readonly BondRule[], pair: Pair): readonly BondRule[] {
  const fitting = rules
    .map((rule) => ({ rule, closeness: closeness(rule, pair) }))
    .filter((one) => one.closeness >= 0)
  const outranked = ({ rule, closeness: own }: (typeof fitting)[number]): boolean =>
    fitting.some((other) => !other.rule.dissent && other.rule.aspect === rule.aspect && other.closeness > own)
  return fitting.filter((one) => one.rule.dissent || !outranked(one)).map(({ rule }) => rule)
}

/** How closely a rule fits; -1 when it does not speak of the pair at all. */
function closeness(rule: BondRule, { under, over, where }: Pair): number {
  const below = fit(rule.under, under)
  const above = fit(rule.over, over)
  if (below < 0 || above < 0) return -1
  if (rule.age !== undefined && rule.age !== under.age) return -1
  if (rule.state !== undefined && !under.states.includes(rule.state)) return -1
  if (rule.where !== undefined && rule.where !== where) return -1
  if (rule.shade !== undefined && rule.shade !== over.shade) return -1
  const named = [rule.age, rule.where, rule.shade].filter((one) => one !== undefined)
  return below + above + named.length + (rule.state === undefined ? 0 : STATE_WEIGHT)
}

/** What is wrong with a surface comes before what it is. */
const STATE_WEIGHT = 3

/** One source says no where another does not. */
const disputedIn = (speaking: readonly BondRule[]): boolean =>
  speaking.some(
    (one) =>
      one.verdict === 'no' && speaking.some((other) => other.aspect === one.aspect && other.verdict !== 'no'),
  )

const saidBy = ({ id, aspect, verdict, reason, dissent, grit, source, certainty }: BondRule): Said => ({
  rule: id,
  aspect,
  verdict,
  reason,
  dissent,
  ...(grit ? { grit } : {}),
  source,
  certainty,
})

function preparationOf(rules: readonly BondRule[]): Preparation {
  const grit = gritOf(rules)
  const key = (['always', 'past the window'] as const).find((one) => rules.some((rule) => rule.key === one))
  const solvent = (['never', 'wipe'] as const).find((one) => rules.some((rule) => rule.solvent === one))
  return {
    waterWash: rules.some(({ waterWash }) => waterWash),
    dewax: rules.some(({ dewax }) => dewax),
    solvent: solvent ?? 'as usual',
    ...(grit ? { grit } : {}),
    key: key ?? 'none',
    tie: rules.flatMap(({ tie }) => tie),
    clear: [...new Set(rules.flatMap(({ clear }) => (clear === undefined ? [] : [clear])))],
    only: [...new Set(rules.flatMap(({ only }) => (only === undefined ? [] : [only])))],
  }
}

type Span = { readonly coarsest: Grit; readonly finest: Grit }

/** Within an aspect whatever any source allows; between aspects never coarser than the strictest of them. */
function gritOf(rules: readonly BondRule[]): Span | undefined {
  const spans = [...new Set(rules.map(({ aspect }) => aspect))].flatMap((aspect) => {
    const own = rules.flatMap((rule) => (rule.aspect === aspect && rule.grit ? [rule.grit] : []))
    return own.length === 0 ? [] : [{ coarsest: coarser(own), finest: finer(own) }]
  })
  if (spans.length === 0) return undefined
  const strictest = spans.reduce((found, one) =>
    one.coarsest.sizeM < found.coarsest.sizeM ? one : found,
  ).coarsest
  return { coarsest: strictest, finest: finer(spans) }
}

const coarser = (spans: readonly Span[]): Grit =>
  spans.reduce((found, one) => (one.coarsest.sizeM > found.coarsest.sizeM ? one : found)).coarsest
const finer = (spans: readonly Span[]): Grit =>
  spans.reduce((found, one) => (one.finest.sizeM < found.finest.sizeM ? one : found)).finest
