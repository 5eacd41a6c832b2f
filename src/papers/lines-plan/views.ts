/**
 * The views of a lines plan as shapes: sheer plan and half-breadth plan on common stations, body plan beside them;
 * bow right. From boat metres (x forward, y to port, z up from the water) to sheet millimetres.
 */
import type { Plan } from '#plan'
import { type Drawing, filled, inked, line, type Point, textAt } from '../shapes.ts'

export type Outline = NonNullable<Plan['surfaces']['outline']>
type View = Outline['sheerPlan']
type Line2 = View['keel']

/** Sheet place of a point of one view. */
export type Place = (along: number, across: number) => Point

const traced = (points: Line2, place: Place): readonly Point[] => points.map(([a, b]) => place(a, b))

/** Sheer and keel thick, knuckles medium, the waterline dashed; the ends are closed. */
export function viewDrawing(view: View, place: Place): Drawing {
  const [keel, sheer] = [traced(view.keel, place), traced(view.sheer, place)]
  const ends: Drawing = [...closing(keel[0], sheer[0]), ...closing(keel.at(-1), sheer.at(-1))]
  return [
    ...view.knuckles.map((knuckle) => line('medium', ...traced(knuckle.line, place))),
    ...[keel, sheer].flatMap((points) => (points.length < 2 ? [] : [line('outline', ...points)])),
    ...ends,
  ]
}

function closing(from: Point | undefined, to: Point | undefined): Drawing {
  if (!from || !to || Math.hypot(from[0] - to[0], from[1] - to[1]) < 0.05) return []
  return [line('outline', from, to)]
}

/** The line along the water, seen from above. */
export const waterlineDrawing = (view: View, place: Place): Drawing =>
  view.waterlines.flatMap(({ lines }) => lines.map((each) => line('hidden', ...traced(each, place))))

export type Station = { readonly id: string; readonly x: number }

/** Stations far enough apart to be numbered, from the stem aft. */
export function shownStations(outline: Outline, mmPerM: number): readonly Station[] {
  const shown: Station[] = []
  for (const station of [...outline.bodyPlan].sort((a, b) => b.x - a.x)) {
    const last = shown.at(-1)
    if (!last || (last.x - station.x) * mmPerM >= 8) shown.push(station)
  }
  return shown
}

/** `Station 4` is lettered 4; a name without a number stands as it is, cut short. */
const stationLabel = (id: string): string => /(\d+)\s*$/.exec(id)?.[1] ?? [...id].slice(0, 4).join('')

export type StationLines = {
  readonly stations: readonly Station[]
  readonly place: Place
  /** Sheet heights between which each line runs. */
  readonly spans: readonly (readonly [from: number, to: number])[]
  readonly labelY: number
}

export function stationDrawing({ stations, place, spans, labelY }: StationLines): Drawing {
  return stations.flatMap(({ id, x }) => {
    const [at] = place(x, 0)
    return [
      ...spans.map(([from, to]) => inked(line('thin', [at, from], [at, to]), 'rule')),
      textAt([at, labelY], stationLabel(id), 'grid', { align: 'centre', ink: 'ink2' }),
    ]
  })
}

/** Sections aft of midships to the left of the centreline, forward ones to the right. */
export function bodyPlanDrawing(outline: Outline, place: Place): Drawing {
  const sections = outline.bodyPlan
  const xs = sections.map(({ x }) => x)
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2
  const every = Math.max(1, Math.round(sections.length / 11))
  return sections.flatMap((section, index): Drawing => {
    const end = index === 0 || index === sections.length - 1
    if (!end && index % every !== 0) return []
    const side = section.x < middle ? -1 : 1
    const points = section.line.map(([y, z]) => place(side * y, z))
    return [line(index === 0 ? 'outline' : 'thin', ...points)]
  })
}

/** A boot stripe on the side of the hull, as it will be painted. */
export function stripeDrawing(stripe: Plan['marks']['stripes'][number], place: Place): Drawing {
  const { rows } = stripe.table
  const lower = rows.map((row) => place(row.xM, row.lowerM))
  const upper = rows.map((row) => place(row.xM, row.upperM))
  return rows.length < 2 ? [] : [filled([...lower, ...[...upper].reverse()], 'hair')]
}

/** A single tape line on the side of the hull. */
export const tapeLineDrawing = ({ table }: Plan['marks']['lines'][number], place: Place): Drawing =>
  table.rows.length < 2 ? [] : [line('thin', ...table.rows.map((row) => place(row.xM, row.heightM)))]

/** The sign of the floating line: a triangle standing on it. */
export const waterSign = ([x, y]: Point): Drawing => [
  {
    kind: 'area',
    points: [
      [x, y],
      [x - 1.5, y - 2.5],
      [x + 1.5, y - 2.5],
    ],
    pen: 'medium',
    ink: 'ink',
  },
]
