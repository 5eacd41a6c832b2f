/** A shortcut between two layers as it looks when it has failed: a small section in the lines of the large one. */
import { hatchFor } from '../hatches.ts'
import { corners, type Drawing, dot, filled, hatched, inked, line, type Point } from '../shapes.ts'

export type FailedLayers = {
  readonly under: { readonly family: string; readonly role: string }
  readonly over?: { readonly family: string; readonly role: string }
  readonly fails: 'lifts' | 'peels' | 'stays wet' | 'craters' | 'softens' | 'shows through'
}

/** Millimetres: 128 by 84 px. */
export const failedSize = { width: 33.9, height: 22.2 } as const

type Edge = (x: number) => number

/** Edges of the two layers from left to right, mm from the top; `fault` is the one that has gone wrong. */
type Shape = { readonly top: Edge; readonly bottom: Edge; readonly under: Edge; readonly fault: Edge }

const { width, height } = failedSize
const flat =
  (y: number): Edge =>
  () =>
    y
const bump = (x: number, at: number, wide: number): number => Math.exp(-(((x - at) / wide) ** 2))

const shapes: Readonly<Record<FailedLayers['fails'], Shape>> = {
  lifts: waving((x) => 8.6 - 2.4 * Math.abs(Math.sin((x / width) * Math.PI * 2.5)), 12),
  peels: waving((x) => (x < 13 ? 11 : 11 - ((x - 13) / (width - 13)) ** 1.6 * 7), 11.6),
  'stays wet': waving((x) => 11.4 + 0.9 * Math.abs(Math.sin((x / width) * Math.PI * 7)), 13),
  craters: cratered(),
  softens: softened(),
  'shows through': mapped(),
}

function waving(bottom: Edge, under: number): Shape {
  return { top: (x) => Math.max(0.8, bottom(x) - 7), bottom, under: flat(under), fault: bottom }
}

function cratered(): Shape {
  const top: Edge = (x) => 3 + 8.6 * Math.min(1, 1.5 * (bump(x, 8, 2.6) + bump(x, 26.5, 2.2)))
  return { top, bottom: flat(11.6), under: flat(11.6), fault: top }
}

function softened(): Shape {
  const under: Edge = (x) => 7 + 3.2 * (bump(x, 9, 4) + bump(x, 22, 5)) + 0.5 * Math.sin(x * 1.7)
  return { top: under, bottom: under, under, fault: under }
}

/** The edges of the putty in its hollow stand up in the film over it. */
function mapped(): Shape {
  const top: Edge = (x) => 4.6 - 1.9 * (bump(x, hollow.from, 1.6) + bump(x, hollow.to, 1.6))
  return { top, bottom: flat(11.6), under: flat(11.6), fault: top }
}

const hollow = { from: 8, to: 26 }

const steps = 68

const traced = (edge: Edge): readonly Point[] =>
  Array.from({ length: steps + 1 }, (_, k): Point => [(k * width) / steps, edge((k * width) / steps)])

const between = (top: Edge, bottom: Edge): readonly Point[] => [
  ...traced(top),
  ...[...traced(bottom)].reverse(),
]

/** With its upper left corner at the origin, as large as `failedSize`. */
export function failedSection({ under, over, fails }: FailedLayers): Drawing {
  const shape = shapes[fails]
  const floor = flat(height - 1)
  const overHatch = over && hatchFor(over.family, over.role)
  const lower = hatchFor(under.family, under.role)
  const inHollow = fails === 'shows through'
  return [
    ...(inHollow ? putty(lower) : lower ? [hatched(between(shape.under, floor), lower)] : []),
    line(fails === 'lifts' || fails === 'peels' ? 'outline' : 'medium', ...traced(shape.under)),
    ...(over
      ? [
          filled(between(shape.top, shape.bottom), 'paper'),
          ...(overHatch ? [hatched(between(shape.top, shape.bottom), overHatch)] : []),
          line('outline', ...traced(shape.top)),
        ]
      : []),
    ...(fails === 'stays wet' ? drops() : []),
    inked(line('thick', ...traced(shape.fault)), 'fault'),
    line('thin', [0, floor(0)], [width, floor(0)]),
    ...cross([width / 2, fails === 'softens' ? 8 : 11]),
  ]
}

/** Filler in a bowl of old gelcoat. */
function putty(hatch: ReturnType<typeof hatchFor>): Drawing {
  const { from, to } = hollow
  const bowl = Array.from({ length: 17 }, (_, k): Point => {
    const t = k / 8 - 1
    return [(from + to) / 2 + (t * (to - from)) / 2, 11.6 + 6.4 * Math.sqrt(Math.max(0, 1 - t * t))]
  })
  return [
    hatched(corners({ x: 0, y: 11.6, width, height: height - 12.6 }), 'polyester-primer'),
    filled(bowl, 'paper'),
    ...(hatch ? [hatched(bowl, hatch)] : []),
    line('medium', ...bowl),
  ]
}

const drops = (): Drawing => [4, 9, 13, 21, 25.5, 30].map((x) => dot([x, 12.2], 0.55, 'fault'))

/** A black cross on a square of fault. */
function cross([x, y]: Point): Drawing {
  const [half, arm] = [2.6, 1.3]
  return [
    filled(corners({ x: x - half, y: y - half, width: 2 * half, height: 2 * half }), 'fault'),
    inked(line('thick', [x - arm, y - arm], [x + arm, y + arm]), 'black'),
    inked(line('thick', [x - arm, y + arm], [x + arm, y - arm]), 'black'),
  ]
}
