// Lofted hulls against surfaces with a formula, tables of offsets with known areas, and printed rules of thumb.
import { describe, expect, it } from 'vitest'
import {
  areaBetween,
  type Hull,
  hullFromStations,
  hullOutline,
  lineAtHeight,
  marksAtHeight,
  rulesOfThumb,
  type Station,
  type StationPoint,
  stripeArea,
  wettedArea,
} from '#core/boat'
import { checkPublished, figure, type Given, published } from './published.ts'

const [intervals, steps] = [20, 10]
const shares = (count: number) => Array.from({ length: count + 1 }, (_, i) => i / count)
const radians = (degrees: number) => (degrees * Math.PI) / 180

/** The hull of 21 stations of 11 points on a surface. */
function lofted(placeOf: (t: number) => number, pointOf: (x: number, s: number) => StationPoint): Hull {
  return made(
    shares(intervals).map((t, i) => {
      const x = placeOf(t)
      return { id: `${i}`, x, points: shares(steps).map((s) => pointOf(x, s)) }
    }),
  )
}

function made(stations: readonly Station[]): Hull {
  const result = hullFromStations(stations)
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}

function parabolic(length: number): Hull {
  const [beam, depth] = [0.1 * length, 0.0625 * length]
  const halfBreadth = (x: number, z: number) =>
    (beam / 2) * (1 - ((2 * x) / length - 1) ** 2) * (1 - (z / depth) ** 2)
  return lofted(
    (t) => t * length,
    (x, s) => {
      const z = (s - 1) * depth
      return { y: halfBreadth(x, z), z }
    },
  )
}

/** Lower half of a body of revolution; stations at even angles when it closes at both ends. */
function halfRound(placeOf: (t: number) => number, radiusAt: (x: number) => number): Hull {
  return lofted(placeOf, (x, s) => {
    const [r, angle] = [radiusAt(x), (s * Math.PI) / 2]
    return { y: r * Math.sin(angle), z: -r * Math.cos(angle) }
  })
}

function halfSpheroid(a: number, b: number): Hull {
  return halfRound(
    (t) => a * (1 - Math.cos(Math.PI * t)),
    (x) => b * Math.sqrt(Math.max(1 - (x / a - 1) ** 2, 0)),
  )
}

function prism({ length, points }: { length: number; points: readonly StationPoint[] }): Hull {
  return made(shares(intervals).map((t, i) => ({ id: `${i}`, x: t * length, points })))
}

/** Keel at z = 0. */
function vBottom(given: Given, length: number): Hull {
  const half = figure(given, 'beamM') / 2
  const rise = half * Math.tan(radians(figure(given, 'deadriseDeg')))
  return prism({
    length,
    points: [
      { y: 0, z: 0 },
      { y: half, z: rise },
    ],
  })
}

const everything = { zLow: Number.NEGATIVE_INFINITY, zHigh: Number.POSITIVE_INFINITY }
const length = (given: Given) => figure(given, 'lengthM')
const stripe = (given: Given) =>
  stripeArea(parabolic(length(given)), { zLow: figure(given, 'zLowM'), zHigh: figure(given, 'zHighM') })

checkPublished('hull-surfaces', {
  'surface of the parabolic hull, both sides': (given) => wettedArea(parabolic(length(given))).total,
  'wetted surface over L(2T+B) of the parabolic hull': (given) =>
    wettedArea(parabolic(length(given))).total / (length(given) ** 2 * 0.225),
  'block coefficient of the parabolic hull': (given) =>
    parabolic(length(given)).particulars.displacedVolume / (length(given) ** 3 * 0.00625),
  'length of one waterline of the parabolic hull': (given) =>
    lineAtHeight(parabolic(length(given)), { z: figure(given, 'zM'), side: 'port' }).length,
  'midship girth of the parabolic hull, one side': (given) => {
    const marks = marksAtHeight(parabolic(length(given)), {
      z: 0,
      side: 'port',
      spacing: length(given) / 2,
      from: 'keel',
    })
    return marks[1]!.girth
  },
  'stripe of the parabolic hull, both sides': (given) => stripe(given).area,
  'the same stripe seen from the side': (given) => stripe(given).profileArea,
  'bottom of a V-bottom prism': (given) => areaBetween(vBottom(given, length(given)), everything).sides,
  'transom triangle of a V-bottom prism': (given) =>
    areaBetween(vBottom(given, length(given)), everything).ends / 2,
  'side strakes of even flare, both sides': (given) => {
    const out = figure(given, 'heightM') * Math.tan(radians(figure(given, 'flareDeg')))
    const points: readonly StationPoint[] = [
      { y: 0, z: -0.3 },
      { y: 1, z: 0, knuckle: 'chine' },
      { y: 1 + out, z: figure(given, 'heightM') },
    ]
    const hull = prism({ length: length(given), points })
    return areaBetween(hull, { zLow: 0, zHigh: Number.POSITIVE_INFINITY }).sides
  },
  'wetted bottom of a trimmed V-bottom prism': (given) => {
    const keel = figure(given, 'wettedKeelM')
    const fall = Math.tan(radians(figure(given, 'trimDeg')))
    const water = (x: number) => (keel - x) * fall
    return areaBetween(vBottom(given, 8), { zLow: Number.NEGATIVE_INFINITY, zHigh: water }).sides
  },
  'half prolate spheroid': (given) => wettedArea(halfSpheroid(figure(given, 'a'), figure(given, 'b'))).sides,
  'frustum of a cone': (given) => {
    const [large, small, axial] = [figure(given, 'largeM'), figure(given, 'smallM'), figure(given, 'axialM')]
    const half = halfRound(
      (t) => t * axial,
      (x) => large + ((small - large) * x) / axial,
    )
    return 2 * wettedArea(half).sides
  },
  'zone of a sphere': (given) => {
    const radius = figure(given, 'radiusM')
    return areaBetween(halfSpheroid(radius, radius), { zLow: -figure(given, 'heightM'), zHigh: 0 }).sides
  },
})

const guideBoat = { lengthOverall: 7.5, lengthWaterline: 6.7, beam: 2.5, draft: 0.45, freeboard: 0.9 }
const ruleOrder = [
  'topsides.twiceLengthPlusBeam',
  'deck.threeQuarters',
  'bottom.waterline085',
  'bottom.waterline100',
  'bottom.overall085',
]
const byRule = (given: Given, sizes: typeof guideBoat): number =>
  rulesOfThumb(sizes).find((rule) => rule.id === ruleOrder[figure(given, 'rule') - 1])?.area ?? Number.NaN

checkPublished('area-rules', {
  'area by rule of thumb': (given) => byRule(given, guideBoat),
  'bottom by rule of thumb': (given) => byRule(given, guideBoat),
  'difference of the rule from the true surface of the parabolic hull': (given) => {
    const sizes = { lengthOverall: 4, lengthWaterline: 4, beam: 0.4, draft: 0.25, freeboard: 0 }
    return 100 * (byRule(given, sizes) / wettedArea(parabolic(4)).total - 1)
  },
})

type OffsetTable = {
  readonly waterlines: readonly number[]
  readonly stations: readonly number[]
  readonly hulls: readonly {
    readonly lengthOverBeam: number
    readonly mostOnWaterline: readonly number[]
    readonly fractions: readonly (readonly number[])[]
  }[]
}

const offsets = published('series-60') as unknown as OffsetTable
const between = 121.92
const squareFoot = 0.09290304

function seriesStations(n: number): readonly Station[] {
  const { lengthOverBeam, mostOnWaterline, fractions } = offsets.hulls[n]!
  const beam = between / lengthOverBeam
  const depth = beam / 2.5
  return offsets.stations
    .map((number, i) => ({
      id: `${number}`,
      x: ((20 - number) / 20) * between,
      points: offsets.waterlines.map((waterline, j) => ({
        y: (fractions[i]![j]! * mostOnWaterline[j]! * beam) / 2,
        z: (waterline - 1) * depth,
      })),
    }))
    .reverse()
}

/** Area under a line of points, by trapezia: the drawn lines are fine enough. */
const under = (line: readonly (readonly [number, number])[]): number =>
  line.slice(1).reduce((sum, [x, y], k) => sum + ((x - line[k]![0]) * (y + line[k]![1])) / 2, 0)

const crossing = (
  [y0, z0]: readonly [number, number],
  [y1, z1]: readonly [number, number],
): readonly [number, number] => [y0 + ((y1 - y0) * z0) / (z0 - z1), 0]

checkPublished('series-60', {
  'prismatic coefficient': (given) => {
    const hull = made(seriesStations(figure(given, 'hull')))
    const midship = hullOutline(hull, []).bodyPlan.reduce((most, { line }) => {
      const wet = line.filter(([, z]) => z <= 0)
      const [below, above] = [wet.at(-1), line[wet.length]]
      // The section is drawn in pieces, one of which crosses the waterline.
      const cut = below && above ? [crossing(below, above)] : []
      return Math.max(most, under([...wet, ...cut].map(([y, z]) => [z, y])))
    }, 0)
    return hull.particulars.displacedVolume / (2 * midship * between)
  },
  'waterplane coefficient': (given) => {
    const n = figure(given, 'hull')
    const { waterlines } = hullOutline(made(seriesStations(n)), [0]).halfBreadthPlan
    const half = waterlines[0]!.lines.reduce((sum, line) => sum + Math.abs(under(line)), 0)
    return (half / (between * (between / offsets.hulls[n]!.lengthOverBeam))) * 2
  },
  'wetted surface at Lpp 400 ft': (given) =>
    wettedArea(made(seriesStations(figure(given, 'hull')))).sides / squareFoot,
  'block coefficient': (given) => {
    const n = figure(given, 'hull')
    const beam = between / offsets.hulls[n]!.lengthOverBeam
    return made(seriesStations(n)).particulars.displacedVolume / (between * beam * (beam / 2.5))
  },
})

describe('a table of offsets with the slip that stands in one transcription', () => {
  it('is refused, and the figure that reads 10 in place of 0 is pointed at', () => {
    const { lengthOverBeam, mostOnWaterline } = offsets.hulls[0]!
    const slip = (10 * mostOnWaterline[2]! * between) / lengthOverBeam / 2
    const stations = seriesStations(0).map((station) =>
      station.id === '0'
        ? { ...station, points: station.points.map((p, j) => (j === 2 ? { ...p, y: slip } : p)) }
        : station,
    )
    const result = hullFromStations(stations)
    const faults = result.ok ? [] : result.faults
    expect(faults.map(({ code, data }) => [code, data.station, data.point])).toEqual([
      ['boat.halfBreadthJumps', '0', 3],
    ])
    expect(faults[0]!.data.halfBreadthM).toBe(slip)
    expect(faults[0]!.data.expectedM).toBeLessThan(0.1)
  })
})
