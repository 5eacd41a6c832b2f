/** How the area of a deck zone came about that was measured as a shape, and that of a zone with pads on it. */
import type { Figure, Work } from '#job'
import type { DeckShape, ZoneArea } from '../types.ts'
import { counted, type Told, workCell, written } from './told.ts'
import {
  given,
  minus,
  number,
  over,
  type Part,
  plus,
  type Term,
  times,
  valueIn,
  type Way,
  wayOf,
  worked,
} from './way.ts'

type Base = Omit<Part, 'kind' | 'value' | 'term'>
type Item = Work['zones'][number]

export const shapeOf = ({ plan }: Told, { id }: ZoneArea): DeckShape | undefined =>
  plan.surfaces.shapes.find(({ zone }) => zone === id)

/** Number × faces × (sides × (inside the edge − openings) × camber × slope − cut-outs + upstand). */
export function shapeArea(told: Told, shape: DeckShape, base: Base): Way {
  const item = told.work.zones.find(({ id }) => id === shape.zone)
  if (!item) return wayOf(given({ ...base, value: shape.areaM2 }))
  const { terms } = shape
  const flat = terms.outline > 0 ? [flatTerm(told, shape, item)] : []
  const sum = plus(...flat, ...(terms.upstand > 0 ? [upstandPart(shape, item)] : []))
  const cut = terms.cutOuts > 0 ? minus(sum, cutOutPart(item)) : sum
  const pieces = item.count === undefined ? [] : [counted('pieces', item.count, at(item, 'count'))]
  const faces = terms.faces === 1 ? [] : [counted('faces', terms.faces, at(item, 'faces'))]
  const figure = worked(base, times(...pieces, ...faces, cut))
  const how = shape.how === 'shape' && terms.outline > 0 ? { how: { code: 'way.deckShape' } } : {}
  return wayOf(figure, how)
}

const cellOf = (item: Item, key: string) => workCell('zones', item.id, key)
const at = (item: Item, key: string) => ({ at: cellOf(item, key) })

function flatTerm(told: Told, shape: DeckShape, item: Item): Term {
  const { terms } = shape
  const edge = shape.how === 'shape' ? [outlinePart(told, shape)] : sidesOf(item)
  const open =
    terms.openings > 0
      ? given({
          name: 'openings',
          key: 'areaM2',
          value: terms.openings,
          certainty: shape.certainty,
          at: firstCorner(told, item.id),
        })
      : undefined
  const inside = open ? minus(times(...edge), open) : times(...edge)
  return times(
    ...(terms.sides === 2 ? [counted('sides', 2, at(item, 'mirror'))] : []),
    inside,
    ...factorsOf(shape, item),
  )
}

const sidesOf = (item: Item): readonly Part[] =>
  (['length', 'width'] as const).flatMap((key) => {
    const figure = item[key]
    return figure ? [written({ name: key, key: `${key}M`, at: cellOf(item, key) }, figure)] : []
  })

/** By how much lengths on the surface are longer than from above: one and a small share. */
function factorsOf({ terms }: DeckShape, item: Item): readonly Term[] {
  const factor = (key: 'camber' | 'slope', value: number): readonly Term[] => {
    const figure: Figure | undefined = item[key]
    if (!figure || value === 1) return []
    const longer = given({
      name: `${key}Longer`,
      key: 'longerShare',
      value: value - 1,
      certainty: figure.certainty,
      at: cellOf(item, key),
      source: key === 'camber' ? 'length of a parabola over its chord' : '1 ÷ cosine of the slope',
    })
    return [plus(number(1), longer)]
  }
  return [...factor('camber', terms.camberFactor), ...factor('slope', terms.slopeFactor)]
}

function upstandPart({ terms }: DeckShape, item: Item): Part {
  const height = written(
    { name: 'upstandHeight', key: 'heightM', ...at(item, 'upstandHeight') },
    item.upstandHeight!,
  )
  const length = item.upstandLength
    ? written({ name: 'upstandLength', key: 'lengthM', ...at(item, 'upstandLength') }, item.upstandLength)
    : given({ name: 'edge', key: 'lengthM', value: terms.upstandLength, certainty: 'worked' })
  return worked({ name: 'upstand', key: 'areaM2', certainty: 'worked' }, times(length, height))
}

function cutOutPart(item: Item): Part {
  const sizes = (['openingLength', 'openingWidth'] as const).map((key) =>
    written({ name: key, key: 'sizeM', ...at(item, key) }, item[key]!),
  )
  const count = item.openingCount
    ? [counted('openingCount', item.openingCount, at(item, 'openingCount'))]
    : []
  return worked({ name: 'cutOuts', key: 'areaM2', certainty: 'worked' }, times(...count, ...sizes))
}

/** More corners than this make no formula that anybody follows. */
const mostCorners = 8

/** Inside the edge of one side, seen from above. */
function outlinePart(told: Told, shape: DeckShape): Part {
  const { zone, terms, certainty } = shape
  const base = { name: 'outline', key: 'areaM2', certainty, at: firstCorner(told, zone) }
  const corners = told.work.corners.filter((one) => one.zone === zone && one.opening === undefined)
  const term = corners.length > 0 ? cornersTerm(corners) : trapezoids(told, zone)
  const known = term && worked(base, term)
  const fits = known && Math.abs(known.value - terms.outline) < 1e-9 * Math.max(1, terms.outline)
  return fits ? known : given({ ...base, value: terms.outline, source: 'corners gone round once' })
}

function firstCorner({ work }: Told, zone: string) {
  const corner = work.corners.find((one) => one.zone === zone)
  const offset = work.offsets.find((one) => one.zone === zone)
  return corner ? workCell('corners', corner.id, 'fromStern') : workCell('offsets', offset?.id, 'outer')
}

/** Half the sum of each place along the boat times how far apart its neighbours lie across: the shoelace formula. */
function cornersTerm(corners: Told['work']['corners']): Term | undefined {
  if (corners.length > mostCorners) return undefined
  const name = (nr: number) => String(nr + 1)
  const across = (nr: number): Part => {
    const k = (nr + corners.length) % corners.length
    const { id, offCentre } = corners[k]!
    const cell = workCell('corners', id, 'offCentre')
    return written({ name: 'cornerOffCentre', of: name(k), key: 'sizeM', at: cell }, offCentre)
  }
  const terms = (turn: 1 | -1) =>
    corners.map(({ id, fromStern }, k) => {
      const cell = workCell('corners', id, 'fromStern')
      const along = written({ name: 'cornerFromStern', of: name(k), key: 'sizeM', at: cell }, fromStern)
      return times(along, minus(across(k + turn), across(k - turn)))
    })
  const sum = plus(...terms(1))
  const area = over(sum, number(2))
  return valueIn(sum) >= 0 ? area : over(plus(...terms(-1)), number(2))
}

/** The mean width between two offsets times how far apart they are. */
function trapezoids({ work }: Told, zone: string): Term | undefined {
  const rows = work.offsets
    .filter((one) => one.zone === zone)
    .sort((a, b) => a.fromStern.value - b.fromStern.value)
  if (rows.length < 2 || rows.length > mostCorners) return undefined
  const cell = (nr: number, key: string) => workCell('offsets', rows[nr]!.id, key)
  const width = (nr: number): Term => {
    const { outer, inner } = rows[nr]!
    const part = (name: 'outer' | 'inner', figure: Figure) =>
      written({ name, of: String(nr + 1), key: 'sizeM', at: cell(nr, name) }, figure)
    return inner ? minus(part('outer', outer), part('inner', inner)) : part('outer', outer)
  }
  const along = (nr: number): Part =>
    written(
      { name: 'offsetFromStern', of: String(nr + 1), key: 'sizeM', at: cell(nr, 'fromStern') },
      rows[nr]!.fromStern,
    )
  const strips = rows
    .slice(1)
    .map((_, nr) => times(minus(along(nr + 1), along(nr)), plus(width(nr), width(nr + 1))))
  return over(plus(...strips), number(2))
}

/** The area before pads were taken off, less what they hide. */
export function withPads(told: Told, zone: ZoneArea, base: Base, whole: (zone: ZoneArea) => Way): Way {
  const { padsM2 = 0, ...rest } = zone
  const before = whole({ ...rest, areaM2: zone.areaM2 + padsM2 })
  const pad = told.plan.surfaces.pads.find(({ hides }) => hides === zone.kind)
  const hidden = given({
    name: 'pads',
    key: 'areaM2',
    value: padsM2,
    certainty: pad?.certainty ?? 'assumed',
    at: workCell('zones', pad?.id ?? zone.id, 'area'),
    source: 'about 0.1 m² a pad, common practice of yards',
  })
  const figure = worked(base, minus({ ...before.figure, name: 'areaWithPads' }, hidden))
  return wayOf(figure, {
    parts: [...before.parts, hidden],
    ...(before.how ? { how: before.how } : {}),
  })
}
