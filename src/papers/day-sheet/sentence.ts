/** What the day sheet says first: the day with its hours, then what gets paint and when. */
import type { Kit } from '../kit.ts'
import { dayHours } from '../work-hours.ts'
import type { DayData } from './day-data.ts'

export function daySentence({ say }: Kit, { date, day }: DayData): string {
  if (!day || day.pieces.length === 0) return say.sentence('paper.dayFree', { dayDate: date })
  const start = Math.min(...day.pieces.map((piece) => piece.startMinute))
  const end = Math.max(...day.pieces.map((piece) => piece.endMinute))
  return say.sentence('paper.dayHeadline', {
    dayDate: date,
    from: say.time(start),
    until: say.time(end),
    work: say.hours(dayHours(day)),
    count: day.people.length,
  })
}

/** Zones by product, in the order they come. */
export function paintSentence({ say, plan }: Kit, { steps }: DayData): string {
  const zones = new Map<string, readonly string[]>()
  for (const { step, coat } of steps) {
    const layer = plan.buildUps.layers.find((one) => one.zone === step?.zone && one.layer === step?.layer)
    if (!coat || !step || !layer) continue
    const zone = [...plan.surfaces.zones, ...plan.marks.zones].find((one) => one.id === step.zone)
    zones.set(layer.name, [...(zones.get(layer.name) ?? []), zone?.name ?? layer.zone])
  }
  if (zones.size === 0) return ''
  return [...zones]
    .map(([layer, names]) => say.sentence('paper.paintOn', { layer, zones: [...new Set(names)].join(', ') }))
    .join(' ')
}
