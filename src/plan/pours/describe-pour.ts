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

/** A repair takes what fills it, whatever its area. */
export const coverOf = ({ runs }: Pour): 'area' | 'none' => (runs.length > 0 ? 'area' : 'none')

/** Whether zone and area alone do not say it: it is a part of a run, one of several, or laid into the wet. */
export const coverTells = ({ runs, intoWet }: Pour): boolean =>
  runs.length > 1 || intoWet || (runs[0] !== undefined && runs[0].of > 1)

/** How often the same cup is mixed, with which thinner, how it goes into the tray, and how often bead is stirred up again. */
export function describeHandling(pour: Pour): readonly StepText[] {
  const { times, everyMinutes, trayM3, stirMinutes, thinnerGrade, airC } = pour
  // A tray is filled by the same cup as the parts: in millilitres for everybody.
  const each = Math.round((trayM3[0] ?? 0) * 1e6)
  return [
    ...(times > 1
      ? [
          {
            code: 'pour.again',
            // Nobody mixes by the second.
            data: {
              times,
              timed: everyMinutes !== undefined,
              everyMinutes: Math.max(1, Math.round(everyMinutes ?? 1)),
            },
          },
        ]
      : []),
    ...(thinnerGrade === undefined ? [] : [{ code: 'pour.thinner', data: { grade: thinnerGrade, airC } }]),
    ...(trayM3.length > 0 ? [{ code: 'pour.tray', data: { count: trayM3.length, each } }] : []),
    ...(stirMinutes === undefined ? [] : [{ code: 'pour.stir', data: { stirMinutes } }]),
  ]
}
