import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { answeredRaw, planInput, projectRaw, withCell } from '../../test/support/samples.ts'

const base = answeredRaw('cuddy powerboat')

/** A lead in the week and a helper at other times, and a cleat whose nut is behind a liner. */
function withHelper(days: string, from = '09:00'): typeof base {
  const cells: readonly (readonly [readonly string[], string])[] = [
    [['people', 'helper', 'name'], 'Sam'],
    [['people', 'helper', 'role'], 'helper'],
    [['shifts', 'more', 'person'], 'helper'],
    [['shifts', 'more', 'days'], days],
    [['shifts', 'more', 'from'], from],
    [['shifts', 'more', 'until'], '15:00'],
    [['fittings', 'cleat', 'name'], 'Bow cleat'],
    [['fittings', 'cleat', 'zone'], 'foredeck'],
    [['fittings', 'cleat', 'plan'], 'refit'],
    [['fittings', 'cleat', 'reach'], 'behind a liner'],
  ]
  return cells.reduce((document, [path, text]) => withCell(document, 'work', path, text), base)
}
const planOf = (document: typeof base) => plan(planInput(projectRaw(document), undefined))
const crewOf = (of: ReturnType<typeof plan>, step: string) =>
  of.steps.steps.find(({ id }) => id === step)?.paces[0]?.crew

describe('work that takes a hand on either side', () => {
  it('is planned for one, and says so, where the two never meet', () => {
    const made = planOf(withHelper('Sat, Sun'))
    expect(made.days.unplaced).toEqual([])
    expect(crewOf(made, 'off:cleat')).toBe(1)
    const told = made.notes.find(({ code }) => code === 'steps.secondHand')
    expect(told?.data).toMatchObject({ name: 'Bow cleat', reach: 'behind a liner' })
  })

  it('waits for both where they do', () => {
    const made = planOf(withHelper('Fri'))
    expect(made.days.unplaced).toEqual([])
    expect(crewOf(made, 'off:cleat')).toBe(2)
    expect(made.notes.map(({ code }) => code)).not.toContain('steps.secondHand')
  })
})

describe('the lead', () => {
  it('surveys, snags and hands over, whoever else is free', () => {
    const made = planOf(withHelper('Mon-Sun', '06:00'))
    const people = new Set(
      made.days.placed
        .filter(({ step }) => ['survey', 'snag', 'handover'].includes(step))
        .flatMap(({ pieces }) => pieces.flatMap((piece) => piece.people)),
    )
    expect([...people]).toEqual(['lead'])
  })
})

describe('a coat in hours that nobody has judged', () => {
  it('is not known to be good', () => {
    const made = planOf(base)
    const steps = new Map(made.steps.steps.map((step) => [step.id, step]))
    const verdicts = (asks: boolean) =>
      new Set(
        made.days.placed
          .filter(({ step }) => (steps.get(step)?.hoursKey !== undefined) === asks)
          .map(({ verdict }) => verdict),
      )
    expect([...verdicts(true)]).toEqual(['unknown'])
    expect([...verdicts(false)]).toEqual(['go'])
    expect(made.notes.map(({ code }) => code)).toContain('days.beyondWeather')
  })
})
