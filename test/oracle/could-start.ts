/**
 * Whether a step could begin at a minute while all others stay where the plan has them: own rules for waits, people,
 * hours, dust and floors. Work that may be split is begun for half an hour or to its end, never for a quarter.
 */
import type { Plan, WorkStep } from '#plan'
import { type Spell, workingSpells } from './crew.ts'
import { feetOn, treadMinute, wetUnder } from './feet.ts'
import { failsOf, judgeOf, nearTwilight, verdictOf } from './judge.ts'
import { dryMinute, fullAfter, type PlacedStep, type Subject, slotMinutes, toSlots } from './plans.ts'
import { itemsOf } from './raw-sample.ts'

/** The calendar keeps whole quarter hours, counted from the epoch as every time zone's hours are. */
const toSlotMinute = (minute: number): number => Math.ceil(minute / slotMinutes) * slotMinutes

const shortestPiece = 2 * slotMinutes

/** Everything about one step that stays the same for every start. */
export type Trial = {
  readonly subject: Subject
  readonly step: WorkStep
  readonly placed: PlacedStep
  readonly readyMinute: number
  readonly free: readonly (readonly Spell[])[]
  /** Spells of other steps that this one must keep clear of: sanding for a coat, wet coats for sanding. */
  readonly dust: readonly Spell[]
  /** In which the floor under it is wet, and in which others stand on a floor that it wets. */
  readonly wetUnder: readonly Spell[]
  readonly feetOn: readonly Spell[]
  readonly isGo: (hour: number) => boolean
}

export function trialOf(subject: Subject, placed: PlacedStep): Trial {
  const step = subject.steps.get(placed.step)!
  const others = subject.plan.days.placed.filter((one) => one !== placed)
  return {
    subject,
    step,
    placed,
    readyMinute: readyMinute(subject, step),
    free: freeSpells(subject, step, others),
    dust: dustSpells(subject, step, others),
    wetUnder: wetUnder(subject, step, others),
    feetOn: feetOn(subject, step, others),
    isGo: goHours(subject, step),
  }
}

function readyMinute(subject: Subject, step: WorkStep): number {
  const ends = step.needs.map(({ step: after, wait }) => {
    const end = subject.placed.get(after)!.endMinute
    if (wait.kind === 'clock') return fullAfter({ subject, rows: wait.table, sense: 'least', after })
    return wait.kind === 'fixed' ? end + wait.minutes : end
  })
  const keys = subject.plan.days.placed.filter((one) => one.keyFor === step.id)
  return Math.max(subject.plan.days.startMinute, ...ends, ...keys.map((key) => key.endMinute))
}

const spellsKept = new WeakMap<Subject, ReadonlyMap<string, readonly Spell[]>>()

function spellsByPerson(subject: Subject): ReadonlyMap<string, readonly Spell[]> {
  const known = spellsKept.get(subject)
  if (known) return known
  const people = Object.keys(itemsOf(subject.raw.work, 'people'))
  const spells = new Map(people.map((person) => [person, workingSpells(subject.raw, person)]))
  spellsKept.set(subject, spells)
  return spells
}

/** Working spells without those of other steps, for everyone who may do this one. */
function freeSpells(
  subject: Subject,
  step: WorkStep,
  others: readonly PlacedStep[],
): readonly (readonly Spell[])[] {
  return [...spellsByPerson(subject)].flatMap(([person, spells]) => {
    if (step.barred.includes(person)) return []
    const busy = others.flatMap((one) => one.pieces.filter((piece) => piece.people.includes(person)))
    return [busy.reduce<readonly Spell[]>(without, spells)]
  })
}

const without = (spells: readonly Spell[], busy: Spell): readonly Spell[] =>
  spells.flatMap((spell) =>
    busy.endMinute <= spell.startMinute || spell.endMinute <= busy.startMinute
      ? [spell]
      : [
          { startMinute: spell.startMinute, endMinute: busy.startMinute },
          { startMinute: busy.endMinute, endMinute: spell.endMinute },
        ].filter((part) => part.startMinute < part.endMinute),
  )

function dustSpells(subject: Subject, step: WorkStep, others: readonly PlacedStep[]): readonly Spell[] {
  return others.flatMap((one): readonly Spell[] => {
    // What the calendar puts in to key a surface has no step of its own; it is sanding at the boat.
    const other = subject.steps.get(one.step)
    const { dust, air } = other ?? { dust: 'makes', air: 'boat' }
    if (air !== step.air) return []
    if (step.dust === 'minds' && dust === 'makes') return one.pieces
    if (step.dust === 'makes' && other && dust === 'minds')
      return [
        { startMinute: one.startMinute, endMinute: toSlotMinute(dryMinute(subject, other, one.endMinute)) },
      ]
    return []
  })
}

function goHours(subject: Subject, step: WorkStep): (hour: number) => boolean {
  const asked = subject.plan.conditions.zones.find((zone) => zone.key === step.hoursKey)
  if (!asked) return () => true
  const judge = judgeOf(subject.raw, subject.plan, asked)
  const { air } = judge
  return (hour) => {
    const index = hour - air.firstMinute / 60
    const drying = asked.hoursAfter[index] ?? asked.hoursAfter[0] ?? 0
    if (index < 0 || index + drying >= air.airC.length) return false
    // Dawn and dusk to the minute are nobody's second rule.
    if (nearTwilight(judge, index)) return asked.verdicts[index] === 'go'
    return verdictOf(failsOf(judge, index)) === 'go'
  }
}

const isClear = (spells: readonly Spell[], from: number, until: number): boolean =>
  spells.every((spell) => spell.endMinute <= from || until <= spell.startMinute)

const countFree = ({ free }: Trial, from: number, until: number): number =>
  free.filter((spells) => spells.some((spell) => spell.startMinute <= from && until <= spell.endMinute))
    .length

export type Hours = 'go' | 'any'

/** `any` hours: for a step that the plan itself put where nobody knows the weather. */
export function couldStart(trial: Trial, minute: number, hours: Hours): boolean {
  if (minute < trial.readyMinute) return false
  return trial.step.inOneGo ? couldRun(trial, minute, hours) : couldBegin(trial, minute)
}

function couldRun(trial: Trial, start: number, hours: Hours): boolean {
  const { step, dust, isGo } = trial
  return step.paces.some(({ crew, personMinutes }) => {
    const from = start + toSlots(step.setUpMinutes)
    const until = from + toSlots(personMinutes / crew)
    const end = until + toSlots(step.cleanUpMinutes)
    if (countFree(trial, start, end) < crew) return false
    if (!isClear(dust, start, toSlotMinute(dryMinute(trial.subject, step, end)))) return false
    if (!isClear(trial.wetUnder, start, end)) return false
    if (!isClear(trial.feetOn, start, toSlotMinute(treadMinute(trial.subject, step, end)))) return false
    if (hours === 'any') return true
    for (let hour = Math.floor(from / 60); hour * 60 < until; hour++) if (!isGo(hour)) return false
    return true
  })
}

function couldBegin(trial: Trial, start: number): boolean {
  return trial.step.paces.some(({ crew, personMinutes }) => {
    const end = start + Math.min(shortestPiece, toSlots(personMinutes / crew))
    for (let hour = Math.floor(start / 60); hour * 60 < end; hour++) if (!trial.isGo(hour)) return false
    const clear = isClear(trial.dust, start, end) && isClear(trial.wetUnder, start, end)
    return countFree(trial, start, end) >= crew && clear
  })
}

export const placedSteps = (subject: Subject): Plan['days']['placed'] =>
  subject.plan.days.placed.filter((one) => subject.steps.has(one.step))
