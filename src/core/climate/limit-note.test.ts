import { expect, it } from 'vitest'
import { limitNote } from './limit-note.ts'

it('carries the unit in its keys', () => {
  const note = limitNote({ limit: 'dewMargin', effect: 'no', needed: 3, had: 2.1, inHours: 4 })
  expect(note).toEqual({
    code: 'climate.limitDewMargin',
    severity: 'info',
    data: { effect: 'no', neededK: 3, hadK: 2.1, inHours: 4 },
  })
})

it('says that a figure is missing instead of giving one', () => {
  const note = limitNote({ limit: 'rain', effect: 'risky', needed: 0, had: null, inHours: 0 })
  expect(note).toEqual({
    code: 'climate.limitRainUnknown',
    severity: 'missing',
    data: { effect: 'risky', neededMm: 0, inHours: 0 },
  })
})
