/** What a pour covers, and what is done with it, as codes and their data: `words/` makes the sentences. */
import type { StepText } from '../describe-step.ts'
import type { Pour } from '../types.ts'

/** Of one run, or how many of them; nothing where the runs are not known any more. */
export function describeCover({ runs, areaM2, intoWet }: Pour): StepText | undefined {
  const first = runs[0]
  if (first === undefined) return undefined
  const { nr, of, where, runM2 } = first
  const part = runs.length === 1 && first.areaM2 < runM2 - 1e-6
  return {
    code: 'pour.covers',
    data: {
      count: runs.length,
      where,
      nr,
      of,
      areaM2,
      runM2,
      part: part ? 'yes' : 'no',
      wet: intoWet ? 'yes' : 'no',
    },
  }
}

/** How it goes into the tray, and how often bead is stirred up again. */
export function describeHandling({ trayM3, stirMinutes }: Pour): readonly StepText[] {
  const trayMl = Math.round((trayM3[0] ?? 0) * 1e6)
  return [
    ...(trayM3.length > 0 ? [{ code: 'pour.tray', data: { count: trayM3.length, trayMl } }] : []),
    ...(stirMinutes === undefined ? [] : [{ code: 'pour.stir', data: { stirMinutes } }]),
  ]
}
