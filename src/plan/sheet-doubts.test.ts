import { describe, expect, it } from 'vitest'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, withCell } from '../../test/support/samples.ts'

const raw = sampleRaw('open-powerboat')
const made = plan(planInput(projectRaw(raw), undefined))
const gloss = made.buildUps.layers.find(({ role }) => role === 'finish')!.sheet

/** The plan with these figures on the label of the gloss. */
const withLabel = (figures: Readonly<Record<string, string>>) =>
  plan(
    planInput(
      projectRaw(
        Object.entries(figures).reduce(
          (document, [key, text]) => withCell(document, 'work', ['sheets', gloss, key], text),
          raw,
        ),
      ),
      undefined,
    ),
  )
const doubts = (of: typeof made) => of.notes.filter(({ code }) => code === 'buildup.sheetContradicts')

describe('a label whose figures contradict', () => {
  it('is told what its solids and film give, and what film its coverage leaves', () => {
    // Spread = 10 x volume solids (%) / dry film (µm), trade table 9: 48 % at 50 µm goes 9.6 m²/L, not 11.
    const [doubt] = doubts(withLabel({ volumeSolids: '48 %', dryFilm: '50 µm', coverage: '11 m²/L' }))
    expect(doubt?.data).toMatchObject({ sheet: gloss, spreadM2PerL: 11 })
    expect(doubt?.data.theoreticalM2PerL).toBeCloseTo(9.6, 9)
    expect(doubt?.data.reachedUm).toBeCloseTo(480 / 11, 9)
  })

  it('is not doubted for a practical coverage below the theoretical one, nor for rounding', () => {
    const label = { volumeSolids: '48 %', dryFilm: '50 µm' }
    expect(doubts(withLabel({ ...label, coverage: '7.7 m²/L' }))).toEqual([])
    expect(doubts(withLabel({ ...label, coverage: '10 m²/L' }))).toEqual([])
    expect(doubts(withLabel({ ...label, coverage: '4 m²/L' }))).toHaveLength(1)
  })

  it('is not held against figures of a generic sheet', () => {
    expect(doubts(withLabel({ coverage: '30 m²/L' }))).toEqual([])
  })
})

describe('pours that one person lays into each other', () => {
  it('come with the advice to measure them out beforehand', () => {
    const quick = projectRaw(withCell(raw, 'work', ['sheets', gloss, 'potLife'], '20C: 45min'))
    const alone = plan({ ...planInput(quick, undefined), work: onlyOne(quick.work) })
    const split = new Set(alone.pours.pours.filter(({ of }) => of > 1).map(({ step }) => step))
    const told = alone.notes.filter(({ code }) => code === 'pours.mixedAlone')
    expect(split.size).toBeGreaterThan(0)
    expect(new Set(told.map(({ data }) => data.step))).toEqual(split)
  })

  it('come without it where two lay them', () => {
    const crew = new Map(
      made.days.placed.map(({ step, pieces }) => [step, pieces[0]?.people.length ?? 0] as const),
    )
    for (const { data } of made.notes.filter(({ code }) => code === 'pours.mixedAlone'))
      expect(crew.get(String(data.step))).toBe(1)
  })
})

function onlyOne(work: ReturnType<typeof projectRaw>['work']): typeof work {
  const first = work.shifts[0]!.person
  return { ...work, shifts: work.shifts.filter(({ person }) => person === first) }
}
