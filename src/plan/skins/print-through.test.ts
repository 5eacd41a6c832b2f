import { describe, expect, it } from 'vitest'
import { createPlanner, type Plan, type PlanInput, plan } from '#plan'
import { sampleInput } from '../../../test/support/samples.ts'

const sample = sampleInput('cruiser-topsides')
/** A still week of high summer: 30 °C at noon, a clear sky, no wind. */
const hours = 7 * 24
const summer: NonNullable<PlanInput['weather']> = {
  kind: 'hourlySeries',
  startMs: Date.UTC(2027, 6, 1),
  hours,
  airC: Float64Array.from({ length: hours }, (_, hour) => 25 - 5 * Math.cos((2 * Math.PI * (hour - 2)) / 24)),
  humidityShare: new Float64Array(hours).fill(0.5),
  windMps: new Float64Array(hours).fill(0.5),
  cloudShare: new Float64Array(hours),
  gaps: [],
  source: 'made',
  licence: 'made',
}
const coloured = (colour: string, shade: 'light' | 'medium' | 'dark' = 'medium'): PlanInput => ({
  ...sample,
  weather: summer,
  work: {
    ...sample.work,
    sheets: sample.work.sheets.map((sheet) =>
      sheet.role === 'finish' ? { ...sheet, colour, shade } : sheet,
    ),
  },
})
const told = (of: Plan) => of.notes.filter(({ code }) => code === 'conditions.printThrough')

describe('print-through of a finish', () => {
  it('is told of dark topsides in summer with the hour, and of white ones not', () => {
    const [note] = told(plan(coloured('navy')))
    expect(note).toMatchObject({ severity: 'notice', data: { colour: 'navy', softensC: 50 } })
    expect(note!.data.hottestC).toBeGreaterThan(50)
    expect(note!.data.hottestC).toBeLessThan(80)
    const clock = new Date(note!.data.hottestAtMs as number).getUTCHours()
    expect(clock).toBeGreaterThan(6)
    expect(clock).toBeLessThan(19)
    expect(told(plan(coloured('white')))).toEqual([])
  })

  it('names a share of the sun that would stay under, less than that of the colour', () => {
    const [note] = told(plan(coloured('navy')))
    expect(note!.data.remedy).toBe('colour')
    expect(note!.data.coolShare).toBeGreaterThan(0.3)
    expect(note!.data.coolShare).toBeLessThan(0.9)
  })

  it('is the same whatever stands over the boat now, and wherever its bow points', () => {
    const input = coloured('navy')
    const { bowBearing: _bow, ...place } = input.work.place
    const open = plan({ ...input, work: { ...input.work, place: { ...place, shelter: 'open' } } })
    expect(told(open)).toEqual(told(plan(input)))
  })

  it('is not told without weather, without a place, or of a colour that says nothing', () => {
    const { weather: _none, ...dry } = coloured('navy')
    expect(told(plan(dry))).toEqual([])
    const { latitude: _latitude, ...place } = coloured('navy').work.place
    expect(told(plan({ ...coloured('navy'), work: { ...coloured('navy').work, place } }))).toEqual([])
    const unnamed = sample.work.sheets.map(({ colour: _colour, shade: _shade, ...sheet }) => sheet)
    expect(told(plan({ ...coloured(''), work: { ...sample.work, sheets: unnamed } }))).toEqual([])
  })

  it('works only the skin of a colour that is new', () => {
    const planner = createPlanner()
    planner.plan(coloured('navy'))
    const { trace } = planner.plan(coloured('red'))
    const ran = trace.filter((entry) => entry.ran).map(({ stage }) => stage)
    expect(ran).toContain('print-through side 0.75')
    expect(ran).not.toContain('skin sky')
    expect(ran).not.toContain('skin faces')
  })
})
