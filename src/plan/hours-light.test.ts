import { describe, expect, it } from 'vitest'
import { createPlanner, type Plan, type PlanInput, plan } from '#plan'
import { sampleInput } from '../../test/support/samples.ts'

const sample = sampleInput('open-powerboat')
type Place = PlanInput['work']['place']
const standing = (change: Partial<Place>): PlanInput => ({
  ...sample,
  work: { ...sample.work, place: { ...sample.work.place, ...change } },
})
const without = (key: 'latitude'): PlanInput => {
  const { [key]: _left, ...place } = standing({ shelter: 'open' }).work.place
  return { ...sample, work: { ...sample.work, place } }
}
const codes = (of: Plan) => of.conditions.notes.map(({ code }) => code)
const limitsIn = (of: Plan, place?: string) =>
  new Set(
    of.conditions.zones
      .filter((zone) => place === undefined || zone.place === place)
      .flatMap(({ failing }) => failing.flat().map(({ limit }) => limit)),
  )
/** Local clock of the hours in which a limit fails, with its effects. */
const clocksOf = (of: Plan, limit: string) => {
  const clock = new Intl.DateTimeFormat('en-GB', {
    ...{ timeZone: 'Europe/Stockholm', hour: '2-digit', hourCycle: 'h23' },
  })
  const zone = of.conditions.zones.find(({ place }) => place === 'deck')!
  return zone.failing.flatMap((failing, hour) =>
    failing.some((one) => one.limit === limit)
      ? [Number(clock.format((zone.firstMinute + hour * 60) * 60_000))]
      : [],
  )
}

describe('dark', () => {
  it('shuts hours where no lamp is told of, and lamps open them; loose parts in the shed have some', () => {
    const cover = plan(sample)
    expect(limitsIn(cover, 'boat')).toContain('dark')
    expect(limitsIn(cover, 'indoors')).not.toContain('dark')
    expect(codes(cover)).toContain('conditions.lampsAssumed')
    const lit = plan(standing({ lamps: true }))
    expect(limitsIn(lit)).not.toContain('dark')
    expect(codes(lit)).not.toContain('conditions.lampsAssumed')
    expect(limitsIn(plan(standing({ shelter: 'shed', lamps: false })))).toContain('dark')
  })

  it('is not known without a place, and said so', () => {
    const nowhere = plan(without('latitude'))
    expect(limitsIn(nowhere)).not.toContain('dark')
    expect(codes(nowhere)).toContain('conditions.placeUnknown')
  })
})

describe('the evening stop', () => {
  it('is a risk before sunset where nobody set it, in the open alone', () => {
    const open = plan(standing({ shelter: 'open' }))
    const effects = open.conditions.zones.flatMap(({ failing }) =>
      failing.flat().flatMap(({ limit, effect }) => (limit === 'evening' ? [effect] : [])),
    )
    expect(new Set(effects)).toEqual(new Set(['risky']))
    expect(codes(open)).toContain('conditions.stopAssumed')
    expect(limitsIn(open, 'indoors')).not.toContain('evening')
    expect(limitsIn(plan(sample))).not.toContain('evening')
  })

  it('is kept by the clock of the place where it is set, to the end of the day and not past it', () => {
    const set = plan(standing({ shelter: 'open', eveningStop: '16:30' }))
    expect([...new Set(clocksOf(set, 'evening'))].sort((a, b) => a - b)).toEqual([
      16, 17, 18, 19, 20, 21, 22, 23,
    ])
    const half = set.conditions.zones[0]!.failing.flat().find(({ limit }) => limit === 'evening')!
    expect([half.effect, half.had]).toEqual(['no', 0.5])
    expect(codes(set)).not.toContain('conditions.stopAssumed')
  })

  it('judges the hours again and works no skin again', () => {
    const planner = createPlanner()
    planner.plan(standing({ shelter: 'open' }))
    const { trace } = planner.plan(standing({ shelter: 'open', eveningStop: '17:00' }))
    const ran = trace.filter((entry) => entry.ran).map(({ stage }) => stage)
    expect(ran).toContain('conditions evening')
    expect(ran).not.toContain('conditions daylight')
  })
})

describe('a sheet that tells its skin', () => {
  it('has its own limits, and is named no more among those that do not', () => {
    const noted = (of: Plan) =>
      `${of.conditions.notes.find(({ code }) => code === 'conditions.skinFromAir')?.data.names}`
    const own = { value: 12, text: '12 °C', certainty: 'measured' } as const
    const before = plan(sample)
    const { sheet } = before.conditions.zones[0]!
    const told = { skinLeast: own, skinMost: { ...own, value: 24, text: '24 °C' } }
    const sheets = sample.work.sheets.map((one) => (one.id === sheet ? { ...one, ...told } : one))
    const made = plan({ ...sample, work: { ...sample.work, sheets } })
    const name = made.buildUps.sheets.find(({ id }) => id === sheet)!.name
    expect(noted(before)).toContain(name)
    expect(noted(made)).not.toContain(name)
    const neededs = made.conditions.zones
      .filter((hours) => hours.sheet === sheet)
      .flatMap(({ failing }) => failing.flat())
      .filter(({ limit }) => limit === 'skinLeast')
      .map(({ needed }) => needed)
    expect(new Set(neededs)).toEqual(new Set([12]))
  })
})

describe('the sun', () => {
  it('stands on one side of a boat in the open at a time, and on none under a cover', () => {
    const open = plan(standing({ shelter: 'open' }))
    expect(limitsIn(open)).toContain('hotSun')
    expect(limitsIn(plan(sample))).not.toContain('hotSun')
    const bow = standing({ shelter: 'open' }).work.place
    const { bowBearing: _bow, ...unknown } = bow
    const adrift = plan({ ...sample, work: { ...sample.work, place: unknown } })
    expect(limitsIn(adrift, 'port')).not.toContain('hotSun')
  })
})
