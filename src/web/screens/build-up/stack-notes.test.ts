import { expect, it } from 'vitest'
import { stackNotes } from './stack-notes.ts'

const note = (code: string, severity: 'caution' | 'assumed', data: Record<string, string>) => ({
  code,
  severity,
  data,
})
const plan = {
  buildUps: {
    layers: [{ layer: 'gloss', sheet: 'finish' }],
    notes: [
      note('buildup.scratchesUnderDark', 'caution', { layer: 'gloss' }),
      note('buildup.scratchesShow', 'caution', { layer: 'another' }),
      note('buildup.sheetContradicts', 'caution', { sheet: 'finish' }),
      note('buildup.sheetContradicts', 'caution', { sheet: 'another' }),
      note('buildup.figuresAssumed', 'assumed', { sheet: 'finish' }),
    ],
  },
  quantities: { notes: [note('quantities.repairsWithoutMaterial', 'caution', {})] },
} as unknown as Parameters<typeof stackNotes>[1]

it('tells of its own layers and products, and of what is about neither', () => {
  const layers = [{ layer: 'gloss' }] as unknown as Parameters<typeof stackNotes>[0]['layers']
  expect(stackNotes({ layers }, plan).map(({ code }) => code)).toEqual([
    'buildup.scratchesUnderDark',
    'buildup.sheetContradicts',
    'quantities.repairsWithoutMaterial',
  ])
})
