// How long the verdicts of a year of hours take for twelve zones and six products, each zone with a skin of its own and
// each product with its limits and its clock, as a ratio to a fixed loop of arithmetic and to the skins alone in the
// same run.
//
//     npm run build && node bench/hours.mjs [--gate] [--json] [--rounds N]

import {
  airAhead,
  airUnder,
  beamOnFaces,
  commonLimits,
  daylight,
  hoursForSheet,
  lightLimits,
  lightOn,
  placeAhead,
  shelterLight,
  skinLimits,
  skinTemperature,
  skyHeats,
  skyLight,
  solidSkin,
  usualAlbedo,
  usualFilm,
  usualStopHours,
} from '#core/climate'
import { cureTable, hoursToRun } from '#core/cure'
import { measurePair, table } from './harness.mjs'
import { facesOf, place, series } from './made-year.mjs'

/**
 * Most calibration loops that the year may take: it takes some 130, or 10 times the skins alone; up to twice as many
 * where other work shares the machine.
 */
const most = 240
const zones = 12
const products = 6
const mostHoursAfter = 48

const gate = process.argv.includes('--gate')
const roundsAt = process.argv.indexOf('--rounds')
const rounds = roundsAt === -1 ? 9 : Number(process.argv[roundsAt + 1])

const build = solidSkin({ thicknessM: 0.008, behind: 'bare' })

function skins() {
  const light = skyLight({ series, place })
  const skyHeatWm2 = skyHeats(series)
  return Array.from({ length: zones }, (_, zone) => ({
    surfaceC: skinTemperature({
      series,
      lightWm2: lightOn(light, { faces: facesOf(zone), albedo: usualAlbedo, under: shelterLight.open }),
      skyHeatWm2,
      skyShare: 0.5,
      absorptance: 0.3,
      emittance: 0.9,
      film: usualFilm,
      build,
      backC: series.airC,
    }),
    beamWm2: beamOnFaces(light, facesOf(zone)),
  }))
}

function year() {
  const inside = airUnder({ series, shelter: 'open' })
  const counts = { go: 0, risky: 0, no: 0, unknown: 0 }
  const { darkHours, toSunsetHours } = daylight({ series, place })
  const light = lightLimits({
    hours: series.hours,
    darkHours,
    pastStopHours: toSunsetHours.map((left) => usualStopHours - left),
    eveningEffect: 'risky',
  })
  const air = airAhead({ series: inside, limits: { ...commonLimits, openToSky: true } })
  for (const { surfaceC, beamWm2 } of skins()) {
    const ahead = placeAhead(air, { surfaceC, beamWm2, light })
    for (let product = 0; product < products; product += 1) {
      const clock = cureTable([
        { airC: 10, hours: 10 + product },
        { airC: 20, hours: 4 + product },
        { airC: 30, hours: 2 + product },
      ])
      const hoursAfter = hoursToRun({ table: clock, airC: inside.airC, most: mostHoursAfter })
      const airC = { airLeastC: 5 + product, airMostC: 30 + product }
      const sheet = {
        ...airC,
        ...skinLimits(airC),
        humidityMost: 0.75 + product / 50,
        hoursAfter,
      }
      for (const { verdict } of hoursForSheet(ahead, sheet)) counts[verdict] += 1
    }
  }
  // A year in which every hour has the same verdict would measure little.
  if (counts.go === 0 || counts.risky === 0 || counts.no === 0)
    throw new Error(`bench: verdicts of the year are ${JSON.stringify(counts)}`)
  return counts.go
}

const result = await measurePair(
  {
    name: 'year of hours',
    a: { label: `${zones} zones, ${products} products`, run: year },
    b: { label: 'skins alone', run: () => skins().length },
  },
  { rounds },
)
console.log(process.argv.includes('--json') ? JSON.stringify(result, null, 2) : table([result]))
if (result.a.calibrations > most) {
  console.error(
    `bench: a year of hours took ${result.a.calibrations.toFixed(1)} loops, expected at most ${most}`,
  )
  if (gate) process.exitCode = 1
}
