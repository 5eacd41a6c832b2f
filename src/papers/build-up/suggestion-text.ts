/** A suggested build-up in words: what it costs and lasts, what is stripped first, and its layers. */
import type { Plan, ZoneSuggestions } from '#plan'
import type { Words } from '#words'

type Suggestion = ZoneSuggestions['suggestions'][number]

export type SuggestionText = {
  readonly figures: string
  readonly strip?: string
  /** What has to hold besides, a sentence each. */
  readonly only: readonly string[]
  /** From the boat outward. */
  readonly layers: readonly string[]
}

/** What a year of the finish is counted in, h. */
export const HOURS_A_YEAR = 8766

/** How many things a suggestion may be best in. */
const CRITERIA = 4

/** One suggestion in the words of a reader. @param of.areaM2 m² of all its zones. */
export function suggestionText(
  { worth, best, strip, stripHours, steps, only }: Suggestion,
  of: {
    readonly plan: Pick<Plan, 'buildUps'>
    readonly areaM2: number
    readonly words: Words
    readonly currency?: string
  },
): SuggestionText {
  const { words, areaM2 } = of
  const lifeYears = Math.round(worth.lifeHours / HOURS_A_YEAR)
  return {
    figures: words.sentence('suggest.build', {
      priced: worth.unpricedMl === 0,
      costCoins: worth.coins,
      yearCoins: lifeYears > 0 ? Math.round(worth.coins / lifeYears) : worth.coins,
      days: worth.days,
      lifeYears,
      best: bestIn(best)
        .map((each) => words.label(`best.${each}`))
        .join(', '),
      ...(of.currency === undefined ? {} : { currency: of.currency }),
    }),
    ...(strip ? { strip: words.sentence('suggest.strip', { stripPersonHours: stripHours }) } : {}),
    only: only.map(({ code, data }) => words.sentence(code, data)),
    layers: steps.map(({ offer, layer }) =>
      words.sentence('suggest.layer', {
        coats: layer.coats,
        name: of.plan.buildUps.sheets.find(({ id }) => id === offer.id)?.name ?? offer.id,
        mixedL: offer.litresPerM2 * areaM2 * layer.coats,
        sanded: typeof layer.before === 'object',
        grit: sandingName(layer.before),
        between: sandingName(layer.between),
      }),
    ),
  }
}

function bestIn(best: Suggestion['best']): readonly string[] {
  if (best.length === CRITERIA) return ['all']
  return best.length === 0 ? ['none'] : best
}

type Sanding = Suggestion['steps'][number]['layer']['before']

/** A grit by its name; `none` where nothing is sanded. */
export const sandingName = (sanding: Sanding): string => (typeof sanding === 'object' ? sanding.name : 'none')
