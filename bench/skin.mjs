// How long the skins of twelve zones take over a year of hours, with sun and sky on each, as a ratio to a fixed loop of
// arithmetic and to the sun's positions of that year alone in the same run.
//
//     npm run build && node bench/skin.mjs [--gate] [--json] [--rounds N]

import {
  lightOn,
  shelterLight,
  skinTemperature,
  skyHeats,
  skyLight,
  solidSkin,
  sunPosition,
  usualAlbedo,
  usualFilm,
} from '#core/climate'
import { measurePair, table } from './harness.mjs'
import { facesEach, facesOf, hours, place, series } from './made-year.mjs'

/** Most calibration loops that a year may take: a loop is about 3 ms where the twelve zones take 36 ms. */
const most = 30
const zones = 12

const gate = process.argv.includes('--gate')
const roundsAt = process.argv.indexOf('--rounds')
const rounds = roundsAt === -1 ? 15 : Number(process.argv[roundsAt + 1])

const builds = solidSkin({ thicknessM: 0.008, behind: 'bare' })

function year() {
  const light = skyLight({ series, place })
  const skyHeatWm2 = skyHeats(series)
  let sum = 0
  for (let zone = 0; zone < zones; zone += 1) {
    const lightWm2 = lightOn(light, { faces: facesOf(zone), albedo: usualAlbedo, under: shelterLight.open })
    const skinC = skinTemperature({
      series,
      lightWm2,
      skyHeatWm2,
      skyShare: 0.5,
      absorptance: 0.25 + zone * 0.05,
      emittance: 0.9,
      film: usualFilm,
      build: builds,
      backC: series.airC,
    })
    for (const value of skinC) sum += value
  }
  if (!Number.isFinite(sum)) throw new Error('bench: a skin of the year is not known')
  return sum
}

const result = await measurePair(
  {
    name: 'year of skins',
    a: { label: `${zones} zones, ${facesEach} faces each`, run: year },
    b: {
      label: 'positions of the sun',
      run: () => {
        let sum = 0
        for (let hour = 0; hour < hours; hour += 1)
          sum += sunPosition({ ...place, atMs: series.startMs + (hour + 0.5) * 3_600_000 }).altitude
        return sum
      },
    },
  },
  { rounds },
)
console.log(process.argv.includes('--json') ? JSON.stringify(result, null, 2) : table([result]))
if (result.a.calibrations > most) {
  console.error(
    `bench: a year of skins took ${result.a.calibrations.toFixed(1)} loops, expected at most ${most}`,
  )
  if (gate) process.exitCode = 1
}
