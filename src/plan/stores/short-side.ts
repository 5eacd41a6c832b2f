/** What it costs to run short in the middle of a side: the work of its coat once more. */
import type { Steps } from '../types.ts'

/** Person-hours to sand the largest zone of a product again and coat it again; undefined where no coat is planned. */
export function shortSide(
  sheet: string,
  { steps }: Steps,
): { readonly zone: string; readonly hours: number } | undefined {
  const coats = steps.filter(
    (step) => step.sheet === sheet && step.kind === 'coat' && step.zone !== undefined,
  )
  const largest = coats.reduce<(typeof coats)[number] | undefined>(
    (most, step) => ((step.areaM2 ?? 0) > (most?.areaM2 ?? 0) ? step : most),
    undefined,
  )
  if (largest?.zone === undefined) return undefined
  const sandings = steps.filter(
    (step) => step.zone === largest.zone && step.layer === largest.layer && step.kind.startsWith('sand'),
  )
  const handling = (largest.setUpMinutes + largest.cleanUpMinutes) / 60
  return {
    zone: largest.zone,
    hours: largest.hours + handling + Math.max(0, ...sandings.map(({ hours }) => hours)),
  }
}
