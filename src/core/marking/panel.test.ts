import { describe, expect, it } from 'vitest'
import { panel } from './panel.ts'

const field = { lengthM: 0.6, widthM: 0.4, borderM: 0.038, cornerRadiusM: 0, count: 1 }
const codes = (input: Parameters<typeof panel>[0]): string[] => panel(input).notes.map((note) => note.code)

describe('panel', () => {
  it('rounds its corners off the area and the edge', () => {
    const got = panel({ ...field, cornerRadiusM: 0.022, count: 3 }).panel!
    expect(got.areaM2).toBeCloseTo(0.524 * 0.324 - (4 - Math.PI) * 0.022 ** 2, 12)
    expect(got.perimeterM).toBeCloseTo(2 * (0.524 + 0.324) - 8 * 0.022 + 2 * Math.PI * 0.022, 12)
    expect(got.allAreaM2).toBeCloseTo(3 * got.areaM2, 12)
    expect(got.tapeM).toBeCloseTo(3 * got.perimeterM, 12)
  })

  it('becomes a disc when the radius is half the width of a square', () => {
    const got = panel({ lengthM: 0.4, widthM: 0.4, borderM: 0.1, cornerRadiusM: 0.1, count: 1 }).panel!
    expect(got.areaM2).toBeCloseTo(Math.PI * 0.1 ** 2, 12)
    expect(got.perimeterM).toBeCloseTo(2 * Math.PI * 0.1, 12)
  })

  it('assumes border and radius, and says so', () => {
    const got = panel({ lengthM: 0.6, widthM: 0.4, count: 1 })
    expect(got.panel).toMatchObject({ borderM: 0.038, cornerRadiusM: 0.013 })
    expect(got.notes.map((note) => [note.code, note.severity])).toEqual([
      ['marking.borderAssumed', 'assumed'],
      ['marking.radiusAssumed', 'assumed'],
    ])
  })

  it('notes a panel under 50 mm wide, and lets an assumed radius give way', () => {
    expect(codes({ ...field, widthM: 0.125 })).toEqual(['marking.panelNarrow'])
    expect(codes({ ...field, widthM: 0.127 })).toEqual([])
    const narrow = panel({ lengthM: 0.6, widthM: 0.096, borderM: 0.038, count: 1 }).panel
    expect(narrow?.cornerRadiusM).toBeCloseTo(0.01, 12)
  })

  it('refuses a radius over half the width, borders that meet, and sizes that are none', () => {
    expect(codes({ ...field, cornerRadiusM: 0.163 })).toEqual(['marking.cornerRadiusTooLarge'])
    expect(codes({ ...field, cornerRadiusM: 0.162 })).toEqual([])
    expect(codes({ ...field, borderM: 0.2 })).toEqual(['marking.bordersMeet'])
    expect(codes({ ...field, lengthM: Number.NaN })).toEqual(['marking.panelSize'])
    expect(codes({ ...field, widthM: -1 })).toEqual(['marking.panelSize'])
    expect(codes({ ...field, count: 0 })).toEqual(['marking.panelSize'])
  })
})
