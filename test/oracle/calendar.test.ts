/** The finished calendar against the cells of the job: who works when, what is there, and every wait. */
import { describe, expect, it } from 'vitest'
import { allCoats, type ClockCell, clockRows, coatPairs, coatsByZone, zonesOfKind } from './coats.ts'
import { offsetMinutes, workingSpells } from './crew.ts'
import { type JobName, jobNames } from './jobs.ts'
import {
  endOf,
  fullAfter,
  type PlacedStep,
  placedCoats,
  type Subject,
  shown,
  startOf,
  subjectOf,
  toSlots,
} from './plans.ts'
import { cellsOf, itemsOf, sheetCell } from './raw-sample.ts'

/** The clocks here run in whole minutes; the calendar may round the same moment the other way. */
const minuteTolerance = 1

/** Nothing when `step` starts late enough, else what is wrong. */
function early(subject: Subject, step: string, readyMinute: number, why: string): readonly string[] {
  const start = startOf(subject, step)
  return start >= readyMinute - minuteTolerance
    ? []
    : [`${step} at ${shown(start)}, ${why} until ${shown(readyMinute)}`]
}

type AfterCoat = {
  readonly subject: Subject
  readonly coat: { step: string; sheet: string }
  readonly clock: ClockCell
}

/** When a clock of the sheet, read from the cells, is full after a coat; its end when the sheet has no such clock. */
function readyAfter({ subject, coat, clock }: AfterCoat): number {
  const rows = clockRows(subject.raw, coat.sheet, clock)
  return rows ? fullAfter({ subject, rows, sense: 'least', after: coat.step }) : endOf(subject, coat.step)
}

function earlyAfter(step: string, after: AfterCoat): readonly string[] {
  return early(after.subject, step, readyAfter(after), `${after.clock} of ${after.coat.step}`)
}

const peopleOf = (subject: Subject): readonly string[] => Object.keys(itemsOf(subject.raw.work, 'people'))

const piecesOf = (subject: Subject, person: string) =>
  subject.plan.days.placed.flatMap((one) =>
    one.pieces
      .filter((piece) => piece.people.includes(person))
      .map((piece) => ({ ...piece, step: one.step })),
  )

const localDay = (zone: string, minute: number): string =>
  shown(minute + offsetMinutes(zone, minute)).slice(0, 10)

/** Their last coats go on when it will not be warm enough again for them to dry to touch. */
const neverDry: readonly JobName[] = [
  'cruiser-topsides with thick gloss, a helper at weekends',
  'cruiser-topsides late in the year, gloss on gloss',
]

describe.each(jobNames)('the calendar of %s', (name) => {
  const subject = subjectOf(name)
  const { raw, plan, steps, placed } = subject

  it('has every coat, sanding, repair, wash and fitting that the job names, each once', () => {
    const wanted = [
      ...allCoats(raw).flatMap((coat) => (coat.sanded ? [coat.step, coat.sandStep] : [coat.step])),
      ...Object.entries(itemsOf(raw.work, 'findings')).flatMap(([id, { sheet }]) =>
        sheet ? [`repair:${id}`, `filled:${id}`] : [`repair:${id}`],
      ),
      ...Object.entries(itemsOf(raw.work, 'fittings')).flatMap(([id, { plan: what }]) =>
        what === 'refit' ? [`off:${id}`, `on:${id}`] : what === 'remove' ? [`off:${id}`] : [],
      ),
    ]
    const without = plan.days.unplaced.map((one) => one.step)
    expect(wanted.filter((id) => !placed.has(id) && !without.includes(id))).toEqual([])
    expect(steps.size + plan.days.placed.filter((one) => one.keyFor).length).toBe(
      placed.size + without.length,
    )
    expect(placed.size).toBe(plan.days.placed.length)
  })

  it('leaves without a place only what waits for a coat that the cold keeps from drying, and says so', () => {
    const waits = plan.days.unplaced.map(({ step }) => {
      const needs = steps.get(step)!.needs.map(({ step: after, wait }) => ({ after, wait }))
      const stopped = needs.some(
        ({ after, wait }) =>
          placed.has(after) &&
          wait.kind === 'clock' &&
          fullAfter({ subject, rows: wait.table, sense: 'least', after }) === Number.POSITIVE_INFINITY,
      )
      const reason = stopped ? 'clock' : needs.some(({ after }) => !placed.has(after)) ? 'needs' : 'none'
      return { step, reason }
    })
    expect(plan.days.unplaced).toEqual(waits)
    expect(waits.length > 0).toBe(neverDry.includes(name))
  })

  it('has nobody in two places at once', () => {
    for (const person of peopleOf(subject)) {
      const pieces = [...piecesOf(subject, person)].sort((a, b) => a.startMinute - b.startMinute)
      const twice = pieces.slice(1).filter((piece, index) => piece.startMinute < pieces[index]!.endMinute)
      expect(twice.map((piece) => `${person}: ${piece.step} at ${shown(piece.startMinute)}`)).toEqual([])
    }
  })

  it('has nobody work outside a shift less half an hour of opening and half an hour of closing', () => {
    for (const person of peopleOf(subject)) {
      const spells = workingSpells(raw, person)
      const outside = piecesOf(subject, person).filter(
        (piece) =>
          !spells.some(
            (spell) => spell.startMinute <= piece.startMinute && piece.endMinute <= spell.endMinute,
          ),
      )
      expect(outside.map((piece) => `${person}: ${piece.step} at ${shown(piece.startMinute)}`)).toEqual([])
    }
  })

  it('keeps the untrained and the sensitised away from isocyanates while a coat goes on', () => {
    const people = itemsOf(raw.work, 'people')
    for (const coat of placedCoats(subject).filter(
      (one) => sheetCell(raw, one.sheet, 'isocyanate') === 'yes',
    )) {
      const { pieces, startMinute } = placed.get(coat.step)!
      for (const person of pieces.flatMap((piece) => piece.people)) {
        expect(people[person]?.sensitised, `${person} on ${coat.step}`).toBe('no')
        expect(people[person]!.trainedUntil! >= shown(startMinute).slice(0, 10), `${person}: training`).toBe(
          true,
        )
      }
    }
  })

  it('keeps the sensitised away from two-part paint: from its sanding, and from where it is wet', () => {
    const never = Object.entries(itemsOf(raw.work, 'people')).flatMap(([id, cells]) =>
      cells.sensitised === 'yes' ? [id] : [],
    )
    const isTwoPart = (sheet: string) => sheetCell(raw, sheet, 'isocyanate') === 'yes'
    const sanded = coatPairs(raw).flatMap(([below, above]) =>
      isTwoPart(below.sheet) ? [above.sandStep] : [],
    )
    const wet = allCoats(raw)
      .filter((coat) => isTwoPart(coat.sheet))
      .map((coat) => ({
        air: steps.get(coat.step)!.air,
        from: startOf(subject, coat.step),
        until: readyAfter({ subject, coat, clock: 'touchDry' }),
      }))
    const near = plan.days.placed.flatMap((one) =>
      one.pieces
        .filter(
          (piece) =>
            piece.people.some((person) => never.includes(person)) &&
            (sanded.includes(one.step) ||
              wet.some(
                ({ air, from, until }) =>
                  (steps.get(one.step)?.air ?? 'boat') === air &&
                  piece.startMinute < until &&
                  from < piece.endMinute,
              )),
        )
        .map((piece) => `${one.step} at ${shown(piece.startMinute)}: ${piece.people}`),
    )
    expect(near).toEqual([])
  })

  it('gives every step the time it takes: coats in one piece by the same people, the rest bit by bit', () => {
    const wrong = plan.days.placed.flatMap((one) => (steps.has(one.step) ? wrongLength(subject, one) : []))
    expect(wrong).toEqual([])
  })

  it('starts nothing before what it needs, each clock worked again minute by minute', () => {
    const wrong = plan.steps.steps.flatMap((step) =>
      step.needs.flatMap((need) => {
        const { wait } = need
        const ready =
          wait.kind === 'clock'
            ? fullAfter({ subject, rows: wait.table, sense: 'least', after: need.step })
            : endOf(subject, need.step) + (wait.kind === 'fixed' ? wait.minutes : 0)
        return early(subject, step.id, ready, `${wait.kind} of ${need.step}`)
      }),
    )
    expect(wrong).toEqual([])
  })

  it('names the very minute at which the longest wait of a step was over', () => {
    for (const one of plan.days.placed) {
      const step = steps.get(one.step)
      if (!step || !one.heldBy) continue
      const need = step.needs.find(({ step: id }) => id === one.heldBy?.step)
      if (need?.wait.kind !== 'clock') continue
      const ready = fullAfter({ subject, rows: need.wait.table, sense: 'least', after: need.step })
      const off = Math.abs(ready - one.heldBy.untilMinute)
      expect(off, `${one.step}: ${shown(ready)}`).toBeLessThanOrEqual(minuteTolerance)
    }
  })

  it('puts no coat on another before the recoat time on the sheet', () => {
    const wrong = coatPairs(raw).flatMap(([below, above]) =>
      earlyAfter(above.step, { subject, coat: below, clock: 'recoatLeast' }),
    )
    expect(wrong).toEqual([])
  })

  it('sands a coat when it is hard enough and before the next goes on', () => {
    const wrong = coatPairs(raw)
      .filter(([, above]) => above.sanded)
      .flatMap(([below, above]) => [
        ...earlyAfter(above.sandStep, { subject, coat: below, clock: 'dryToSand' }),
        ...early(subject, above.step, endOf(subject, above.sandStep), `sanding ${above.sandStep}`),
      ])
    expect(wrong).toEqual([])
  })

  it('puts a coat that was not sanded before inside the window of the one below, or keys it first', () => {
    const wrong = coatPairs(raw).flatMap(([below, above]) => {
      const rows = clockRows(raw, below.sheet, 'recoatMost')
      if (above.sanded || !rows) return []
      const shuts = fullAfter({ subject, rows, sense: 'most', after: below.step })
      if (startOf(subject, above.step) <= shuts + minuteTolerance) return []
      const key = plan.days.placed.find((one) => one.keyFor === above.step)
      const keyed =
        key !== undefined &&
        key.endMinute <= startOf(subject, above.step) &&
        key.startMinute >= readyAfter({ subject, coat: below, clock: 'dryToSand' }) - minuteTolerance
      return keyed
        ? []
        : [`${above.step}: window shut ${shown(shuts)}, not keyed, or before it could be sanded`]
    })
    expect(wrong).toEqual([])
  })

  it('washes a zone before it is repaired or sanded, with its hardware off', () => {
    const findings = Object.entries(itemsOf(raw.work, 'findings'))
    const fittings = Object.entries(itemsOf(raw.work, 'fittings'))
    const wrong = [...coatsByZone(raw)].flatMap(([zone, stack]) => {
      const wash = `wash:${zone}`
      if (!placed.has(wash)) return []
      const off = fittings.filter(([, cells]) => cells.zone === zone && cells.plan !== 'leave')
      const dirty = [
        ...findings.flatMap(([id, cells]) => (cells.zone === zone ? [`repair:${id}`] : [])),
        ...stack.flatMap((coat) => (coat.sanded ? [coat.sandStep] : [])),
      ]
      return [
        ...off.flatMap(([id]) => early(subject, wash, endOf(subject, `off:${id}`), `off:${id}`)),
        ...dirty.flatMap((step) => early(subject, step, endOf(subject, wash), wash)),
      ]
    })
    expect(wrong).toEqual([])
  })

  it('lets what a repair was filled with harden before the zone is sanded or coated', () => {
    const wrong = Object.entries(itemsOf(raw.work, 'findings')).flatMap(([id, cells]) => {
      const first = coatsByZone(raw).get(cells.zone!)?.[0]
      if (!cells.sheet || !first) return []
      const filled = { step: `filled:${id}`, sheet: cells.sheet }
      return [
        ...early(subject, filled.step, endOf(subject, `repair:${id}`), 'opening and grinding'),
        ...earlyAfter(first.sanded ? first.sandStep : first.step, {
          subject,
          coat: filled,
          clock: 'dryToSand',
        }),
      ]
    })
    expect(wrong).toEqual([])
  })

  it('tapes stripes and panels only on gloss that takes tape', () => {
    const under = {
      'boot stripe': zonesOfKind(raw, ['topsides', 'transom']),
      panel: zonesOfKind(raw, ['foredeck', 'cabin top', 'cockpit sole']),
    }
    const wrong = Object.values(itemsOf(raw.work, 'marks')).flatMap((mark) => {
      const strike = [...steps.keys()].find((id) => id.startsWith(`mask:${mark.zone}:`))!
      return under[mark.kind as keyof typeof under].flatMap((zone) => {
        const last = coatsByZone(raw).get(zone)?.at(-1)
        return last ? earlyAfter(strike, { subject, coat: last, clock: 'dryToTape' }) : []
      })
    })
    expect(wrong).toEqual([])
  })

  it('fits hardware back on a coat that is hard enough for it', () => {
    const wrong = Object.entries(itemsOf(raw.work, 'fittings')).flatMap(([id, cells]) => {
      const last = coatsByZone(raw).get(cells.zone!)?.at(-1)
      if (cells.plan !== 'refit' || !last) return []
      return earlyAfter(`on:${id}`, { subject, coat: last, clock: 'dryToFit' })
    })
    expect(wrong).toEqual([])
  })

  it('lets slings touch when all work is done and every coat of the hull is hard enough, and not later', () => {
    const hull = zonesOfKind(raw, ['topsides', 'transom', 'bottom', 'boot stripe'])
    const hard = hull.flatMap((zone) => {
      const last = coatsByZone(raw).get(zone)?.at(-1)
      return last ? [readyAfter({ subject, coat: last, clock: 'dryToSling' })] : []
    })
    const workEnd = Math.max(...plan.days.placed.map((one) => one.endMinute))
    expect(plan.days.workEndMinute).toBe(plan.days.unplaced.length > 0 ? undefined : workEnd)
    const { launchMinute, unplaced } = plan.days
    if (unplaced.length > 0) {
      expect(launchMinute).toBeUndefined()
      return
    }
    expect(Math.abs(launchMinute! - Math.max(workEnd, ...hard))).toBeLessThanOrEqual(minuteTolerance)
  })

  it('says that the boat is late when slings may touch only after the day she should be afloat, and only then', () => {
    const { launch } = cellsOf(raw.work, 'job')
    const zone = cellsOf(raw.work, 'place').timeZone!
    const { launchMinute } = plan.days
    const late = plan.days.notes.filter((note) => note.code === 'days.late').map((note) => note.data)
    // No day at all is a fault of its own, said for every step without a place.
    const possible = launchMinute === undefined ? '' : localDay(zone, launchMinute)
    expect(late).toEqual(possible > launch! ? [{ wantedDate: launch, possibleDate: possible }] : [])
  })
})

function wrongLength(subject: Subject, one: PlacedStep): readonly string[] {
  const step = subject.steps.get(one.step)!
  const crews = one.pieces.map((piece) => piece.people.length)
  const odd = crews.filter((crew) => !step.paces.some((pace) => pace.crew === crew))
  if (odd.length > 0) return [`${one.step}: a crew of ${odd} has no pace`]
  const paceOf = (crew: number) => step.paces.find((pace) => pace.crew === crew)!
  if (step.inOneGo) {
    const [crew = 0] = crews
    const whole =
      toSlots(step.setUpMinutes) + toSlots(paceOf(crew).personMinutes / crew) + toSlots(step.cleanUpMinutes)
    const length = one.endMinute - one.startMinute
    return crews.length === 1 && length === whole ? [] : [`${one.step}: ${length} min, expected ${whole}`]
  }
  const shares = one.pieces.map((piece) => {
    const crew = piece.people.length
    return ((piece.endMinute - piece.startMinute) * crew) / paceOf(crew).personMinutes
  })
  const done = shares.reduce((sum, share) => sum + share, 0)
  const lastSlot = (toSlots(1) * crews.at(-1)!) / paceOf(crews.at(-1)!).personMinutes
  // 1e-9: rounding of sums of shares.
  return done >= 1 - 1e-9 && done - lastSlot < 1 - 1e-9 ? [] : [`${one.step}: ${done} of its work is done`]
}
