import { type Hull, hullFromStations, type Station } from '#core/boat'
import { bootStripe, panel } from '#core/marking'
import { checkPublished, figure } from './published.ts'

checkPublished('non-skid-panel', {
  'panel left of its field': (given) => {
    const { panel: got } = panel({
      lengthM: figure(given, 'lengthMm') / 1000,
      widthM: figure(given, 'widthMm') / 1000,
      borderM: figure(given, 'borderMm') / 1000,
      cornerRadiusM: 0,
      count: 1,
    })
    return (got?.leftShare ?? Number.NaN) * 100
  },
})

checkPublished('boot-stripe', {
  'stripe area, both sides, of the parabolic hull 4 x 0.4 x 0.25 m': (given) => {
    const low = figure(given, 'zLowM')
    const edgeM = low > keelM ? usualEdgeM : 0
    const stripe = { edgeM, widthM: figure(given, 'zHighM') - low }
    return levelStripe(parabolicHull(low, edgeM), stripe).areaM2
  },
  'length of one edge of the parabolic hull 4 x 0.4 x 0.25 m': (given) =>
    levelStripe(parabolicHull(figure(given, 'zM'), usualEdgeM), { edgeM: usualEdgeM, widthM: 0.01 })
      .lowerLengthM,
  'stripe width over height on a side of even flare': (given) =>
    levelStripe(flaredHull(figure(given, 'flareDeg')), { edgeM: usualEdgeM, widthM: 0.1 }).rows[1]!.girthM /
    0.1,
})

/** How far above the water the lower edge is put; on it where the edge is the keel. */
const usualEdgeM = 0.04
const keelM = -0.25

type Level = { readonly edgeM: number; readonly widthM: number }

function levelStripe(hull: Hull, { edgeM, widthM }: Level) {
  const { table, notes } = bootStripe(hull, { heightStemM: edgeM, widthStemM: widthM, spacingM: 0.5 })
  if (!table) throw new Error(JSON.stringify(notes))
  return table
}

/** The hull carried on above its design waterline, floating so that `z` is where the lower edge goes. */
function parabolicHull(z: number, edgeM: number): Hull {
  const [length, beam, depth] = [4, 0.4, -keelM]
  const heights = Array.from({ length: 14 }, (_, i) => -depth + (i * 0.3) / 13)
  const station = (x: number, i: number): Station => {
    const half = (beam / 2) * (1 - ((2 * x) / length) ** 2)
    return {
      id: String(i),
      x: x + length / 2,
      points: heights.map((at) => ({ y: half * (1 - (at / depth) ** 2), z: at - z + edgeM })),
    }
  }
  return made(Array.from({ length: 21 }, (_, i) => station(-2 + i * 0.2, i)))
}

function flaredHull(flareDeg: number): Hull {
  const out = Math.tan((flareDeg * Math.PI) / 180)
  const points = [
    { y: 0, z: -0.4 },
    { y: 1, z: -0.2, knuckle: 'chine' as const },
    { y: 1 + 0.9 * out, z: 0.7 },
  ]
  return made([0, 2, 4].map((x, i) => ({ id: String(i), x, points })))
}

function made(stations: readonly Station[]): Hull {
  const result = hullFromStations(stations)
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}
