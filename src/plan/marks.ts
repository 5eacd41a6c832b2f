/** Tape lines and panels: the numbers to strike them, and the zones whose area they make. */
import {
  bootStripe,
  type PanelInput,
  panel,
  type StripeInput,
  type StripeTable,
  type TapeLineInput,
  tapeLine,
} from '#core/marking'
import type { Note } from '#core/note'
import type { Figure, Work } from '#job'
import { weakest } from './certainty.ts'
import type { Stage } from './remember.ts'
import { stripeSure } from './stripe-sure.ts'
import { describe, fromShare, isMarked, type MeasuredHull, sharedArea } from './surfaces.ts'
import type { Deck, LineMark, Marks, PanelMark, StripeMark, ZoneArea } from './types.ts'

export type StruckInput = { readonly marks: Work['marks']; readonly hull: MeasuredHull }

export type Struck = {
  readonly stripes: readonly StripeMark[]
  readonly lines: readonly LineMark[]
  readonly panels: readonly PanelMark[]
  readonly notes: readonly Note[]
}

/** The lines and panels themselves: only marks and hull make them anew, whatever else is said of the zones. */
export const struck: Stage<StruckInput, Struck> = { name: 'struck', run: strike }

export type MarksInput = {
  readonly struck: Struck
  readonly zones: Work['zones']
  readonly deck: Deck
  readonly hull: MeasuredHull
}

export const marks: Stage<MarksInput, Marks> = { name: 'marks', run: markZones }

type Mark = Work['marks'][number]

/** Marks along the stripe this far apart; assumed, as yards do for long fair runs. */
const SPACING_M = 0.5

function strike(input: StruckInput): Struck {
  const stripes = input.marks
    .filter((mark) => mark.kind === 'boot stripe')
    .map((mark) => stripeOf(mark, input.hull))
  const lines = input.marks
    .filter((mark) => mark.kind === 'tape line')
    .map((mark) => lineOf(mark, input.hull))
  const panels = input.marks.filter((mark) => mark.kind === 'panel').map(panelOf)
  return {
    stripes: stripes.flatMap((one) => one.marks),
    lines: lines.flatMap((one) => one.marks),
    panels: panels.flatMap((one) => one.marks),
    notes: [...stripes, ...lines, ...panels].flatMap((one) => one.notes),
  }
}

function markZones({ struck: made, zones, deck, hull }: MarksInput): Marks {
  const enclosed = zones.filter((zone) => isMarked(zone, deck)).map((zone) => zoneOf(zone, made, hull))
  return {
    ...made,
    notes: [...made.notes, ...enclosed.flatMap((one) => one.notes)],
    zones: enclosed.flatMap((one) => one.zones),
    tapeM:
      made.stripes.reduce((sum, stripe) => sum + stripe.table.tapeM, 0) +
      made.lines.reduce((sum, line) => sum + line.table.tapeM, 0) +
      made.panels.reduce((sum, one) => sum + one.count * one.perimeterM, 0),
  }
}

type Made<T> = { readonly marks: readonly T[]; readonly notes: readonly Note[] }

/** Notes of a mark say which one they are about. */
const about = (mark: Mark, notes: readonly Note[]): readonly Note[] =>
  notes.map((note) => ({ ...note, data: { ...note.data, mark: mark.id, name: mark.name ?? mark.kind } }))

const withoutHull = (mark: Mark): Made<never> => ({
  marks: [],
  notes: about(mark, [{ code: 'marks.noHull', severity: 'missing', data: {} }]),
})

function stripeOf(mark: Mark, { hull }: MeasuredHull): Made<StripeMark> {
  const name = mark.name ?? mark.kind
  if (!hull) return withoutHull(mark)
  const input = { ...stripeInput(mark), spacingM: SPACING_M }
  const { table, notes } = bootStripe(hull, input)
  const made = (found: StripeTable): StripeMark => ({
    ...{ kind: 'stripe', id: mark.id, name, zone: mark.zone, table: found },
    sure: stripeSure({ measured: measuredSizes(mark), table: found }),
  })
  return {
    marks: table ? [made(table)] : [],
    notes: about(mark, notes),
  }
}

function lineOf(mark: Mark, { hull }: MeasuredHull): Made<LineMark> {
  if (!hull) return withoutHull(mark)
  const { table, notes } = tapeLine(hull, { ...heightsGiven(mark), spacingM: SPACING_M })
  const heights = [mark.heightStem, mark.heightLow, mark.heightStern]
  const sure = weakest(...heights.map((height) => height?.certainty ?? ('assumed' as const)))
  return {
    marks: table
      ? [{ kind: 'line', id: mark.id, name: mark.name ?? mark.kind, zone: mark.zone, table, certainty: sure }]
      : [],
    notes: about(mark, notes),
  }
}

const heightsGiven = (mark: Mark): TapeLineInput => ({
  ...given('heightStemM', mark.heightStem),
  ...given('heightLowM', mark.heightLow),
  ...given('heightSternM', mark.heightStern),
})

const stripeInput = (mark: Mark): StripeInput => ({
  ...heightsGiven(mark),
  ...given('widthStemM', mark.widthStem),
  ...given('widthLowM', mark.widthLow),
  ...given('widthSternM', mark.widthStern),
})

const measuredSizes = (mark: Mark): ReadonlySet<keyof StripeInput> =>
  new Set(
    Object.entries({
      heightStemM: mark.heightStem,
      heightLowM: mark.heightLow,
      heightSternM: mark.heightStern,
      widthStemM: mark.widthStem,
      widthLowM: mark.widthLow,
      widthSternM: mark.widthStern,
    }).flatMap(([key, figure]) =>
      figure !== undefined && figure.certainty !== 'assumed' ? [key as keyof StripeInput] : [],
    ),
  )

const given = <K extends string>(key: K, figure: Figure | undefined) =>
  (figure ? { [key]: figure.value } : {}) as { readonly [P in K]?: number }

function panelOf(mark: Mark): Made<PanelMark> {
  const name = mark.name ?? mark.kind
  if (!mark.length || !mark.width) {
    return {
      marks: [],
      notes: [{ code: 'marks.panelWithoutSize', severity: 'missing', data: { mark: mark.id, name } }],
    }
  }
  const input: PanelInput = {
    lengthM: mark.length.value,
    widthM: mark.width.value,
    count: mark.count ?? 1,
    ...given('borderM', mark.border),
    ...given('cornerRadiusM', mark.cornerRadius),
  }
  const { panel: found, notes } = panel(input)
  const marks: readonly PanelMark[] = found
    ? [
        {
          kind: 'panel',
          id: mark.id,
          name,
          zone: mark.zone,
          count: found.count,
          panelAreaM2: found.areaM2,
          perimeterM: found.perimeterM,
          lengthM: found.lengthM,
          widthM: found.widthM,
          borderM: found.borderM,
          cornerRadiusM: found.cornerRadiusM,
          certainty: weakest(mark.length.certainty, mark.width.certainty),
        },
      ]
    : []
  return { marks, notes: about(mark, notes) }
}

type Enclosed = { readonly zones: readonly ZoneArea[]; readonly notes: readonly Note[] }

/** A zone that nobody typed an area for covers what its marks enclose; without marks, what such a zone usually does. */
function zoneOf(zone: Work['zones'][number], made: Struck, hull: MeasuredHull): Enclosed {
  const stripes = made.stripes.filter((stripe) => stripe.zone === zone.id)
  const panels = made.panels.filter((one) => one.zone === zone.id)
  if (stripes.length + panels.length === 0) {
    const size = sharedArea(zone, hull)
    return size
      ? { zones: [{ ...describe(zone), ...size, how: 'marks' }], notes: [fromShare(zone, size)] }
      : { zones: [], notes: [] }
  }
  const area: ZoneArea = {
    ...describe(zone),
    areaM2:
      stripes.reduce((sum, stripe) => sum + stripe.table.areaM2, 0) +
      panels.reduce((sum, one) => sum + one.count * one.panelAreaM2, 0),
    perimeterM:
      stripes.reduce((sum, stripe) => sum + stripe.table.tapeM, 0) +
      panels.reduce((sum, one) => sum + one.count * one.perimeterM, 0),
    certainty: weakest(
      ...panels.map((one) => one.certainty),
      ...(stripes.length > 0 ? [hull.certainty] : []),
    ),
    how: 'marks',
  }
  return { zones: [area], notes: [] }
}
