/** Files from outside as plain data: bounded, and every problem with its place. */
export type { HourlySeries } from '#core/climate'
export type { Problem, ProblemData } from './problem.ts'
export { problemsTold } from './problem.ts'
export { seriesHash } from './series-hash.ts'
export type { WeatherRead } from './weather-csv.ts'
export { mostWeatherBytes, readWeatherCsv } from './weather-csv.ts'
export { writeWeatherCsv } from './write-weather-csv.ts'
