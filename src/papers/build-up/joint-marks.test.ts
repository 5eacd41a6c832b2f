import { describe, expect, it } from 'vitest'
import { jointMarks } from './joint-marks.ts'

const band = (id: string, top: number) => ({
  ...{ id, top, height: 7, coatLines: [] },
  ...{ between: 'keyed' as const, below: 'keyed' as const },
})
const bands = { bands: [band('new:1', 0), band('new:0', 7)], hollows: [], height: 14 }
const mark = { number: 1, id: 'new:1', breaks: true, above: false }
const lineOf = (of: typeof mark) =>
  jointMarks([of], bands, 50).find((shape) => shape.kind === 'line' && shape.ink === 'fault')

describe('numbers at the joints', () => {
  it('stand at the lower face of a layer, or at the one towards the weather', () => {
    expect(lineOf(mark)).toMatchObject({ points: [[0, 7], [50, 7]] }) // biome-ignore format: a row
    expect(lineOf({ ...mark, above: true })).toMatchObject({ points: [[0, 0], [50, 0]] }) // biome-ignore format: a row
  })

  it('stand side by side, over the lines of all, and not where there is no such layer', () => {
    const drawing = jointMarks([mark, { ...mark, number: 2 }, { ...mark, number: 3, id: 'new:9' }], bands, 50)
    const texts = drawing.flatMap((shape) => (shape.kind === 'text' ? [[shape.text, shape.at[0]]] : []))
    expect(texts.map(([text]) => text)).toEqual(['1', '2'])
    expect(texts[1]![1]).toBeGreaterThan(Number(texts[0]![1]) + 5)
    const lastLine = drawing.findLastIndex(({ kind }) => kind === 'line')
    expect(lastLine).toBeLessThan(drawing.findIndex(({ kind }) => kind === 'area'))
  })

  it('draw no line of fault for what only wants minding', () => {
    expect(lineOf({ ...mark, breaks: false })).toBeUndefined()
  })
})
