import { describe, expect, it } from 'vitest'
import type { ZoneArea, ZoneLayer } from '../types.ts'
import { gripNotes } from './grip.ts'

const zone = (cells: Partial<ZoneArea> = {}): ZoneArea =>
  ({ id: 'deck', name: 'Deck', kind: 'foredeck', texture: 'smooth', areaM2: 4, ...cells }) as ZoneArea
const layer = (cells: Partial<ZoneLayer> = {}): ZoneLayer =>
  ({ zone: 'deck', role: 'finish', areaM2: 4, additiveShare: 0, broadcastKgPerM2: 0, ...cells }) as ZoneLayer
const off = { deck: { patternOff: 'whole' as const, mendedM2: 0, sandedWith: '' } }
const isTold = (zones: readonly ZoneArea[], layers: readonly ZoneLayer[], grounds = {}) =>
  gripNotes({ zones, layers, grounds }).length === 1

describe('grip under foot', () => {
  it.each([
    ['a smooth deck in gloss', true, [zone()], [layer()], {}],
    ['a hull side', false, [zone({ kind: 'topsides' })], [layer()], {}],
    ['bead in the gloss', false, [zone()], [layer({ additiveShare: 0.1 })], {}],
    ['non-skid as the last layer', false, [zone()], [layer({ role: 'non-skid' })], {}],
    ['a moulded pattern that stays', false, [zone({ texture: 'moulded non-skid' })], [layer()], {}],
    ['a pattern that is ground off', true, [zone({ texture: 'moulded non-skid' })], [layer()], off],
    [
      'a pattern that is faired over',
      true,
      [zone({ texture: 'moulded non-skid' })],
      [layer({ role: 'fairing' }), layer()],
      {},
    ],
    ['non-skid fields laid out', false, [zone(), zone({ id: 'f', kind: 'non-skid' })], [layer()], {}],
  ] as const)('%s: told %s', (_, told, zones, layers, grounds) => {
    expect(isTold(zones, layers, grounds)).toBe(told)
  })
})
