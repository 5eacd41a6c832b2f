/** Weather from outside: the only room that talks to other computers. */
export { type AnswerCache, type KeptAnswer, memoryCache } from './answer-cache.ts'
export type { FeedFault } from './ask.ts'
export { type FeedOptions, type Forecast, fetchForecast } from './fetch-forecast.ts'
export { type Origins, type ServiceName, type Spot, serviceNames } from './service.ts'
