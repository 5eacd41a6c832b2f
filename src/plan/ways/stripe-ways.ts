/** How the heights of a boot stripe came about: a fair curve through the heights that were set, and what it makes on the skin. */
import type { StripeMark } from '../types.ts'
import { type Told, workCell } from './told.ts'
import { given, type Part, plus, type Way, wayOf, worked } from './way.ts'

type StripeRef = { readonly mark: string; readonly row: number; readonly of: 'lower' | 'upper' | 'girth' }

export function stripeWay(told: Told, { mark, row: at, of }: StripeRef): Way | undefined {
  const stripe = told.plan.marks.stripes.find(({ id }) => id === mark)
  const row = stripe?.table.rows[at]
  if (!stripe || !row) return undefined
  const set = {
    lower: setSizes(told, stripe, 'height'),
    width: setSizes(told, stripe, 'width'),
  }
  const sure = stripe.sure[at]
  const lower = { ...curved('stripeLower', row.lowerM, set.lower), certainty: sure?.lower ?? 'worked' }
  const width = curved('stripeWidth', row.upperM - row.lowerM, set.width)
  if (of === 'lower') return wayOf(lower, { parts: set.lower, how: { code: 'way.stripeCurve' } })
  if (of === 'upper')
    return wayOf(
      worked({ name: 'stripeUpper', key: 'heightM', certainty: sure?.upper ?? 'worked' }, plus(lower, width)),
      { parts: [lower, width, ...set.lower, ...set.width], how: { code: 'way.stripeCurve' } },
    )
  const girth = given({
    name: 'stripeGirth',
    key: 'sizeM',
    value: row.girthM,
    certainty: sure?.girth ?? 'worked',
  })
  return wayOf(girth, { parts: [width, ...set.width], how: { code: 'way.stripeGirth' } })
}

const curved = (name: string, value: number, set: readonly Part[]): Part =>
  given({ name, key: 'heightM', value, certainty: sureOf(set) })

const sureOf = (parts: readonly Part[]): Part['certainty'] =>
  parts.some(({ certainty }) => certainty === 'assumed') ? 'assumed' : 'worked'

/** As set at stem, low point and stern, or as the program took it. */
function setSizes(told: Told, { id, table }: StripeMark, what: 'height' | 'width'): readonly Part[] {
  const item = told.work.marks.find((mark) => mark.id === id)
  const at = { Stern: table.sternXM, Low: table.lowXM, Stem: table.stemXM }
  return (['Stem', 'Low', 'Stern'] as const).map((place) => {
    const key = `${what}${place}` as const
    const figure = item?.[key]
    const near = [...table.rows].sort((a, b) => Math.abs(a.xM - at[place]) - Math.abs(b.xM - at[place]))[0]
    const taken = near ? (what === 'height' ? near.lowerM : near.upperM - near.lowerM) : 0
    return given({
      name: key,
      key: 'heightM',
      value: figure?.value ?? taken,
      certainty: figure?.certainty ?? 'assumed',
      at: workCell('marks', id, key),
      ...(figure ? {} : { source: 'assumed' }),
    })
  })
}
