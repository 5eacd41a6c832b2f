/** A place on the deck as a person would write it, and how far a key or a finger moves it. */
import { breadthAt, type Place } from './deck-view.ts'

type System = 'metric' | 'us'

const inch = 0.0254
/** Sixteenths of an inch in a foot. */
const sixteenths = 192

/** `1.23 m`, `4 ft 2 3/16 in`; `about` where it was put by eye. */
export function lengthText(
  value: number,
  { system, about }: { readonly system: System; readonly about: boolean },
): string {
  const text = system === 'us' ? feetText(value) : `${Math.round(value * 1000) / 1000 || 0} m`
  // On the centreline, or right at the stern: that is a place, not a guess.
  const exact = Math.abs(value) < 5e-4
  return about && !exact ? `about ${text}` : text
}

function feetText(value: number): string {
  const all = Math.round((Math.abs(value) / inch) * 16)
  const [feet, rest] = [Math.floor(all / sixteenths), all % sixteenths]
  const [inches, parts] = [Math.floor(rest / 16), rest % 16]
  const fraction = parts === 0 ? '' : reduced(parts)
  const inchText = [inches > 0 || (fraction === '' && feet === 0) ? String(inches) : '', fraction]
    .filter((each) => each !== '')
    .join(' ')
  const whole = [feet > 0 ? `${feet} ft` : '', inchText === '' ? '' : `${inchText} in`]
    .filter((each) => each !== '')
    .join(' ')
  return value < 0 && all > 0 ? `-${whole}` : whole
}

/** Halves, quarters, eighths and sixteenths. */
function reduced(parts: number): string {
  const by = [8, 4, 2].find((each) => parts % each === 0) ?? 1
  return `${parts / by}/${16 / by}`
}

/** How far a key moves a corner, m: 10 mm, with Alt 1 mm; on an inch rule half an inch and a sixteenth. */
export const keyStep = (system: System, fine: boolean): number =>
  system === 'us' ? inch * (fine ? 1 / 16 : 1 / 2) : fine ? 0.001 : 0.01

const arrows: Readonly<Record<string, Place>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
}

/** The way a key points, on the boat: which of the two figures it changes and in which direction. */
export function arrowOf(
  key: string,
  upright: boolean,
): { readonly of: 'fromStern' | 'offCentre'; readonly sign: 1 | -1 } | undefined {
  const arrow = Object.hasOwn(arrows, key) ? arrows[key] : undefined
  if (!arrow) return undefined
  const [right, down] = arrow
  // Lying, the bow is right and port up; upright, the bow is up and port left.
  const forward = upright ? -down : right
  const toPort = upright ? -right : -down
  return forward !== 0
    ? { of: 'fromStern', sign: forward > 0 ? 1 : -1 }
    : { of: 'offCentre', sign: toPort > 0 ? 1 : -1 }
}

export type Snap = {
  readonly perM: number
  readonly sheer: readonly Place[]
  readonly system: System
  /** Half of a zone stays on its side. */
  readonly side: 'port' | 'starboard' | undefined
}

/** As near as a finger aims, px. */
const reachPx = 7

/** Where a corner that is let go here comes to lie: on the centreline or the sheer when it is near, else on whole steps. */
export function snapped([x, y]: Place, { perM, sheer, system, side }: Snap): Place {
  const step = keyStep(system, false)
  const whole = (value: number): number => Math.round(value / step) * step
  const own = side === 'port' ? Math.max(0, y) : side === 'starboard' ? Math.min(0, y) : y
  const near = reachPx / perM
  const along = whole(x)
  if (Math.abs(own) < near) return [along, 0]
  const edge = breadthAt(sheer, along)
  const onSheer = along >= sheer[0]![0] && along <= sheer.at(-1)![0] && Math.abs(Math.abs(own) - edge) < near
  return [along, onSheer ? (Math.sign(own) * Math.floor(edge * 1000)) / 1000 : whole(own)]
}
