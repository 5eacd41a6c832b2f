import {
  catalyst,
  dryFilm,
  dryFilmFromMass,
  mix,
  practicalSpread,
  solidsAfterThinning,
  spreadFromCoverage,
  spreadingRate,
  wetFilm,
  wetFilmFromSpread,
} from '#core/coating'
import { checkPublished, figure, type Given } from './published.ts'

const mil = 25.4e-6
const micrometre = 1e-6
const squareFoot = 0.09290304
const gallon = 0.003785411784
const pound = 0.45359237
const millilitre = 1e-6

const share = (given: Given, name: string) => (name in given ? figure(given, name) / 100 : 0)
const solids = (given: Given) => share(given, 'solidsPct')
const toUs = (spread: number) => (spread * gallon) / squareFoot
const toMetric = (spread: number) => spread / 1000

const spreadUs = (given: Given) =>
  toUs(spreadingRate({ volumeSolids: solids(given), dryFilm: figure(given, 'dryFilmMil') * mil }))

const thinned = (given: Given) =>
  solidsAfterThinning({ volumeSolids: solids(given), thinnerShare: share(given, 'thinnerPct') })

checkPublished('film-and-spread', {
  coverageConstant: spreadUs,
  spreadUs,
  spreadMetric: (given) =>
    toMetric(
      spreadingRate({ volumeSolids: solids(given), dryFilm: figure(given, 'dryFilmUm') * micrometre }),
    ),
  spreadFromWetUs: (given) =>
    toUs(spreadingRate({ volumeSolids: 1, dryFilm: figure(given, 'wetFilmMil') * mil })),
  solidsThinnedPct: (given) => 100 * thinned(given),
  spreadThinned: (given) => {
    const paint = { volumeSolids: thinned(given), dryFilm: figure(given, 'dryFilmUm') * micrometre }
    return toMetric(practicalSpread({ theoretical: spreadingRate(paint), loss: share(given, 'lossPct') }))
  },
  practicalUs: (given) =>
    practicalSpread({ theoretical: figure(given, 'theoretical'), loss: share(given, 'lossPct') }),
  wetFilmUm: (given) =>
    wetFilm({
      dryFilm: figure(given, 'dryFilmUm') * micrometre,
      volumeSolids: solids(given),
      thinnerShare: share(given, 'thinnerPct'),
    }) / micrometre,
  dryFilmMil: (given) =>
    dryFilm({
      wetFilm: figure(given, 'wetFilmMil') * mil,
      volumeSolids: solids(given),
      thinnerShare: share(given, 'thinnerPct'),
    }) / mil,
  dryFilmFromMassMil: (given) =>
    dryFilmFromMass({
      mass: 'massG' in given ? figure(given, 'massG') / 1000 : figure(given, 'massLb') * pound,
      density: (figure(given, 'densityLbGal') * pound) / gallon,
      volumeSolids: solids(given),
      area: figure(given, 'areaFt2') * squareFoot,
    }) / mil,
})

const label = (given: Given) =>
  spreadFromCoverage({
    area: figure(given, 'areaFt2') * squareFoot,
    volume: figure(given, 'canMl') * millilitre,
  })

checkPublished('coverage-records', {
  spread: (given) => toMetric(label(given)),
  wetFilmUm: (given) =>
    wetFilmFromSpread({ spread: label(given), thinnerShare: share(given, 'thinnerPct') }) / micrometre,
})

const pour = (given: Given) => {
  const rest = {
    ratio: { base: figure(given, 'a'), hardener: figure(given, 'b') },
    thinnerShare: share(given, 'thinnerPct'),
    additiveShare: share(given, 'additivePct'),
  }
  return 'readyMl' in given
    ? mix({ ...rest, readyVolume: figure(given, 'readyMl') * millilitre })
    : mix({ ...rest, partsVolume: figure(given, 'partsMl') * millilitre })
}

checkPublished('mixing', {
  baseMl: (given) => pour(given).baseVolume / millilitre,
  hardenerMl: (given) => pour(given).hardenerVolume / millilitre,
  thinnerMl: (given) => pour(given).thinnerVolume / millilitre,
  additiveMl: (given) => pour(given).additiveVolume / millilitre,
  readyMl: (given) => pour(given).readyVolume / millilitre,
  catalystMl: (given) =>
    catalyst({
      resinMass: figure(given, 'resinKg'),
      share: share(given, 'catalystPct'),
      density: figure(given, 'densityKgL') * 1000,
    }).volume / millilitre,
})
