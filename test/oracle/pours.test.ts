/** The mix cards: litres, parts, clocks and whether the pours last through the work. */
import { describe, expect, it } from 'vitest'
import type { Plan } from '#plan'
import * as cell from './cells.ts'
import { type Coat, clockRows } from './coats.ts'
import { shareAnHour } from './cure-clock.ts'
import { jobNames } from './jobs.ts'
import { placedCoats, type Subject, shown, subjectOf, workSpan } from './plans.ts'
import { itemsOf, limitCell, sheetCell } from './raw-sample.ts'

type Pour = Plan['pours']['pours'][number]

const relative = 1e-12
/** A cup is filled up to the next whole share of its ratio: twelve millilitres are the largest, m³. */
const share = 12e-6
const step = 1e-6
/** Clocks on a card are whole minutes. */
const minuteTolerance = 1

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0)

function same(had: number, expected: number, what: string): void {
  const most = relative * Math.max(expected, 1e-6)
  expect(Math.abs(had - expected), `${what}: got ${had}, expected ${expected}`).toBeLessThanOrEqual(most)
}

function near(had: number, expected: number, most: number, what: string): void {
  expect(Math.abs(had - expected), `${what}: got ${had}, expected ${expected}`).toBeLessThanOrEqual(most)
}

/** Filler with a hardener goes cup by cup, each within half its pot life. */
const isCup = (raw: Subject['raw'], { sheet }: Pour): boolean =>
  ['filler', 'fairing', 'laminating resin'].includes(sheetCell(raw, sheet, 'role') ?? '') &&
  (cell.ratio(sheetCell(raw, sheet, 'mix') ?? '1')[1] ?? 0) > 0

const ofRepair = ({ step: id }: Pour): boolean => id.startsWith('filled:')

function pourList(subject: Subject): readonly (readonly [Coat, readonly Pour[]])[] {
  const { pours } = subject.plan.pours
  return placedCoats(subject).map((coat) => [coat, pours.filter((pour) => pour.step === coat.step)])
}

describe.each(jobNames)('the pours of %s', (name) => {
  const subject = subjectOf(name)
  const { raw, plan, steps, placed, airs } = subject

  it('are numbered, and together are the litres and the area of their coat', () => {
    const laid = plan.pours.pours.filter((pour) => !ofRepair(pour))
    expect(laid.length).toBe(sum(pourList(subject).map(([, pours]) => pours.length)))
    for (const [coat, pours] of pourList(subject)) {
      const layer = plan.quantities.layers.find((one) => one.layer === coat.layer && one.zone === coat.zone)!
      expect(pours.map((pour) => [pour.nr, pour.of])).toEqual(pours.map((_pour, i) => [i + 1, pours.length]))
      expect(pours.length).toBeGreaterThan(0)
      const cups = sum(pours.map(({ times }) => times))
      const all = (each: (pour: Pour) => number): number => sum(pours.map((pour) => pour.times * each(pour)))
      near(
        all((pour) => sum(pour.partsM3)),
        layer.mixedPerCoatM3,
        cups * share,
        coat.step,
      )
      near(
        all((pour) => pour.thinnerM3),
        layer.thinnerM3 / layer.coats,
        cups * share,
        coat.step,
      )
      near(
        all((pour) => pour.additiveM3),
        layer.additiveM3 / layer.coats,
        cups * share,
        coat.step,
      )
      same(sum(pours.map((pour) => pour.areaM2)), layer.areaM2, coat.step)
    }
  })

  it('hold their parts in the ratio of the sheet, with thinner on top, and weigh what they hold', () => {
    for (const pour of plan.pours.pours) {
      const parts = cell.ratio(sheetCell(raw, pour.sheet, 'mix')!)
      const mixed = sum(pour.partsM3)
      parts.forEach((part, index) => {
        // Both the part and the parts together are off by less than a step.
        near(pour.partsM3[index]!, (mixed * part) / sum(parts), 2 * step, pour.step)
      })
      const layer = itemsOf(raw.work, 'layers')[steps.get(pour.step)!.layer ?? '']
      const thinner = !layer
        ? 0
        : cell.share(layer.thinnerShare ?? sheetCell(raw, pour.sheet, 'thinnerShare') ?? '0 %')
      near(pour.thinnerM3, mixed * thinner, 2 * step, pour.step)
      same(pour.readyM3, mixed + pour.thinnerM3, pour.step)
      const densities = ['densityA', 'densityB'].map((density) => sheetCell(raw, pour.sheet, density))
      if (densities.slice(0, parts.length).every((text) => text !== undefined))
        pour.partsM3.forEach((volume, index) => {
          same(pour.partsKg![index]!, volume * cell.kilogramsPerCubicMetre(densities[index]!), pour.step)
        })
    }
  })

  it('are made for the air of their hour', () => {
    for (const pour of plan.pours.pours) {
      const airC = airs[steps.get(pour.step)!.air]!
      const around = [pour.mixAtMinute, pour.useFromMinute].map((minute) => airC(Math.floor(minute / 60)))
      expect(around, pour.step).toContain(pour.airC)
    }
  })

  it('stand for their induction before they are used', () => {
    for (const pour of plan.pours.pours) {
      const stir = cell.hours(limitCell(isCup(raw, pour) ? 'fillerLead' : 'mixLead')) * 60
      const rows = clockRows(raw, pour.sheet, 'induction')
      const stood = pour.useFromMinute - pour.mixAtMinute - stir
      const induction = rows ? 60 / shareAnHour(rows, pour.airC, 'least') : 0
      // In air colder than the sheet goes a clock of a least time stands still; nobody waits for ever, but not less.
      if (induction === Number.POSITIVE_INFINITY)
        expect(stood, pour.step).toBeGreaterThanOrEqual(rows![0]!.hours * 60 - minuteTolerance)
      else expect(Math.abs(stood - induction), pour.step).toBeLessThanOrEqual(minuteTolerance)
    }
  })

  it('may be used until their pot life since mixing is over, at the air on the card', () => {
    for (const pour of plan.pours.pours) {
      const rows = clockRows(raw, pour.sheet, 'potLife')
      if (!rows) expect(pour.useUntilMinute, pour.step).toBeUndefined()
      else {
        const potLife = (isCup(raw, pour) ? 0.5 : 1) * (60 / shareAnHour(rows, pour.airC, 'most'))
        const off = Math.abs(pour.useUntilMinute! - pour.mixAtMinute - potLife)
        expect(off, pour.step).toBeLessThanOrEqual(minuteTolerance)
      }
    }
  })

  it('last through the work, each in its turn', () => {
    for (const [coat, pours] of pourList(subject)) {
      const step = steps.get(coat.step)!
      const at = placed.get(coat.step)!
      const crew = at.pieces[0]!.people.length
      const work = step.paces.find((pace) => pace.crew === crew)!.personMinutes / crew
      const usable = pours.map(
        (pour) => pour.times * ((pour.useUntilMinute ?? Number.POSITIVE_INFINITY) - pour.useFromMinute),
      )
      const cups = sum(pours.map(({ times }) => times))
      expect(sum(usable), coat.step).toBeGreaterThanOrEqual(work - cups * minuteTolerance)
      pours.forEach((pour, index) => {
        const own = (work * pour.areaM2) / sum(pours.map((one) => one.areaM2))
        // Clocks on a card are whole minutes: of each of its cups.
        const most = pour.times * minuteTolerance
        expect(usable[index], `${coat.step} pour ${pour.nr}`).toBeGreaterThanOrEqual(own - most)
      })
    }
  })

  it('are used in the span of the coat for which the hours were judged', () => {
    const wrong = plan.pours.pours.filter((pour) => {
      const { from, until } = workSpan(steps.get(pour.step)!, placed.get(pour.step)!)
      return pour.useFromMinute < from || pour.useFromMinute >= until
    })
    expect(wrong.map((pour) => `${pour.step} used from ${shown(pour.useFromMinute)}`)).toEqual([])
  })
})
