/** What would make an hour, as codes and their data: `words/` makes the sentences. */
import type { StepText } from './describe-step.ts'
import type { MadeHour } from './make-hour.ts'

/** In the order of how little it asks for. Whoever shows heat shows `heatCaution` too, once for all that is shown. */
export function describeMadeHour({ under, heat, grade }: MadeHour, timeZone: string): readonly StepText[] {
  const at = (minute: number) => ({ fromAtMs: minute * 60_000, timeZone })
  const lines: readonly StepText[] = [
    ...under.map(({ shelter, minute }) => ({ code: 'make.under', data: { shelter, ...at(minute) } })),
    ...(grade
      ? [
          {
            code: 'make.grade',
            data: {
              grade: grade.kind,
              neededC: grade.neededC,
              // Sheets tell whole degrees: the next one that takes in what the hour has.
              hadC: grade.kind === 'colder' ? Math.floor(grade.hadC) : Math.ceil(grade.hadC),
              ...at(grade.minute),
            },
          },
        ]
      : []),
    ...(heat ? [heatLine(heat, at(heat.minute))] : []),
  ]
  return lines.length > 0 ? lines : [{ code: 'make.nothing', data: {} }]
}

/** What holds for every heater. */
export const heatCaution: StepText = { code: 'make.heatCaution', data: {} }

function heatLine({ riseK, tent }: NonNullable<MadeHour['heat']>, at: StepText['data']): StepText {
  if (!tent) return { code: 'make.rise', data: { riseK, ...at } }
  const { lengthM, widthM, heightM, powerKw } = tent
  // Rounded up to what a plate on a heater tells.
  const plateKw = Math.ceil(10 * powerKw) / 10
  return { code: 'make.heat', data: { riseK, lengthM, widthM, heightM, powerKw: plateKw, ...at } }
}
