/** What a shift's work comes to against breathing limits. */

/**
 * Time-weighted mean over a shift.
 * @param shift.spans concentration and hours; hours not listed are clean air. @param shift.shiftHours length of
 * the shift, h; 8 for the limits in use.
 * @returns the unit of the concentrations. Equation: sum of C t / shift. Source: 29 CFR 1910.1000(d)(1).
 * Ceilings and peaks are not means: hold them apart.
 */
export function timeWeightedMean(shift: {
  readonly spans: readonly { readonly concentration: number; readonly hours: number }[]
  readonly shiftHours: number
}): number {
  const dose = shift.spans.reduce((sum, span) => sum + span.concentration * span.hours, 0)
  return dose / shift.shiftHours
}

/**
 * Solvents breathed together.
 * @param parts concentration and limit of each, in the same unit.
 * @returns sum of the shares of the limits: over 1 the limit of the mixture is passed.
 * Source: 29 CFR 1910.1000(d)(2).
 */
export function mixtureExposure(
  parts: readonly { readonly concentration: number; readonly limit: number }[],
): number {
  return parts.reduce((sum, part) => sum + part.concentration / part.limit, 0)
}
