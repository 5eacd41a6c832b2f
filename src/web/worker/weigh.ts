/**
 * Which guesses move the plan most: each cell that nobody has measured is tried a good way below and above what is
 * taken for it, and the dates, litres and sums of the two plans are compared. COMMON PRACTICE: how far a guess may be
 * off; sizes taken from the boat's other sizes by 15 %, hours and films by 25 %,
 * parts of the deck by 35 %.
 */
import type { Projected, RawCells, RawDocument } from '#job'
import type { Plan } from '#plan'
import type { Candidate, Effect } from './messages.ts'

const sizeShare = 0.15
const workShare = 0.25
const deckShareOff = 0.35

/** Guesses that the plan rests on, each with the two texts to try. */
export const candidatesOf = (projected: Projected, plan: Plan): readonly Candidate[] => [
  ...boatSizes(projected, plan),
  ...unsureCells(projected, 'zones', 'area', sizeShare),
  ...deckShares(plan),
  ...unsureCells(projected, 'findings', 'hours', workShare),
  ...unsureCells(projected, 'fittings', 'hoursOff', workShare),
  ...films(plan),
]

const metres = (value: number): string => `about ${value.toFixed(3)} m`
const squareMetres = (value: number): string => `about ${value.toFixed(3)} m²`
const microns = (value: number): string => `about ${(value * 1e6).toFixed(0)} µm`

const around = (value: number, share: number, write: (value: number) => string) => ({
  low: write(value * (1 - share)),
  high: write(value * (1 + share)),
})

/** Sizes that were taken from the others, as the drawn hull has them. */
function boatSizes({ work }: Projected, { surfaces }: Plan): readonly Candidate[] {
  const found = surfaces.hull?.particulars
  if (!found) return []
  const taken = {
    freeboardMid: found.freeboardMid,
    freeboardStern: found.freeboardStern,
    draft: found.draft,
    lengthWaterline: found.lengthWaterline,
  }
  return Object.entries(taken)
    .filter(([key, value]) => value > 0 && isUnsure(work.boat[key as keyof typeof taken]))
    .map(([key, value]) => ({
      place: { part: 'work', section: 'boat', key },
      ...around(value, sizeShare, metres),
      // Longer than the hull it would be no guess but a slip, and there would be no hull.
      ...(key === 'lengthWaterline'
        ? { high: metres(Math.min(value * (1 + sizeShare), found.lengthOverall)) }
        : {}),
    }))
}

const isUnsure = (figure: { readonly certainty: string } | undefined): boolean =>
  figure === undefined || figure.certainty === 'assumed'

/** Areas of the deck that only the size of the boat says anything of. */
const deckShares = ({ surfaces }: Plan): readonly Candidate[] =>
  surfaces.zones
    .filter(({ how }) => how === 'share')
    .map(({ id, areaM2 }) => ({
      place: { part: 'work', section: 'zones', item: id, key: 'area' },
      ...around(areaM2, deckShareOff, squareMetres),
    }))

/** Cells that were written with `about`. */
function unsureCells(
  { work }: Projected,
  section: 'zones' | 'findings' | 'fittings',
  key: string,
  share: number,
): readonly Candidate[] {
  const units: Readonly<Record<string, string>> = { area: 'm²', hours: 'h', hoursOff: 'h' }
  const items = work[section] as readonly { readonly id: string }[]
  return items.flatMap((item) => {
    const figure = (
      item as unknown as Readonly<Record<string, { readonly value: number; readonly certainty: string }>>
    )[key]
    return figure?.certainty === 'assumed'
      ? [
          {
            place: { part: 'work' as const, section, item: item.id, key },
            ...around(figure.value, share, (value) => `about ${value.toFixed(3)} ${units[key] ?? ''}`),
          },
        ]
      : []
  })
}

/** Films of layers that come from a generic sheet. */
function films({ buildUps }: Plan): readonly Candidate[] {
  const seen = new Set<string>()
  return buildUps.layers.flatMap(({ layer, dryFilmM }) => {
    if (!dryFilmM || seen.has(layer) || !['typical', 'assumed'].includes(dryFilmM.certainty)) return []
    seen.add(layer)
    return [
      {
        place: { part: 'work' as const, section: 'layers', item: layer, key: 'dryFilm' },
        ...around(dryFilmM.value, workShare, microns),
      },
    ]
  })
}

/** The document as it would be with another text in one cell. */
export function withCell(
  raw: RawDocument,
  { part, section, item, key }: Candidate['place'],
  text: string,
): RawDocument {
  const map = (raw[part]?.[section] ?? {}) as Readonly<Record<string, unknown>>
  const next =
    item === undefined
      ? { ...map, [key]: text }
      : { ...map, [item]: { ...(map[item] as RawCells), [key]: text } }
  return { ...raw, [part]: { ...raw[part], [section]: next } }
}

/** How far apart two plans are: the end of the work in days, paint in litres, the total in coins. */
export function effectOf(low: Plan, high: Plan): Effect {
  const days = (plan: Plan): number | undefined => plan.days.workEndMinute
  const [lowEnd, highEnd] = [days(low), days(high)]
  const litres = (plan: Plan): number =>
    plan.quantities.sheets.reduce((sum, { mixedM3 }) => sum + mixedM3, 0) * 1000
  const coins = low.money && high.money ? Math.abs(high.money.totalCoins - low.money.totalCoins) : undefined
  return {
    days: lowEnd === undefined || highEnd === undefined ? 0 : Math.abs(highEnd - lowEnd) / 1440,
    litres: Math.abs(litres(high) - litres(low)),
    ...(coins === undefined ? {} : { coins }),
  }
}
