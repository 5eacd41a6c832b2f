import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hoursAt } from '#core/cure'
import { describeLaying, type Plan, plan } from '#plan'
import { planInput, projectRaw, sampleInput, sampleRaw, withCell } from '../../../test/support/samples.ts'

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)
const plans = (['open-powerboat', 'deck-only', 'cruiser-topsides'] as const).map(
  (name) => [name, plan(sampleInput(name))] as const,
)

const byStep = ({ pours }: Plan): readonly (readonly Plan['pours']['pours'][number][])[] => {
  const steps = new Set(pours.pours.map(({ step }) => step))
  return [...steps].map((step) => pours.pours.filter((pour) => pour.step === step))
}

/** What is laid on a zone; a repair takes what fills it. */
const byArea = (made: Plan) => byStep(made).filter(([first]) => first!.runs.length > 0)

describe.each(plans)('the mix cards of %s', (_, made) => {
  it('hold whole millilitres, or tenths where a part is a few drops, that add up on each card', () => {
    for (const pours of byStep(made)) {
      const parts = pours.flatMap((pour) => [...pour.partsM3, pour.thinnerM3])
      const step = parts.some((part) => part > 0 && part < 19e-6) ? 0.1 : 1
      for (const part of parts) {
        const steps = (part * 1e6) / step
        expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6)
      }
      for (const pour of pours) expect(pour.readyM3).toBeCloseTo(sum([...pour.partsM3, pour.thinnerM3]), 12)
    }
  })

  it('keep the ratio of the sheet to the millilitre', () => {
    for (const { sheet, partsM3 } of made.pours.pours) {
      const [a, b = 0] = made.buildUps.sheets.find(({ id }) => id === sheet)!.mix.value
      const [base, hardener = 0] = partsM3
      // 100:2 has no small whole numbers: its hardener is right to half a tenth of a millilitre, or half of one.
      const most = a! / b <= 11 && Number.isInteger(a! / b) ? 1e-12 : 0.5e-6 + 1e-12
      expect(Math.abs(hardener - (base! * b) / a!)).toBeLessThanOrEqual(most)
    }
  })

  it('have thinner on top to the nearest millilitre, a few to the tenth', () => {
    for (const { step, partsM3, thinnerM3 } of byArea(made).flat()) {
      const { zone, layer } = made.steps.steps.find(({ id }) => id === step)!
      const { thinnerShare } = made.buildUps.layers.find(({ id }) => id === `${zone}:${layer}`)!
      const exact = sum(partsM3) * thinnerShare.value
      expect(Math.abs(thinnerM3 - exact)).toBeLessThanOrEqual(exact < 5e-6 ? 0.05e-6 + 1e-12 : 0.5e-6 + 1e-12)
    }
  })

  it('hold what their coat takes, and no more than a share of the ratio a card over it', () => {
    for (const pours of byArea(made)) {
      const { zone, layer } = made.steps.steps.find(({ id }) => id === pours[0]!.step)!
      const { mixedPerCoatM3 } = made.quantities.layers.find(({ id }) => id === `${zone}:${layer}`)!
      const cups = sum(pours.map(({ times }) => times))
      const mixed = sum(pours.map(({ times, partsM3 }) => times * sum(partsM3)))
      expect(mixed).toBeGreaterThanOrEqual(mixedPerCoatM3 - 0.5e-6 * cups)
      expect(mixed).toBeLessThan(mixedPerCoatM3 + 12e-6 * cups)
    }
  })

  it('are mixed for each repair that its own filler fills', () => {
    const filled = made.repairs.repairs.filter(({ sheet, volumeM3 }) => sheet && volumeM3 > 0)
    expect(filled.length).toBeGreaterThan(0)
    for (const { finding, volumeM3 } of filled) {
      const pours = made.pours.pours.filter(({ step }) => step === `filled:${finding}`)
      expect(pours).toHaveLength(1)
      expect(pours[0]!.times * pours[0]!.readyM3).toBeGreaterThanOrEqual(volumeM3 - 1e-6)
    }
  })

  it('go into the tray without a rest, 300 ml at most at a time', () => {
    const rolled = made.pours.pours.filter(({ trayM3 }) => trayM3.length > 0)
    expect(rolled.length).toBeGreaterThan(0)
    for (const pour of rolled) {
      expect(Math.abs(sum(pour.trayM3) - pour.readyM3)).toBeLessThanOrEqual(0.5e-6 + 1e-12)
      expect(Math.max(...pour.trayM3)).toBeLessThanOrEqual(300e-6 + 1e-12)
    }
  })

  it('cover each run once, and end where it ends', () => {
    for (const pours of byArea(made)) {
      const runs = pours.flatMap((pour) => pour.runs)
      for (const nr of new Set(runs.map((run) => run.nr))) {
        const own = runs.filter((run) => run.nr === nr)
        expect(sum(own.map(({ areaM2 }) => areaM2))).toBeCloseTo(own[0]!.runM2, 9)
      }
      expect(new Set(runs.map((run) => run.nr)).size).toBe(runs[0]!.of)
      pours.forEach((pour, index) => {
        if (index === 0) expect(pour.intoWet).toBe(false)
        else expect(pour.intoWet).toBe(pours[index - 1]!.runs.at(-1)!.nr === pour.runs[0]!.nr)
      })
    }
  })

  it('are laid one after the other, each mixed before the one before it is laid up', () => {
    for (const pours of byStep(made))
      pours.slice(1).forEach((pour, index) => {
        expect(pour.useFromMinute).toBeGreaterThan(pours[index]!.useFromMinute)
        expect(pour.mixAtMinute).toBeLessThanOrEqual(pour.useFromMinute - 5)
      })
  })
})

const [, powerboat] = plans[0]!

describe('filler', () => {
  const fillers = plans.flatMap(([, made]) =>
    made.pours.pours.flatMap((pour) => {
      const sheet = made.buildUps.sheets.find(({ id }) => id === pour.sheet)!
      const { role, family, clocks } = sheet
      return role === 'fairing' || role === 'filler' ? [{ pour, family, clocks }] : []
    }),
  )

  it('is mixed by the cup, 600 ml of epoxy and 150 ml of what takes peroxide', () => {
    expect(new Set(fillers.map(({ family }) => family))).toEqual(
      new Set(['epoxy', 'vinylester', 'polyester']),
    )
    for (const { pour, family } of fillers)
      expect(sum(pour.partsM3)).toBeLessThanOrEqual((family === 'epoxy' ? 600e-6 : 150e-6) + 12e-6)
    expect(fillers.some(({ pour }) => pour.times > 5)).toBe(true)
  })

  it('is spread within half its pot life, cup by cup', () => {
    for (const { pour, clocks } of fillers) {
      const life = 60 * hoursAt(clocks.potLife!.value, pour.airC, 'most').hours
      expect(pour.useUntilMinute! - pour.mixAtMinute).toBeLessThanOrEqual(life / 2)
      if (pour.everyMinutes !== undefined) expect(pour.everyMinutes).toBeLessThanOrEqual(life / 2 - 1 + 1e-9)
    }
  })
})

it('a repair that gelcoat fills has a card too, by the lump', () => {
  const cells = [
    [['sheets', 'patch', 'name'], 'Gelcoat, white'],
    [['sheets', 'patch', 'like'], 'gelcoat'],
    [['findings', 'crazing-port', 'sheet'], 'patch'],
  ] as const
  const raw = cells.reduce(
    (made, [path, text]) => withCell(made, 'work', [...path], text),
    sampleRaw('open-powerboat'),
  )
  const made = plan(planInput(projectRaw(raw), sampleInput('open-powerboat').weather))
  const [card] = made.pours.pours.filter(({ step }) => step === 'filled:crazing-port')
  expect(card?.sheet).toBe('patch')
  expect(card!.partsM3[0]).toBeLessThanOrEqual(151e-6)
})

describe('runs', () => {
  it('are the two sides of a round zone, whose areas are those of the surface', () => {
    const [, cruiser] = plans[2]!
    const both = [...cruiser.surfaces.zones, ...powerboat.surfaces.zones].filter(
      ({ kind, side }) => kind === 'topsides' && side === 'both',
    )
    for (const zone of both) {
      const pours = cruiser.pours.pours.filter((pour) => pour.zone === zone.id)
      expect(new Set(pours.flatMap(({ runs }) => runs.map(({ where }) => where)))).toEqual(
        new Set(['port', 'starboard']),
      )
    }
  })

  it('are as many as there are lids', () => {
    const lids = powerboat.pours.pours.filter(({ zone }) => zone === 'hatches')
    expect(lids.length).toBeGreaterThan(0)
    for (const { runs } of lids) {
      expect(runs[0]!.of).toBe(4)
      expect(runs[0]!.where).toBe('piece')
    }
  })
})

/** One person, and so many places where a lap hides along each run. */
const alone = (lapPlaces?: number): Plan => {
  const { work, ...rest } = sampleInput('cruiser-topsides')
  const first = work.shifts[0]!.person
  const zones = work.zones.map(({ lapPlaces: _, ...zone }) =>
    lapPlaces === undefined ? zone : { ...zone, lapPlaces },
  )
  return plan({
    ...rest,
    work: { ...work, zones, shifts: work.shifts.filter(({ person }) => person === first) },
  })
}

describe('a run that one person cannot lay', () => {
  const faults = ({ notes }: Plan) => notes.filter(({ code }) => code === 'pours.runTooWideAlone')
  const before = alone()
  const zone = String(faults(before)[0]?.data.zone)

  it('is a fault that says in figures what would do', () => {
    const [fault] = faults(before)
    expect(fault?.severity).toBe('fault')
    expect(fault?.data.areaM2).toBeGreaterThan(8)
    expect(fault?.data.pieceM2).toBeLessThanOrEqual(8)
    expect(fault?.data.pieces).toBe(Math.ceil(Number(fault?.data.areaM2) / Number(fault?.data.pieceM2)))
    // Two at 7 m² an hour.
    expect(fault?.data.pairMinutes).toBeCloseTo((Number(fault?.data.areaM2) / 7) * 60, 0)
  })

  it('is broken where a lap hides, and then is none', () => {
    const places = Number(faults(before)[0]?.data.pieces) - 1
    const cut = alone(places)
    expect(faults(cut).filter(({ data }) => data.zone === zone)).toEqual([])
    const gloss = new Set(
      cut.steps.steps.flatMap(({ id, method }) => (method === 'roll and tip' ? [id] : [])),
    )
    const runs = cut.pours.pours
      .filter((pour) => pour.zone === zone && gloss.has(pour.step))
      .flatMap((pour) => pour.runs)
    expect(Math.max(...runs.map(({ runM2 }) => runM2))).toBeLessThanOrEqual(8)
    const first = cut.pours.pours.find(({ runs: own }) => own.length > 1 && own[0]!.where === own[1]!.where)!
    expect(describeLaying(cut, first)[0]?.data.way).toBe('runs')
  })

  it('is broken no oftener than it has to be, however many places there are', () => {
    const pieces = Number(faults(before)[0]?.data.pieces)
    const cut = alone(19)
    const gloss = cut.pours.pours.find(
      ({ zone: own, step }) =>
        own === zone && cut.steps.steps.find(({ id }) => id === step)?.method === 'roll and tip',
    )!
    const side = cut.pours.pours
      .filter(({ step }) => step === gloss.step)
      .flatMap(({ runs }) => runs)
      .filter(({ where }) => where === gloss.runs[0]!.where)
    const nrs = new Set(side.map(({ nr }) => nr))
    expect(nrs.size).toBeGreaterThanOrEqual(pieces)
    // Between twenty even stretches the cut may lie half a stretch off.
    expect(nrs.size).toBeLessThanOrEqual(pieces + 1)
  })

  it.each([1, 2, 4, 7, 19])('loses nothing of its area at %i places', (places) => {
    const cut = alone(places)
    for (const pours of byArea(cut)) {
      const runs = new Map(pours.flatMap(({ runs: own }) => own).map(({ nr, runM2 }) => [nr, runM2]))
      const { areaM2 } = cut.steps.steps.find(({ id }) => id === pours[0]!.step)!
      expect(sum([...runs.values()])).toBeCloseTo(areaM2!, 9)
    }
  })
})

describe('thinner of a pour', () => {
  const graded = (grades: readonly (readonly [name: string, from: string, until: string])[]) =>
    grades.reduce(
      (made, [name, airFrom, airUntil], nr) =>
        Object.entries({ sheet: 'gloss', name, airFrom, airUntil, least: '5 %', most: '15 %' }).reduce(
          (document, [key, text]) => withCell(document, 'work', ['thinners', `t${nr}`, key], text),
          made,
        ),
      withCell(sampleRaw('cruiser-topsides'), 'work', ['sheets', 'gloss', 'thinnerShare'], '10 %'),
    )
  const planned = (grades: Parameters<typeof graded>[0]) =>
    plan(planInput(projectRaw(graded(grades)), sampleInput('cruiser-topsides').weather))
  const glossOf = (made: Plan) => made.pours.pours.filter(({ sheet }) => sheet === 'gloss')

  it('is of the grade for the air of its hour', () => {
    const made = planned([['fast', '0 °C', '15.9 °C'], ['slow', '16 °C', '35 °C']]) // biome-ignore format: rows
    expect(glossOf(made).length).toBeGreaterThan(0)
    for (const { airC, thinnerGrade } of glossOf(made))
      if (airC < 15.9 || airC >= 16) expect(thinnerGrade).toBe(airC < 16 ? 'fast' : 'slow')
  })

  it('is missed where the sheet has one for the usual air alone', () => {
    const made = planned([['usual', '19.9 °C', '20.1 °C']])
    const told = made.notes.filter(({ code }) => code === 'pours.thinnerNone')
    expect(told.length).toBeGreaterThan(0)
    for (const { thinnerGrade, airC } of glossOf(made))
      if (Math.abs(airC - 20) > 0.1) expect(thinnerGrade).toBeUndefined()
  })
})

describe('a pot that gives no time', () => {
  const faultsWith = (potLife: string) => {
    const raw = withCell(sampleRaw('cruiser-topsides'), 'work', ['sheets', 'gloss', 'potLife'], potLife)
    const { notes } = plan(planInput(projectRaw(raw), sampleInput('cruiser-topsides').weather))
    return notes.filter(({ code, data }) => code === 'pours.potTooShort' && data.sheet === 'gloss')
  }

  it('is told once a zone, with a pot life that does', () => {
    const faults = faultsWith('20C: 20min')
    expect(faults.length).toBeGreaterThan(0)
    expect(new Set(faults.map(({ data }) => data.zone)).size).toBe(faults.length)
    for (const { data } of faults) expect(data.neededHours).toBeGreaterThan(Number(data.potHours))
    const longest = Math.max(...faults.map(({ data }) => Number(data.neededHours)))
    // The same at every temperature, so that it does at the hour of each coat.
    expect(faultsWith(`0C: ${longest * 60 + 15}min, 40C: ${longest * 60 + 15}min`)).toEqual([])
  })
})

describe('pot lives nobody would believe', () => {
  it('never make a figure that is none', () => {
    const life = fc.oneof(
      fc.constantFrom('20C: 1min', '0C: 9999h', '20C: 6min, 40C: 1min'),
      fc.constant('35C: 2h'),
    )
    const induction = fc.constantFrom('20C: 0min', '20C: 30min', '5C: 20h')
    const sheets = [...new Set(powerboat.pours.pours.map(({ sheet }) => sheet))]
    fc.assert(
      fc.property(life, induction, fc.constantFrom(...sheets), (potLife, stands, sheet) => {
        const raw = withCell(
          withCell(sampleRaw('open-powerboat'), 'work', ['sheets', sheet, 'potLife'], potLife),
          'work',
          ['sheets', sheet, 'induction'],
          stands,
        )
        const { pours } = plan(planInput(projectRaw(raw), undefined))
        const numbers = (value: unknown): readonly number[] =>
          typeof value === 'number'
            ? [value]
            : value && typeof value === 'object'
              ? Object.values(value).flatMap(numbers)
              : []
        expect(numbers(pours).filter((value) => !Number.isFinite(value))).toEqual([])
      }),
      { numRuns: 6 },
    )
  })
})
