/**
 * Wind as the barb of a weather map: half a feather for 5 kn, a whole one for 10 kn, a pennant for 50 kn.
 * SOURCE: WMO-No. 485, plotting of surface wind: speed to the nearest 5 kn, calm as a ring, the staff towards where
 * the wind comes from, feathers at its outer end on the side of low pressure (from memory).
 */

/** SOURCE: an international nautical mile is 1852 m, exactly. */
const mpsPerKnot = 1852 / 3600

export type BarbCounts = {
  /** Under 1 kn. */
  readonly calm: boolean
  readonly pennants: number
  readonly whole: number
  readonly half: number
}

export const knotsOf = (windMps: number): number => windMps / mpsPerKnot

/** What a wind is drawn with; 1 and 2 kn are a bare staff. */
export function barbCounts(windMps: number): BarbCounts {
  const knots = knotsOf(windMps)
  const fives = Math.round(knots / 5)
  return {
    calm: knots < 1,
    pennants: Math.floor(fives / 10),
    whole: Math.floor((fives % 10) / 2),
    half: fives % 2,
  }
}

export type BarbShape = {
  /** From the place outward, px; the place is the origin, y down, north up. */
  readonly staff: string
  /** Whole and half feathers. */
  readonly feathers: string
  /** Filled. */
  readonly pennants: string
}

export type BarbInput = {
  readonly counts: BarbCounts
  /** Where the wind comes from, rad clockwise from north. */
  readonly fromRad: number
  /** South of the equator low pressure lies on the other side. */
  readonly south: boolean
}

/** Lengths, px. */
export const staffLong = 24
const featherLong = 9
const gap = 4
const pennantWide = 5
/** Feathers lean outward by this share of how far they reach. */
const lean = 0.5

/** Paths of a barb; of a calm all of them are empty. */
export function barbShape({ counts, fromRad, south }: BarbInput): BarbShape {
  if (counts.calm) return { staff: '', feathers: '', pennants: '' }
  const [outX, outY] = [Math.sin(fromRad), -Math.cos(fromRad)]
  const side = south ? -1 : 1
  /** A point so far out on the staff and so far off it, on the side of the feathers. */
  const at = (out: number, off: number): string =>
    `${round(outX * out - side * outY * off)} ${round(outY * out + side * outX * off)}`
  const feather = (out: number, long: number): string => `M${at(out, 0)}L${at(out + lean * long, long)}`
  const pennants = Array.from({ length: counts.pennants }, (_, k) => staffLong - k * pennantWide)
  const below = staffLong - counts.pennants * pennantWide - (counts.pennants > 0 ? gap / 2 : 0)
  const whole = Array.from({ length: counts.whole }, (_, k) => below - k * gap)
  // Half a feather alone stands in from the end, or it would be taken for a whole one.
  const alone = counts.pennants + counts.whole === 0
  const half = counts.half === 0 ? [] : [alone ? staffLong - gap : below - counts.whole * gap]
  return {
    staff: `M0 0L${at(staffLong, 0)}`,
    feathers: [
      ...whole.map((out) => feather(out, featherLong)),
      ...half.map((out) => feather(out, featherLong / 2)),
    ].join(''),
    pennants: pennants
      .map((out) => `M${at(out, 0)}L${at(out - pennantWide / 2, featherLong)}L${at(out - pennantWide, 0)}Z`)
      .join(''),
  }
}

/** Hundredths of a px; adding 0 makes a negative zero plain. */
const round = (value: number): number => Math.round(value * 100) / 100 + 0
