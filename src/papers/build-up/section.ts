/** The section through a build-up: weather side up and thick, hatched by family, the laminate cut by a break line. */
import { corners, type Drawing, filled, hatched, line, type Point, textAt } from '../shapes.ts'
import { type Band, type BandScale, type Bands, type Bond, bandsOf, type Hollow } from './bands.ts'
import { bondLine, breakLine } from './bond-line.ts'
import { type JointMark, jointMarks } from './joint-marks.ts'
import type { Stack } from './stacks.ts'

export type Section = {
  readonly drawing: Drawing
  readonly height: number
  /** Where the leader of each layer begins, by id. */
  readonly anchors: ReadonlyMap<string, Point>
}

/** With its upper left corner at the origin. `marks`: numbers at its joints. */
export function section(
  stack: Stack,
  width: number,
  scale: BandScale = 'readable',
  marks: readonly JointMark[] = [],
): Section {
  const bands = bandsOf(stack, scale)
  return {
    drawing: [
      ...bands.bands.flatMap((band) => bandDrawing(band, width)),
      ...bands.hollows.flatMap((hollow) => hollowDrawing(hollow, width)),
      ...edges(bands, width),
      ...(stack.existing === 'unknown' && !stack.onPaint ? question(bands, width) : []),
      ...jointMarks(marks, bands, width),
    ],
    height: bands.height,
    anchors: anchorsOf(bands, width),
  }
}

function bandDrawing({ top, height, hatch, coatLines, between, below, id }: Band, width: number): Drawing {
  const box = corners({ x: 0, y: top, width, height })
  const reach = (y: number) => ({ from: 0, to: width, y })
  return [
    ...(hatch ? [hatched(box, hatch)] : []),
    ...coatLines.map((y) => bondLine(room(height, coatLines.length, between), reach(y))),
    ...(id === 'laminate' ? [] : [bondLine(room(height, 0, below), reach(top + height))]),
  ]
}

/** A zigzag would hide a film thinner than itself: there a plain line stands for it. */
const room = (height: number, lines: number, bond: Bond): Bond =>
  bond === 'keyed' && height / (lines + 1) < leastForZigzag ? 'same coat' : bond

const leastForZigzag = 2.2

const bowl = { half: 11, depth: 5 }

const bowlCentre = ({ nr }: Hollow, width: number): number => width * (nr % 2 === 0 ? 0.34 : 0.68)

/** Filled to the level of the band, which was cut away for it. */
function hollowDrawing(hollow: Hollow, width: number): Drawing {
  const centre = bowlCentre(hollow, width)
  const round = Array.from({ length: 17 }, (_, k): Point => {
    const t = k / 8 - 1
    return [centre + t * bowl.half, hollow.top + bowl.depth * Math.sqrt(Math.max(0, 1 - t * t))]
  })
  const level: readonly [Point, Point] = [
    [centre - bowl.half, hollow.top],
    [centre + bowl.half, hollow.top],
  ]
  return [
    filled(round, 'paper'),
    ...(hollow.hatch ? [hatched(round, hollow.hatch)] : []),
    line('outline', ...round),
    line('medium', ...level),
  ]
}

function edges({ height }: Bands, width: number): Drawing {
  return [
    line('thick', [0, 0], [width, 0]),
    line('medium', [0, 0], [0, height]),
    line('medium', [width, 0], [width, height]),
    breakLine({ from: 0, to: width, y: height }),
  ]
}

/** Nobody knows what it is: no hatch, a dotted edge, and a question. */
function question({ bands }: Bands, width: number): Drawing {
  const old = bands.find(({ id }) => id === 'old')
  if (!old) return []
  const box = corners({ x: 1, y: old.top + 1.2, width: width - 2, height: old.height - 2.2 })
  return [
    { kind: 'area', points: box, pen: 'ghost', ink: 'ink' },
    textAt([3.6, old.top + old.height / 2 + 1.7], '?', 'part', { align: 'centre' }),
  ]
}

function anchorsOf({ bands, hollows }: Bands, width: number): ReadonlyMap<string, Point> {
  return new Map([
    ...bands.map(({ id, top, height }) => [id, [width - 2.5, top + height / 2] as Point] as const),
    ...hollows.map(
      (hollow) => [hollow.id, [bowlCentre(hollow, width) + 3, hollow.top + 2.2] as Point] as const,
    ),
  ])
}
