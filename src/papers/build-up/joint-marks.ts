/** Numbers at the joints of a section: what does not hold in a square of fault, what wants minding in a circle. */
import { noteFlag } from '../flags.ts'
import { corners, type Drawing, filled, inked, line, type Point, textAt } from '../shapes.ts'
import type { Bands } from './bands.ts'

export type JointMark = {
  readonly number: number
  /** `new:0` and up, as the bands are named. */
  readonly id: string
  readonly breaks: boolean
  /** It is about the face towards the weather. */
  readonly above: boolean
}

const step = 8
const flag = 5.6

/** Side by side from the left where several meet; those of a filling at its floor. */
export function jointMarks(marks: readonly JointMark[], { bands, hollows }: Bands, width: number): Drawing {
  const placed = marks.flatMap((mark) => {
    const band = bands.find(({ id }) => id === mark.id)
    const hollow = hollows.find(({ id }) => id === mark.id)
    if (band) return [{ mark, across: true, y: mark.above ? band.top : band.top + band.height }]
    return hollow ? [{ mark, across: false, y: hollow.top + HOLLOW_FLOOR }] : []
  })
  const lines = placed.filter(({ mark, across }) => mark.breaks && across)
  return [
    ...lines.map(({ y }) => inked(line('thick', [0, y], [width, y]), 'fault')),
    ...placed.flatMap(({ mark, y }, at) => {
      const nr = placed.slice(0, at).filter((before) => before.y === y).length
      const corner: Point = [Math.min(3 + nr * step, width - flag), y - flag / 2]
      return mark.breaks ? faultFlag(mark.number, corner) : paperFlag(mark.number, corner)
    }),
  ]
}

const HOLLOW_FLOOR = 5

const faultFlag = (number: number, [x, y]: Point): Drawing => [
  filled(corners({ x, y, width: flag, height: flag }), 'fault'),
  {
    ...textAt([x + flag / 2, y + flag / 2 + 1.05], String(number), 'smallStrong', { align: 'centre' }),
    ink: 'black',
  },
]

/** Filled, so that no hatch runs through the number. */
const paperFlag = (number: number, [x, y]: Point): Drawing => [
  { kind: 'circle', at: [x + flag / 2, y + flag / 2], radius: flag / 2, fill: 'paper' },
  ...noteFlag(number, [x, y]),
]
