// A made year of hours at one place, and faces of zones that each look their own way: what the benches of the sky work on.

const degree = Math.PI / 180
export const place = { latitude: 44.5 * degree, longitude: -73.2 * degree }
export const hours = 8760
export const facesEach = 5

const column = (/** @type {(hour: number) => number} */ at) =>
  Float64Array.from({ length: hours }, (_, hour) => at(hour))
const daily = (/** @type {number} */ hour) => -Math.cos((2 * Math.PI * hour) / 24)

/** @type {import('#core/climate').HourlySeries} */
export const series = {
  kind: 'hourlySeries',
  startMs: Date.UTC(2027, 0, 1, 5),
  hours,
  airC: column((hour) => 12 - 12 * Math.cos((2 * Math.PI * hour) / hours) + 5 * daily(hour)),
  humidityShare: column((hour) => 0.65 - 0.2 * daily(hour)),
  windMps: column((hour) => 3 + 2.5 * Math.sin(hour / 7)),
  cloudShare: column((hour) => 0.5 + 0.5 * Math.sin(hour / 9)),
  rainMm: column((hour) => (Math.sin(hour / 31) > 0.97 ? 0.4 : 0)),
  rainChanceShare: column((hour) => 0.3 + 0.3 * Math.sin(hour / 31)),
  gaps: [],
  source: 'made',
  licence: 'made',
}

export const facesOf = (/** @type {number} */ zone) =>
  Array.from({ length: facesEach }, (_, n) => ({
    bearing: zone * 0.5 + n * 0.2,
    tilt: 1.2 + n * 0.1,
    share: 1 / facesEach,
  }))
