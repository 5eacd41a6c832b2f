import { expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { readCatalogue } from '../read-catalogue.ts'
import { type UsesInput, usesOf } from './uses-of.ts'

const known = readCatalogue.run({ catalogue })
const coat = (id: string, areaM2: number, method = 'roller') =>
  ({ id, kind: 'coat', sheet: 'gloss', coat: 1, method, areaM2 }) as UsesInput['steps']['steps'][number]
const rolled = (steps: readonly ReturnType<typeof coat>[], startMinutes: readonly number[]) =>
  usesOf({
    known,
    steps: { steps, notes: [] } as unknown as UsesInput['steps'],
    days: {
      days: [],
      placed: steps.map(({ id: step }, at) => ({ step, startMinute: startMinutes[at] })),
    } as unknown as UsesInput['days'],
    pours: { pours: [], notes: [] },
  })
    .filter(({ consumable }) => consumable === 'foam-cover')
    .map(({ quantity }) => quantity)

it('zones of one product on one day share a roller cover, another day takes a fresh one', () => {
  const three = [coat('a', 4), coat('b', 6), coat('c', 3)]
  expect(rolled(three, [480, 600, 480 + 24 * 60])).toEqual([10, 3])
})

it('what is brushed takes no roller', () => {
  expect(rolled([coat('a', 4, 'brush')], [480])).toEqual([])
})
