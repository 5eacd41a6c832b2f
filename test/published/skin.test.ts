import { clarkAllenEmittance, dewPoint, filmAt, skinSteady, skyHeat } from '#core/climate'
import { checkPublished, figure, type Given } from './published.ts'

const kelvin = 273.15
const sigma = 5.670374419e-8
const blackBody = (temperatureC: number) => sigma * (temperatureC + kelvin) ** 4

const skin = (given: Given, figures: { readonly heatWm2: number; readonly filmWm2K: number }) =>
  skinSteady({
    lightWm2: figure(given, 'lightWm2'),
    airC: figure(given, 'airC'),
    absorptance: figure(given, 'absorptance'),
    emittance: figure(given, 'emittance'),
    backWm2K: 0,
    backC: 0,
    ...figures,
  })

/** What is not sky is at the temperature of the air. */
const underSky = (given: Given) => {
  const share = figure(given, 'skyShare')
  const heatWm2 = share * blackBody(figure(given, 'skyC')) + (1 - share) * blackBody(figure(given, 'airC'))
  return skin(given, { heatWm2, filmWm2K: figure(given, 'filmWm2K') })
}

/** The film of the reference has no floor. */
const bareFilm = { stillWm2K: 2.8, perMps: 3, leastWm2K: 0 }

const air = (given: Given) => ({
  airC: figure(given, 'airC'),
  dewC:
    'dewC' in given
      ? figure(given, 'dewC')
      : dewPoint({ airC: figure(given, 'airC'), humidityShare: figure(given, 'humidityShare') }),
  cloudShare: figure(given, 'cloudShare'),
})

checkPublished('skin', {
  skinC: underSky,
  skinK: (given) => underSky(given) + kelvin,
  panelC: (given) =>
    skin(given, {
      heatWm2: figure(given, 'skyHeatWm2'),
      filmWm2K: filmAt(bareFilm, figure(given, 'windMps')),
    }),
  nightDropK: (given) => underSky(given) - figure(given, 'airC'),
  skyEmittance: (given) => clarkAllenEmittance(air(given)),
  skyHeatWm2: (given) => skyHeat(air(given)),
  skyC: (given) => (skyHeat(air(given)) / sigma) ** 0.25 - kelvin,
})
