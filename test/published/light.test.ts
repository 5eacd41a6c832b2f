import {
  beamOn,
  clearSkySun,
  cosIncidence,
  erbsDiffuseShare,
  extraterrestrialSun,
  groundLight,
  hayDaviesSky,
  isotropicSky,
  normalOf,
  partLight,
  towardsSun,
} from '#core/climate'
import { checkPublished, figure, type Given } from './published.ts'

const degree = Math.PI / 180
const rad = (given: Given, name: string) => figure(given, name) * degree

const level = (given: Given) => ({
  beamWm2: figure(given, 'beamWm2'),
  diffuseWm2: figure(given, 'diffuseWm2'),
  globalWm2: figure(given, 'globalWm2'),
  extraterrestrialWm2: figure(given, 'extraterrestrialWm2'),
  sunUp: Math.cos(rad(given, 'zenithDeg')),
})

const slope = (given: Given) => ({
  cosTilt: Math.cos(rad(given, 'tiltDeg')),
  cosIncidence: cosIncidence(
    normalOf({ bearing: rad(given, 'bearingDeg'), tilt: rad(given, 'tiltDeg') }),
    towardsSun({
      altitude: Math.PI / 2 - rad(given, 'zenithDeg'),
      azimuth: rad(given, 'sunAzimuthDeg'),
    }),
  ),
})

const ground = (given: Given) =>
  groundLight(
    { globalWm2: figure(given, 'globalWm2'), albedo: figure(given, 'albedoShare') },
    { cosTilt: Math.cos(rad(given, 'tiltDeg')) },
  )

checkPublished('tilted-surfaces', {
  isotropicSky: (given) =>
    isotropicSky(
      { diffuseWm2: figure(given, 'diffuseWm2') },
      { cosTilt: Math.cos(rad(given, 'tiltDeg')), cosIncidence: 0 },
    ),
  hayDaviesSky: (given) => hayDaviesSky(level(given), slope(given)),
  ground,
  isotropicTotal: (given) =>
    beamOn(level(given), slope(given)) + isotropicSky(level(given), slope(given)) + ground(given),
  hayDaviesTotal: (given) =>
    beamOn(level(given), slope(given)) + hayDaviesSky(level(given), slope(given)) + ground(given),
})

const above = (given: Given) => extraterrestrialSun(1000 * figure(given, 'atUnixS'))
checkPublished('light-parted', {
  extraterrestrialWm2: above,
  clearSkyWm2: (given) => clearSkySun(rad(given, 'altitudeDeg')),
  diffuseShare: (given) => erbsDiffuseShare(figure(given, 'clearness')),
  beamParted: (given) =>
    partLight({
      globalWm2: figure(given, 'globalWm2'),
      sunUp: Math.cos(rad(given, 'zenithDeg')),
      extraterrestrialWm2: above(given),
    }).beamWm2,
})
