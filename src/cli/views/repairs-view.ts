/** Findings and hardware with the hours given for them. */
import type { Plan } from '#plan'
import type { Words } from '#words'
import { allZones } from './boat-view.ts'
import { section, table } from './table.ts'

export function repairsLines(plan: Plan, words: Words): readonly string[] {
  const zoneName = (id: string) => allZones(plan).find((zone) => zone.id === id)?.name ?? id
  const repairs = plan.repairs.repairs.map((repair) => [
    repair.name,
    zoneName(repair.zone),
    words.figure('hours', repair.hours),
    repair.volumeM3 > 0 ? words.figure('volumeM3', repair.volumeM3) : '',
  ])
  const fittings = plan.repairs.fittings.map((fitting) => [
    `${fitting.count} × ${fitting.name}`,
    zoneName(fitting.zone),
    words.label(`fittingPlan.${fitting.leaveAlone ? 'leaveAlone' : fitting.plan}`),
    fitting.plan === 'leave' || fitting.leaveAlone
      ? ''
      : words.figure('hours', fitting.count * fitting.hoursOff.value),
    fitting.plan === 'refit' && !fitting.leaveAlone
      ? words.figure('hours', fitting.count * fitting.hoursOn.value)
      : '',
    fitting.bag,
  ])
  return [
    ...section(words.label('heading.repairs'), table(repairs, ['left', 'left', 'right', 'right'])),
    ...section(
      words.label('heading.fittings'),
      table(fittings, ['left', 'left', 'left', 'right', 'right', 'left']),
    ),
  ]
}

export const repairsJson = (plan: Plan) => ({
  repairs: plan.repairs.repairs.map(({ volumeM3, ...repair }) => ({ ...repair, volumeL: volumeM3 * 1000 })),
  fittings: plan.repairs.fittings.map(({ hoursOff, hoursOn, ...fitting }) => ({
    ...fitting,
    hoursOff: hoursOff.value,
    hoursOn: hoursOn.value,
  })),
})
