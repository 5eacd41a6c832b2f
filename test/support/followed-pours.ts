/** The slow way to lay a coat, for tests: hands, pots and the wet edge followed from one event to the next. */
import type { ChainedPour } from '#core/coating'

export type Broken = 'gap in a run' | 'pot past its life' | 'not stood' | 'mixed late' | 'not covered'

type Event = { readonly at: number; readonly what: 'mix' | 'lay' | 'laid'; readonly nr: number }

const slack = 1e-6
/** At one moment the brush is lifted before the next cup is taken up. */
const order = ['mix', 'laid', 'lay']

/** What goes wrong when these cards are followed, from the cards and the areas of the runs alone. */
export function followed(
  cards: readonly ChainedPour[],
  {
    runs,
    pace,
    lead,
    breakMinutes = 0,
    wetEdge,
  }: {
    readonly runs: readonly number[]
    readonly pace: number
    readonly lead: number
    readonly breakMinutes?: number
    readonly wetEdge: number
  },
): readonly Broken[] {
  const events = cards
    .flatMap((card, nr): Event[] => [
      { at: card.mixAt, what: 'mix', nr },
      { at: card.from, what: 'lay', nr },
      { at: card.from + card.stretches.reduce((all, { area }) => all + area, 0) / pace, what: 'laid', nr },
    ])
    .sort((a, b) => Math.round((a.at - b.at) * 1e6) || order.indexOf(a.what) - order.indexOf(b.what))
  const wrong: Broken[] = []
  const left = [...runs]
  const lastLaid = new Map<number, number>()
  const mixed = new Map<number, number>()
  for (const { at, what, nr } of events) {
    const card = cards[nr]!
    if (what === 'mix') mixed.set(nr, at)
    if (what === 'lay') {
      const since = mixed.get(nr)
      if (since === undefined || at - since < lead - slack) wrong.push('mixed late')
      else if (at - since - lead < card.induction - slack) wrong.push('not stood')
      const before = lastLaid.get(card.stretches[0]!.run)
      if (before !== undefined && at - before + breakMinutes > wetEdge + slack) wrong.push('gap in a run')
    }
    if (what === 'laid') {
      if (at - mixed.get(nr)! > card.life + slack) wrong.push('pot past its life')
      for (const { run, area } of card.stretches) {
        left[run] = left[run]! - area
        lastLaid.set(run, at)
      }
    }
  }
  return left.some((area) => Math.abs(area) > slack) ? [...wrong, 'not covered'] : wrong
}
