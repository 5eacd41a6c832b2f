/** Age and maturity under a changing temperature, where a rate law is known instead of a table. */

/** J/(mol K), as the published equivalent-age tables round it. */
const gasConstant = 8.314

const kelvin = 273.15

/** A stretch of time at one temperature. */
export type WarmSpan = { readonly airC: number; readonly hours: number }

/**
 * How fast a cure runs against its rate at the reference temperature, by Arrhenius.
 * @param rate.activationEnergy J/mol (two-part polyurethanes 29 000..60 000, epoxy-amines 55 000..70 000).
 * @param rate.referenceC temperature of the known time, °C. @param rate.airC °C.
 * @returns factor, 1 at the reference. Equation: exp(-E/R (1/T - 1/Tr)), kelvin. Source: ASTM C1074.
 * It says nothing about a cure that stalls in the cold: a sheet's own table knows better.
 */
export function ageFactor(rate: {
  readonly activationEnergy: number
  readonly referenceC: number
  readonly airC: number
}): number {
  const inverse = 1 / (rate.airC + kelvin) - 1 / (rate.referenceC + kelvin)
  return Math.exp((-rate.activationEnergy / gasConstant) * inverse)
}

/**
 * Hours at the reference temperature that some hours at other temperatures are worth.
 * @returns h. Equation: sum of `ageFactor` × hours. Source: ASTM C1074.
 */
export function equivalentAge(age: {
  readonly activationEnergy: number
  readonly referenceC: number
  readonly spans: readonly WarmSpan[]
}): number {
  return age.spans.reduce((sum, span) => sum + span.hours * ageFactor({ ...age, airC: span.airC }), 0)
}

/**
 * The same by a fixed factor per 10 °C, 2 in the shop rule.
 * @returns h at the reference temperature. Equation: sum of factor^((t - tr)/10) × hours.
 */
export function equivalentAgeByFactor(age: {
  readonly factorPer10K: number
  readonly referenceC: number
  readonly spans: readonly WarmSpan[]
}): number {
  return age.spans.reduce(
    (sum, span) => sum + span.hours * age.factorPer10K ** ((span.airC - age.referenceC) / 10),
    0,
  )
}

/**
 * Nurse-Saul maturity: degrees over a datum, times hours; spans at or below the datum count nothing.
 * @param age.datumC °C (0 and -10 are both in use). @returns °C h.
 * Equation: sum of max(t - t0, 0) × hours. Source: ASTM C1074.
 */
export function maturity(age: { readonly datumC: number; readonly spans: readonly WarmSpan[] }): number {
  return age.spans.reduce((sum, span) => sum + Math.max(span.airC - age.datumC, 0) * span.hours, 0)
}
