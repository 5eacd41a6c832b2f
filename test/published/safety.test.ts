import {
  airForExposure,
  airForLel,
  massConcentration,
  mixtureExposure,
  molarVolume,
  molarVolume25C,
  molarVolume70F,
  timeWeightedMean,
  vapourPerLiquid,
} from '#core/safety'
import { checkPublished, figure, type Given } from './published.ts'

const cubicFoot = 0.028316846592
const gallon = 0.003785411784
const pint = gallon / 8
const pound = 0.45359237
const litre = 0.001
const atmospherePa = 101_325

const percent = (given: Given, name: string) => figure(given, name) / 100
const molarMass = (given: Given) => figure(given, 'mw') / 1000

const vapour = (given: Given, volume: number) =>
  vapourPerLiquid({
    specificGravity: figure(given, 'sg'),
    molarMass: molarMass(given),
    molarVolume: volume,
  })

const air = (given: Given, vapourOfLiquid: number) =>
  airForLel({
    vapourPerLiquid: vapourOfLiquid,
    lelShare: percent(given, 'lelPct'),
    fraction: percent(given, 'fractionPct'),
  })

checkPublished('lel-dilution', {
  // Cubic feet by gallon in and out: the form holds in any pair of units.
  airFt3Gal: (given) => air(given, figure(given, 'vapourFt3Gal')),
  vapourFt3Gal: (given) => (vapour(given, molarVolume70F) * gallon) / cubicFoot,
  vapourLitres: (given) => vapour(given, molarVolume25C),
  airM3Litre: (given) => air(given, vapour(given, molarVolume25C)) * litre,
  tenthLelPpm: (given) => percent(given, 'lelPct') * 0.1 * 1e6,
})

const perHour = (given: Given) => figure(given, 'gallonsH') * gallon * figure(given, 'solventShare')
const massPerHour = (given: Given) => perHour(given) * 1000 * figure(given, 'sg')
const vapourAt = (given: Given) =>
  vapour(given, molarVolume({ airC: figure(given, 'kelvin') - 273.15, pressurePa: atmospherePa }))
const airM3Hour = (given: Given) =>
  airForExposure({
    liquidRate: perHour(given),
    vapourPerLiquid: vapourAt(given),
    limitShare: figure(given, 'ppm') * 1e-6,
    mixing: figure(given, 'mixing'),
  })

checkPublished('exposure-dilution', {
  flowCfm: (given) =>
    airForExposure({
      liquidRate: (figure(given, 'pints') * pint * 60) / figure(given, 'minutes'),
      vapourPerLiquid: vapour(given, molarVolume70F),
      limitShare: figure(given, 'ppm') * 1e-6,
      mixing: figure(given, 'mixing'),
    }) /
    cubicFoot /
    60,
  solventLbH: (given) => massPerHour(given) / pound,
  solventGMin: (given) => (massPerHour(given) * 1000) / 60,
  vapourLMin: (given) => (perHour(given) * vapourAt(given)) / litre / 60,
  airLMin: (given) => airM3Hour(given) / litre / 60,
  airCfm: (given) => airM3Hour(given) / cubicFoot / 60,
})

const milligrams = (given: Given, share: number) =>
  1e6 * massConcentration({ share, molarMass: molarMass(given), molarVolume: molarVolume25C })
const numbered = [0, 1, 2]

checkPublished('exposure', {
  mgPerPpm: (given) => milligrams(given, 1e-6),
  limitMg: (given) => milligrams(given, figure(given, 'ppm') * 1e-6),
  shiftMean: (given) =>
    timeWeightedMean({
      spans: numbered.map((index) => ({
        concentration: figure(given, `c${index}`),
        hours: figure(given, `h${index}`),
      })),
      shiftHours: 8,
    }),
  mixture: (given) =>
    mixtureExposure(
      numbered.map((index) => ({
        concentration: figure(given, `c${index}`),
        limit: figure(given, `l${index}`),
      })),
    ),
})
