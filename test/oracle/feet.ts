/** Where feet are: which zones are worked from which floors, and when a coated floor bears them, from the raw job. */
import type { WorkStep } from '#plan'
import { clockRows } from './coats.ts'
import type { Spell } from './crew.ts'
import { clockFullMinute } from './cure-clock.ts'
import { type PlacedStep, type Subject, toSlots } from './plans.ts'
import { itemsOf } from './raw-sample.ts'

const soleFor = ['cockpit side', 'coaming', 'console', 'gunwale', 'hardtop', 'outboard well']
const sideDeckFor = ['cabin side', 'cabin top', 'hatch']
const longestMinutes = 7 * 24 * 60

const zoneOf = (subject: Subject, id: string | undefined) =>
  id === undefined ? undefined : itemsOf(subject.raw.work, 'zones')[id]

/** Kind of floor that somebody who does this step stands on. */
function floorUnder(subject: Subject, { zone: id }: Pick<WorkStep, 'zone'>): string | undefined {
  const zone = zoneOf(subject, id)
  if (!zone || zone.shelter === 'indoors') return undefined
  if (soleFor.includes(zone.kind!)) return 'cockpit sole'
  return sideDeckFor.includes(zone.kind!) ? 'side deck' : undefined
}

/** Kinds of floor that this step leaves wet. */
function floorsWetted(subject: Subject, step: WorkStep): readonly string[] {
  const zone = zoneOf(subject, step.zone)
  if (!zone || zone.shelter === 'indoors' || !['coat', 'fill'].includes(step.kind)) return []
  if (zone.kind === 'non-skid') return ['cockpit sole', 'side deck']
  return ['cockpit sole', 'side deck'].filter((kind) => kind === zone.kind)
}

/** Minute from which a floor coated until `endMinute` bears feet; a day at 20 °C where no sheet says. */
export function treadMinute(subject: Subject, step: WorkStep, endMinute: number): number {
  if (floorsWetted(subject, step).length === 0) return endMinute
  const rows = clockRows(subject.raw, step.sheet!, 'dryToTread') ?? [{ airC: 20, hours: 24 }]
  const full = clockFullMinute({ rows, sense: 'least', fromMinute: endMinute, airC: subject.airs[step.air]! })
  return Math.min(endMinute + longestMinutes, full ?? Number.POSITIVE_INFINITY)
}

/** Spells of other steps in which the floor under this one is wet. */
export function wetUnder(subject: Subject, step: WorkStep, others: readonly PlacedStep[]): readonly Spell[] {
  const floor = floorUnder(subject, step)
  if (floor === undefined) return []
  return others.flatMap((one) => {
    const other = subject.steps.get(one.step)
    if (!other || !floorsWetted(subject, other).includes(floor)) return []
    const until = toSlots(treadMinute(subject, other, one.endMinute))
    return [{ startMinute: one.startMinute, endMinute: until }]
  })
}

/** Spells in which others stand on a floor that this step would wet; the keying of a coat stands where the coat does. */
export function feetOn(subject: Subject, step: WorkStep, others: readonly PlacedStep[]): readonly Spell[] {
  const floors = floorsWetted(subject, step)
  if (floors.length === 0) return []
  return others.flatMap((one) => {
    const other = subject.steps.get(one.keyFor ?? one.step)
    const floor = other && floorUnder(subject, other)
    return floor !== undefined && floors.includes(floor) ? one.pieces : []
  })
}
