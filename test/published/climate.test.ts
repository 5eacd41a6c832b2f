import {
  absoluteHumidity,
  dewLimitFiveFahrenheitK,
  dewMargin,
  dewPoint,
  frostPoint,
  humidityFromWetBulb,
  mixingRatio,
  relativeHumidity,
  saturationVapourPressure,
  sunPosition,
  sunTimes,
  wetBulb,
} from '#core/climate'
import { checkPublished, figure, type Given } from './published.ts'

const degree = Math.PI / 180
const standardPa = 101_325

const toC = (f: number) => (f - 32) / 1.8
const toF = (c: number) => c * 1.8 + 32

const air = (given: Given) => ({
  airC: 'airF' in given ? toC(figure(given, 'airF')) : figure(given, 'airC'),
  humidityShare: figure(given, 'humidityPct') / 100,
})

const wetBulbShare = (given: Given) =>
  humidityFromWetBulb({
    airC: figure(given, 'airC'),
    wetBulbC: figure(given, 'wetBulbC'),
    pressurePa: standardPa,
  })

const dewAnswers = {
  dewPoint: (given: Given) => dewPoint(air(given)),
  frostPoint: (given: Given) => frostPoint(air(given)),
  dewPointF: (given: Given) => toF(dewPoint(air(given))),
  leastSurfaceF: (given: Given) => toF(dewPoint(air(given)) + dewLimitFiveFahrenheitK),
  waterContent: (given: Given) => 1000 * absoluteHumidity({ airC: figure(given, 'airC'), humidityShare: 1 }),
  saturationPa: (given: Given) => saturationVapourPressure(figure(given, 'airC')),
  humidityPct: (given: Given) =>
    100 * relativeHumidity({ airC: figure(given, 'airC'), dewC: figure(given, 'dewC') }),
  humidityFromWetBulbPct: (given: Given) => 100 * wetBulbShare(given),
  marginC: (given: Given) => dewMargin({ surfaceC: figure(given, 'surfaceC'), dewC: dewPoint(air(given)) }),
  marginFromWetBulbC: (given: Given) =>
    dewMargin({
      surfaceC: figure(given, 'surfaceC'),
      dewC: dewPoint({ airC: figure(given, 'airC'), humidityShare: wetBulbShare(given) }),
    }),
}

const place = (given: Given) => ({
  latitude: figure(given, 'latitudeDeg') * degree,
  longitude: figure(given, 'longitudeDeg') * degree,
})
const sun = (given: Given) => sunPosition({ ...place(given), atMs: 1000 * figure(given, 'unixS') })
const times = (given: Given) => sunTimes({ ...place(given), noonMs: 1000 * figure(given, 'noonUnixS') })

checkPublished('dew-point-trade-table', dewAnswers)
checkPublished('dew-point-wmo', dewAnswers)
checkPublished('dew-decisions', dewAnswers)
checkPublished('dew-point-grid', dewAnswers)
const moist = (given: Given) => ({ ...air(given), pressurePa: standardPa })
checkPublished('wet-bulb', {
  wetBulb: (given) => wetBulb(moist(given)),
  mixingRatio: (given) => mixingRatio(moist(given)),
})
checkPublished('sun-positions', {
  zenithDeg: (given) => 90 - sun(given).altitude / degree,
  azimuthDeg: (given) => sun(given).azimuth / degree,
})
checkPublished('sun-times', {
  riseS: (given) => (times(given).riseMs ?? Number.NaN) / 1000,
  noonS: (given) => times(given).noonMs / 1000,
  setS: (given) => (times(given).setMs ?? Number.NaN) / 1000,
})
