import { describe, expect, it } from 'vitest'
import { createPlanner, plan } from '#plan'
import {
  planInput,
  projectRaw,
  type SampleName,
  sampleInput,
  sampleRaw,
  sampleWeather,
  withCell,
} from '../../test/support/samples.ts'

const names: readonly SampleName[] = ['open-powerboat', 'deck-only', 'cruiser-topsides']

describe.each(names)('the plan of %s', (name) => {
  const input = sampleInput(name)
  const made = plan(input)

  it('places every step', () => {
    expect(made.days.unplaced).toEqual([])
    expect(made.days.workEndMinute).toBeGreaterThan(made.days.startMinute)
  })

  it('has no fault', () => {
    expect(made.notes.filter((note) => note.severity === 'fault')).toEqual([])
  })

  it('gives every zone that is painted an area, every layer litres and every product packs', () => {
    for (const layer of made.buildUps.layers) expect(layer.areaM2).toBeGreaterThan(0)
    expect(made.quantities.layers).toHaveLength(made.buildUps.layers.length)
    for (const item of made.stores.items) expect(item.shortM3).toBe(0)
  })

  it('is byte for byte the same when it is made again', () => {
    expect(JSON.stringify(plan(sampleInput(name)))).toBe(JSON.stringify(made))
  })

  it('runs without money and says so', () => {
    const { money: _money, ...without } = input
    const poor = plan(without)
    expect(poor.money).toBeUndefined()
    expect(poor.notes.map((note) => note.code)).toContain('money.notShown')
    expect(poor.days).toEqual(made.days)
  })

  it('puts no step before one it needs, and no coat outside the hours it may have', () => {
    const at = new Map(made.days.placed.map((placed) => [placed.step, placed]))
    for (const step of made.steps.steps) {
      for (const need of step.needs) {
        expect(at.get(step.id)!.startMinute).toBeGreaterThanOrEqual(at.get(need.step)!.endMinute)
      }
      if (step.hoursKey !== undefined) expect(at.get(step.id)!.verdict).not.toBe('no')
    }
  })

  it('reckons money so that the lines shown add up to the totals shown', () => {
    const { money } = made
    if (!money) throw new Error('the sample has prices')
    const sum = money.lines.reduce((total, line) => total + (line.coins ?? 0), 0)
    expect(sum + money.marginCoins).toBe(money.netCoins)
    expect(money.netCoins + money.taxCoins).toBe(money.totalCoins)
  })
})

describe('ids of steps', () => {
  const raw = sampleRaw('open-powerboat')
  const idsOf = (document: typeof raw) =>
    plan(planInput(projectRaw(document), undefined))
      .steps.steps.map((step) => step.id)
      .sort()
  const before = idsOf(raw)

  it('are the same after an edit of a size, a name or a figure', () => {
    expect(idsOf(withCell(raw, 'work', ['boat', 'beam'], '2.80 m'))).toEqual(before)
    expect(idsOf(withCell(raw, 'work', ['zones', 'foredeck', 'name'], 'Fore deck'))).toEqual(before)
    expect(idsOf(withCell(raw, 'work', ['zones', 'foredeck', 'area'], '5 m²'))).toEqual(before)
  })

  it('are told apart, each once', () => {
    expect(new Set(before).size).toBe(before.length)
  })

  it('keep their meaning when a coat is added: old ids stay, new ones come', () => {
    const layer = Object.keys(
      (raw.work as Record<string, Record<string, Record<string, string>>>).layers!,
    ).find((id) => id.includes('gloss'))!
    const more = idsOf(withCell(raw, 'work', ['layers', layer, 'coats'], '4'))
    expect(before.filter((id) => !more.includes(id))).toEqual([])
    expect(more.length).toBeGreaterThan(before.length)
  })
})

describe('the trace of an edit', () => {
  const weather = sampleWeather('open-powerboat')
  const raw = sampleRaw('open-powerboat')

  /** Names of the stages that ran again after an edit. */
  function ranAfter(part: 'work' | 'money', path: readonly string[], text: string): readonly string[] {
    const planner = createPlanner()
    const first = projectRaw(raw)
    planner.plan(planInput(first, weather))
    const { trace } = planner.plan(planInput(projectRaw(withCell(raw, part, path, text), first), weather))
    return trace.filter((entry) => entry.ran).map((entry) => entry.stage)
  }

  it('is empty when nothing changed', () => {
    expect(ranAfter('work', ['zones', 'foredeck', 'area'], '3.4 m²')).toEqual([])
  })

  it('holds only money for a price', () => {
    expect(ranAfter('money', ['terms', 'margin'], '31 %')).toEqual(['money', 'stamp money terms'])
  })

  it('leaves the days alone when only the thinner of a coat changes', () => {
    const sheet = 'hull-gloss'
    const ran = ranAfter('work', ['sheets', sheet, 'thinnerMost'], '40 %')
    expect(ran).toContain('buildUps')
    expect(ran).not.toContain('surfaces')
    expect(ran).not.toContain('calendar')
  })

  it('does not run a stage that the edit does not reach', () => {
    expect(ranAfter('work', ['job', 'owner'], 'Somebody Else')).toEqual(['stamp work job'])
  })

  it('does not run a stage behind one whose result came out the same', () => {
    const ran = ranAfter('work', ['findings', 'seat-holes', 'photo'], 'IMG 7')
    expect(ran).toContain('repairs')
    expect(ran).not.toContain('pours')
    expect(ran).not.toContain('stores')
  })

  it('judges the hours of one product alone when its limits change', () => {
    const ran = ranAfter('work', ['sheets', 'hull-gloss', 'airLeast'], '11 °C')
    expect(ran.filter((stage) => stage.startsWith('conditions hours'))).toEqual([
      'conditions hours boat|hull-gloss',
    ])
    expect(ran).not.toContain('conditions air boat')
  })

  it('gives the same plan as one made from nothing', () => {
    const planner = createPlanner()
    const first = projectRaw(raw)
    planner.plan(planInput(first, weather))
    const edited = withCell(raw, 'work', ['boat', 'beam'], '2.70 m')
    const remembered = planner.plan(planInput(projectRaw(edited, first), weather)).plan
    expect(JSON.stringify(remembered)).toBe(JSON.stringify(plan(planInput(projectRaw(edited), weather))))
  })
})

describe('the log', () => {
  it('takes a step that is done out of the calendar, and a correction puts it back', () => {
    const input = sampleInput('open-powerboat')
    const done = { id: 'a', at: '2027-04-12T12:00+02:00', kind: 'done', step: 'survey' } as const
    const taken = { id: 'b', at: '2027-04-12T13:00+02:00', kind: 'not done', step: 'survey' } as const
    const survey = (log: typeof input.log) =>
      plan({ ...input, log }).days.placed.find((placed) => placed.step === 'survey')
    expect(survey([done])?.done).toBe(true)
    expect(survey([done, taken])?.done).toBe(false)
  })
})
