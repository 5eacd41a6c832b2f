/** Areas of the hull's zones from girths that were read off a tape. */
import { areaFromGirths, type Girth, girthBands, type Hull, type HullZone } from '#core/boat'
import type { Certainty, Note } from '#core/note'
import type { Work } from '#job'
import { weakest } from './certainty.ts'
import type { Stage } from './remember.ts'

export type TapedInput = { readonly hull: Hull | undefined; readonly girths: Work['girths'] }

/** What a tape says of zones of the hull; a zone without enough girths is not among them. */
export type Taped = {
  readonly areas: Readonly<Partial<Record<HullZone['kind'], TapedArea>>>
  readonly notes: readonly Note[]
}
export type TapedArea = { readonly areaM2: number; readonly certainty: Certainty }

export const taped: Stage<TapedInput, Taped> = { name: 'taped', run: tapeAreas }

/** Fewer girths than this say nothing of how the width runs along the boat. */
const fewest = 3
/** As many a side are a complete measure of the topsides; common practice. */
const complete = 5

type Side = 'port' | 'starboard'
type Taking = (row: Work['girths'][number]) => readonly (Figure | undefined)[]
type Figure = { readonly value: number; readonly certainty: 'measured' | 'assumed' }

function tapeAreas({ hull, girths }: TapedInput): Taped {
  if (!hull || girths.length === 0) return { areas: {}, notes: [] }
  const chined = hull.edges.includes('chine')
  const bands = girthBands(hull)
  const side: Taking = (row) => (chined ? [row.sheerToWater, row.waterToChine] : [row.sheerToWater])
  const below: Taking = (row) => (chined ? [row.chineToKeel] : [row.waterToChine, row.chineToKeel])
  const one = (of: Side, take: Taking, band: (typeof bands)['side']) =>
    areaOf(hull, {
      band,
      rows: girths.filter((row) => (row.side ?? 'both') === 'both' || row.side === of),
      take,
    })
  const [port, starboard] = [one('port', side, bands.side), one('starboard', side, bands.side)]
  const [bottomPort, bottomStarboard] = [
    one('port', below, bands.bottom),
    one('starboard', below, bands.bottom),
  ]
  const bottom = bottomPort && bottomStarboard && both(bottomPort, bottomStarboard)
  return {
    areas: {
      ...(port ? { 'topsides-port': port } : {}),
      ...(starboard ? { 'topsides-starboard': starboard } : {}),
      ...(bottom ? { bottom } : {}),
    },
    notes:
      port || starboard || bottom
        ? []
        : [{ code: 'surfaces.girthsTooFew', severity: 'missing', data: { needed: fewest, complete } }],
  }
}

const both = (a: TapedArea, b: TapedArea): TapedArea => ({
  areaM2: a.areaM2 + b.areaM2,
  certainty: weakest(a.certainty, b.certainty),
})

function areaOf(
  hull: Hull,
  {
    band,
    rows,
    take,
  }: {
    readonly band: ReturnType<typeof girthBands>['side']
    readonly rows: Work['girths']
    readonly take: Taking
  },
): TapedArea | undefined {
  const read = rows.flatMap((row) => {
    const parts = take(row)
    const known = parts.filter((part) => part !== undefined)
    return known.length < parts.length || known.length === 0 ? [] : [{ row, known }]
  })
  const girths: readonly Girth[] = read.map(({ row, known }) => ({
    x: row.fromStern.value,
    girth: known.reduce((sum, part) => sum + part.value, 0),
  }))
  if (new Set(girths.map(({ x }) => x)).size < fewest || girths.some(({ girth }) => !(girth > 0)))
    return undefined
  const areaM2 = areaFromGirths(hull, { band, girths })
  if (areaM2 === undefined) return undefined
  const guessed = read.some(({ known }) => known.some(({ certainty }) => certainty === 'assumed'))
  return { areaM2, certainty: guessed ? 'assumed' : girths.length < complete ? 'typical' : 'measured' }
}
