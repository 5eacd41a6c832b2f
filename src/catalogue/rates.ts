/** Work rates by id: a first guess for every kind of step, until the shop's own day sheets overwrite it. */
import type { RateFields } from './rate-fields.ts'
import { coatingRates } from './rates-coating.ts'
import { fittingRates, jobRates, maskingRates } from './rates-masking.ts'
import { surfaceRates } from './rates-surface.ts'
import type { Table } from './row.ts'

const all = { ...surfaceRates, ...coatingRates, ...maskingRates, ...fittingRates, ...jobRates }

export type RateId = keyof typeof all

export const rates: Table<RateFields, RateId> = all
