/**
 * From where the boat is looked at, and where her points then lie on the screen. No vanishing points: lines that run
 * side by side on the boat do so in the picture, as on a drawing. Boat frame in metres, screen in px.
 */

export type View = {
  /** Where the eye stands, rad: 0 ahead, π/2 to port, −π/2 to starboard. */
  readonly turn: number
  /** Over the level, rad: π/2 looks straight down. */
  readonly tilt: number
  /** 1 shows all of her. */
  readonly zoom: number
  /** Of her middle from the middle of the picture, in px at zoom 1. */
  readonly shift: readonly [x: number, y: number]
}

export type Size = { readonly width: number; readonly height: number }
export type Extent = { readonly middle: Vector; readonly span: Vector }
export type Vector = readonly [x: number, y: number, z: number]

export const viewNames = ['bow', 'side', 'astern', 'above'] as const
export type ViewName = (typeof viewNames)[number]

const square = Math.PI / 2
const flat = { zoom: 1, shift: [0, 0] } as const

/** Off the starboard bow, from a little above. */
export const firstView: View = { turn: -0.33 * Math.PI, tilt: 0.12 * Math.PI, ...flat }

export const namedViews: Readonly<Record<ViewName, View>> = {
  bow: { turn: 0, tilt: 0, ...flat },
  side: { turn: -square, tilt: 0, ...flat },
  astern: { turn: Math.PI, tilt: 0, ...flat },
  above: { turn: -square, tilt: square, ...flat },
}

const [leastZoom, mostZoom] = [1, 12]
const within = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most)

/** She is turned about her own upright, and tipped no further than straight down or up. */
export const turned = (view: View, turn: number, tilt: number): View => ({
  ...view,
  turn: wrapped(view.turn + turn),
  tilt: within(view.tilt + tilt, -square, square),
})

/** Between −π and π, so that the short way round is found. */
export const wrapped = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))

/** Nearer by a factor; what lies `at` the place, counted from the middle of the picture, stays there. */
export function zoomed(view: View, by: number, at: readonly [number, number] = [0, 0]): View {
  const zoom = within(view.zoom * by, leastZoom, mostZoom)
  if (zoom === leastZoom) return { ...view, ...flat }
  const [x, y] = view.shift
  const moved = 1 / zoom - 1 / view.zoom
  return { ...view, zoom, shift: [x + at[0] * moved, y + at[1] * moved] }
}

export const moved = (view: View, [x, y]: readonly [number, number]): View =>
  view.zoom === leastZoom
    ? view
    : { ...view, shift: [view.shift[0] + x / view.zoom, view.shift[1] + y / view.zoom] }

/** Part of the way from one view to another, round by the shorter way. */
export const between = (from: View, to: View, share: number): View => {
  const on = (a: number, b: number): number => a + share * (b - a)
  return {
    turn: wrapped(from.turn + share * wrapped(to.turn - from.turn)),
    tilt: on(from.tilt, to.tilt),
    zoom: on(from.zoom, to.zoom),
    shift: [on(from.shift[0], to.shift[0]), on(from.shift[1], to.shift[1])],
  }
}

export type Axes = { readonly eye: Vector; readonly right: Vector; readonly up: Vector }

/** Unit vectors towards the eye, to the right and upward on the screen. */
export function axesOf({ turn, tilt }: Pick<View, 'turn' | 'tilt'>): Axes {
  const [c, s, ct, st] = [Math.cos(turn), Math.sin(turn), Math.cos(tilt), Math.sin(tilt)]
  return { eye: [ct * c, ct * s, st], right: [-s, c, 0], up: [-st * c, -st * s, ct] }
}

export function extentOf(positions: ArrayLike<number>): Extent {
  const least = [Infinity, Infinity, Infinity]
  const most = [-Infinity, -Infinity, -Infinity]
  for (let k = 0; k < positions.length; k += 1) {
    const n = k % 3
    least[n] = Math.min(least[n]!, positions[k]!)
    most[n] = Math.max(most[n]!, positions[k]!)
  }
  const along = (of: (low: number, high: number) => number): Vector => [
    of(least[0]!, most[0]!),
    of(least[1]!, most[1]!),
    of(least[2]!, most[2]!),
  ]
  return { middle: along((a, b) => (a + b) / 2), span: along((a, b) => b - a) }
}

const margin = 20

/**
 * px a metre at zoom 1: as large as all of her shows from there, whichever way she lies. From ahead that is more than
 * from the side, so she comes nearer as she is turned end on.
 */
export function fitting(
  view: Pick<View, 'turn' | 'tilt'>,
  { span }: Extent,
  { width, height }: Size,
): number {
  const { right, up } = axesOf(view)
  const reach = (axis: Vector): number =>
    Math.max(0.1, Math.abs(axis[0]) * span[0] + Math.abs(axis[1]) * span[1] + Math.abs(axis[2]) * span[2])
  return Math.max(1, Math.min((width - 2 * margin) / reach(right), (height - 2 * margin) / reach(up)))
}

export type Projected = {
  /** Across and down, px. */
  readonly x: Float32Array
  readonly y: Float32Array
  /** Towards the eye, m. */
  readonly near: Float32Array
}

export type Camera = { readonly view: View; readonly size: Size; readonly extent: Extent }

export const perM = ({ view, size, extent }: Camera): number => fitting(view, extent, size) * view.zoom

export function projected(positions: ArrayLike<number>, camera: Camera): Projected {
  const { view, size, extent } = camera
  const { eye, right, up } = axesOf(view)
  const scale = perM(camera)
  const [mx, my, mz] = extent.middle
  const [left, top] = [
    size.width / 2 + view.shift[0] * view.zoom,
    size.height / 2 + view.shift[1] * view.zoom,
  ]
  const count = positions.length / 3
  const [x, y, near] = [new Float32Array(count), new Float32Array(count), new Float32Array(count)]
  for (let n = 0; n < count; n += 1) {
    const [px, py, pz] = [positions[3 * n]! - mx, positions[3 * n + 1]! - my, positions[3 * n + 2]! - mz]
    x[n] = left + scale * (px * right[0] + py * right[1])
    y[n] = top - scale * (px * up[0] + py * up[1] + pz * up[2])
    near[n] = px * eye[0] + py * eye[1] + pz * eye[2]
  }
  return { x, y, near }
}
