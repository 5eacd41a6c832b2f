import { describe, expect, it } from 'vitest'
import { hullFromSizes } from './hull-from-sizes.ts'
import { compareHullWithRules, ruleSizesOf } from './rule-sizes.ts'
import { compareWithRules, rulesOfThumb } from './rules-of-thumb.ts'

const sizes = { lengthOverall: 7.5, lengthWaterline: 6.7, beam: 2.5, draft: 0.45, freeboard: 0.9 }

describe('rules of thumb', () => {
  it('each have a source and a name of their own', () => {
    const rules = rulesOfThumb(sizes)
    for (const rule of rules) expect(rule.source.length).toBeGreaterThan(10)
    expect(new Set(rules.map((rule) => rule.id)).size).toBe(rules.length)
  })

  it('stand beside the worked area with their difference', () => {
    const { rows, notes } = compareWithRules(sizes, { topsides: 19.8 })
    expect(rows).toHaveLength(1)
    expect(rows[0]).toMatchObject({ area: expect.closeTo(18, 9), differenceShare: expect.closeTo(0.1, 9) })
    expect(notes).toEqual([])
  })

  it('give a note only when even the nearest is more than a fifth off', () => {
    const bottom = (area: number) => compareWithRules(sizes, { bottom: area }).notes
    expect(bottom(16)).toEqual([])
    expect(bottom(12)).toMatchObject([
      {
        code: 'boat.areaFarFromRule',
        severity: 'info',
        data: { zone: 'bottom', rule: 'bottom.overall085', areaM2: 12, ruleAreaM2: expect.closeTo(15.94, 2) },
      },
    ])
    expect(compareWithRules(sizes, { topsides: 18 * 1.21 }).notes).toHaveLength(1)
    expect(compareWithRules(sizes, { topsides: 18 * 1.19 }).notes).toHaveLength(0)
  })

  it('are explained one by one where another is near', () => {
    // 1.0 x 6.7 (2.5 + 0.45) = 19.77 m²: 32 % over a worked 13.5 m², while the other two are within a fifth.
    expect(compareWithRules(sizes, { bottom: 13.5 }).notes).toMatchObject([
      { code: 'boat.ruleDiffers', data: { rule: 'bottom.waterline100', areaM2: 13.5 } },
    ])
  })

  it('say nothing of sizes without sense', () => {
    expect(compareWithRules({ ...sizes, freeboard: Number.NaN }, { topsides: 18 })).toEqual({
      rows: [],
      notes: [],
    })
    expect(compareWithRules({ ...sizes, freeboard: 0 }, { topsides: 18 }).rows).toEqual([])
  })

  it('are met within a fifth by a drawn powerboat', () => {
    const result = hullFromSizes({ form: 'hard-chine', lengthOverall: 7.7, beam: 2.5, freeboardStem: 1.25 })
    if (!result.ok) throw new Error(JSON.stringify(result.faults))
    const { rows, notes } = compareHullWithRules(result.hull)
    expect(notes.map(({ data }) => data.rule)).toEqual(['bottom.waterline100'])
    expect(new Set(rows.map((row) => row.zone))).toEqual(new Set(['topsides', 'deck', 'bottom']))
    expect(ruleSizesOf(result.hull).freeboard).toBeCloseTo((1.25 * (1 + 0.82 + 0.76)) / 3, 3)
  })
})
