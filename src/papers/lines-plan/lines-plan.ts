/** The boat in lines, with length, beam and draft, to a printed scale. */
import type { Certainty } from '#core/note'
import { lineStrip } from '../blocks.ts'
import { levelDimension, uprightDimension } from '../dimension.ts'
import type { Kit } from '../kit.ts'
import { type Drawing, inked, line, moved, type Point, textAt } from '../shapes.ts'
import type { Strip } from '../strips.ts'
import { allowance, scaleFor } from './scale.ts'
import {
  bodyPlanDrawing,
  type Outline,
  type Place,
  shownStations,
  stationDrawing,
  stripeDrawing,
  tapeLineDrawing,
  viewDrawing,
  waterlineDrawing,
  waterSign,
} from './views.ts'

export type LinesPlanAt = { readonly x: number; readonly width: number; readonly mostHeight: number }

/** Undefined when no hull is known. */
export function linesPlan(kit: Kit, at: LinesPlanAt): Strip | undefined {
  const { outline } = kit.plan.surfaces
  if (!outline) return undefined
  const layout = layOut(outline, at)
  return {
    height: layout.height,
    draw: (top) =>
      moved([...views(kit, layout), ...letters(kit, layout), ...sizes(kit, layout)], [at.x, top]),
  }
}

/** A frame where the boat would stand, and what to give so that it does. */
export function noLinesPlan(kit: Kit, { x, width }: Pick<LinesPlanAt, 'x' | 'width'>): Strip {
  const height = 34
  const words = lineStrip(
    kit.say.label('paperLines.none'),
    'body',
    { x, width },
    { align: 'centre', ink: 'ink2' },
  )
  const hull = (top: number): readonly Point[] => {
    const [left, y] = [x + width / 2 - 45, top + 10]
    return [
      [left, y],
      [left + 1, y + 13],
      [left + 70, y + 12],
      [left + 84, y + 5],
      [left + 90, y - 4],
      [left + 60, y - 1],
      [left, y],
    ]
  }
  return {
    height,
    draw: (top) => [line('ghost', ...hull(top)), ...words.draw(top + height - 7)],
  }
}

type Layout = {
  readonly outline: Outline
  readonly scale: number
  readonly mmPerM: number
  readonly length: number
  readonly halfBeam: number
  readonly top: number
  readonly water: number
  readonly keel: number
  readonly centre: number
  readonly bodyX: number
  readonly height: number
  readonly side: Place
  readonly above: Place
  readonly body: Place
}

function layOut(outline: Outline, { width, mostHeight }: LinesPlanAt): Layout {
  const { sheerPlan, halfBreadthPlan } = outline
  const xs = [...sheerPlan.keel, ...sheerPlan.sheer].map(([x]) => x)
  const zs = [...sheerPlan.keel, ...sheerPlan.sheer, [0, 0] as const].map(([, z]) => z)
  const length = Math.max(...xs)
  const halfBeam = Math.max(
    ...halfBreadthPlan.sheer.map(([, y]) => y),
    ...outline.bodyPlan.flatMap((s) => s.line.map(([y]) => y)),
  )
  const [high, low] = [Math.max(...zs), Math.min(...zs)]
  const scale = scaleFor(
    { length, beam: 2 * halfBeam, depth: high - low, halfBeam },
    { width, height: mostHeight },
  )
  const mmPerM = 1000 / scale
  const used = (length + 2 * halfBeam) * mmPerM + allowance.left + allowance.between + allowance.right
  const left = allowance.left + Math.max(0, (width - used) / 2)
  const top = allowance.top
  const water = top + high * mmPerM
  const keel = water - low * mmPerM
  const centre = keel + allowance.middle
  const bodyX = left + length * mmPerM + allowance.between + halfBeam * mmPerM
  return {
    outline,
    scale,
    mmPerM,
    length,
    halfBeam,
    top,
    water,
    keel,
    centre,
    bodyX,
    height: centre + halfBeam * mmPerM + allowance.bottom,
    side: (x, z) => [left + x * mmPerM, water - z * mmPerM],
    above: (x, y) => [left + x * mmPerM, centre + y * mmPerM],
    body: (y, z) => [bodyX + y * mmPerM, water - z * mmPerM],
  }
}

function views(kit: Kit, layout: Layout): Drawing {
  const { outline, side, above, body, top, keel, centre, halfBeam, mmPerM, length } = layout
  const stations = shownStations(outline, mmPerM)
  const low = centre + halfBeam * mmPerM
  const [aft] = side(0, 0)
  const [forward] = side(length, 0)
  const [port] = body(halfBeam, 0)
  return [
    ...stationDrawing({
      stations,
      place: side,
      spans: [
        [top - 1, keel + 1],
        [centre - 1, low + 1],
      ],
      labelY: top - 2.4,
    }),
    ...kit.plan.marks.stripes.flatMap((stripe) => stripeDrawing(stripe, side)),
    ...kit.plan.marks.lines.flatMap((tape) => tapeLineDrawing(tape, side)),
    line('waterline', [aft - 12, layout.water], [port + 3, layout.water]),
    ...waterSign([aft - 9, layout.water]),
    ...viewDrawing(outline.sheerPlan, side),
    line('chain', [aft - 6, centre], [forward + 6, centre]),
    ...waterlineDrawing(outline.halfBreadthPlan, above),
    ...viewDrawing({ ...outline.halfBreadthPlan, keel: [] }, above),
    ...transomAbove(outline, above),
    line('chain', [layout.bodyX, top - 1], [layout.bodyX, keel + 2]),
    ...bodyPlanDrawing(outline, body),
  ]
}

/** The after end seen from above, from the centreline to the sheer. */
function transomAbove(outline: Outline, above: Place): Drawing {
  const [first] = outline.halfBreadthPlan.sheer
  return first ? [line('outline', above(first[0], 0), above(first[0], first[1]))] : []
}

function letters(kit: Kit, layout: Layout): Drawing {
  const { say } = kit
  const [aft] = layout.side(0, 0)
  const [, low] = layout.above(0, layout.halfBeam)
  const label = (at: Point, key: string, align: 'left' | 'centre' = 'left') =>
    textAt(at, say.label(key), 'grid', { align, ink: 'ink2' })
  return [
    label([aft - 15.5, layout.top - 2.4], 'paperLines.stations'),
    label([aft - 15.5, layout.centre - 1.4], 'paperLines.halfBreadth'),
    label([layout.bodyX, layout.top - 2.4], 'paperLines.bodyPlan', 'centre'),
    ...scaleBar(kit, layout, [layout.bodyX, low]),
  ]
}

/** Scale in figures, and a bar, since copies are seldom true to size. */
function scaleBar(kit: Kit, { mmPerM, scale }: Layout, [x, y]: Point): Drawing {
  const metric = kit.job.units === 'metric'
  const unit = metric ? mmPerM : mmPerM * 0.3048 * 3
  const from = x - unit / 2
  const tick = (at: number) => line('thin', [at, y - 1], [at, y + 1])
  return [
    line('outline', [from, y], [from + unit, y]),
    tick(from),
    tick(from + unit),
    textAt([x, y - 1.6], kit.say.figure('lengthM', metric ? 1 : 0.9144), 'grid', {
      align: 'centre',
      ink: 'ink2',
    }),
    textAt([x, y + 4], kit.say.sentence('paper.scale', { scale: String(scale) }), 'grid', {
      align: 'centre',
      ink: 'ink2',
    }),
  ]
}

function sizes(kit: Kit, layout: Layout): Drawing {
  const found = kit.plan.surfaces.hull?.particulars
  if (!found) return []
  const { say, setter } = kit
  const [aft] = layout.side(0, 0)
  const [forward] = layout.side(layout.length, 0)
  const [left] = layout.body(-layout.halfBeam, 0)
  const [right] = layout.body(layout.halfBeam, 0)
  const y = layout.keel + 6.5
  const extension = (x: number, from: number) => inked(line('thin', [x, from], [x, y + 1]), 'hair')
  const draft: Drawing =
    found.draft * layout.mmPerM < 3
      ? []
      : uprightDimension(
          {
            from: layout.water,
            to: layout.keel,
            at: aft - 3,
            text: say.figure('draftM', found.draft),
            certainty: draftSure(kit),
          },
          setter,
        )
  return [
    ...[aft, forward].map((x) => extension(x, layout.keel + 1)),
    ...[left, right].map((x) => extension(x, layout.water + 1)),
    ...levelDimension(
      {
        from: aft,
        to: forward,
        at: y,
        text: say.figure('lengthM', found.lengthOverall),
        certainty: 'measured',
      },
      setter,
    ),
    ...levelDimension(
      { from: left, to: right, at: y, text: say.figure('beamM', found.beamOverall), certainty: 'measured' },
      setter,
    ),
    ...draft,
  ]
}

/** Length and beam are always given; a draft the plan had to assume says so in a note. */
const draftSure = (kit: Kit): Certainty =>
  kit.plan.notes.some((note) => note.code === 'boat.draftAssumed') ? 'assumed' : 'measured'
