import { describe, expect, it } from 'vitest'
import { packParts, partsDisagree } from './pack-parts.ts'

const figure = (litres: number) => ({
  value: litres * 1e-3,
  text: `${litres} L`,
  certainty: 'measured' as const,
})
const twoPart = { mix: { value: [3, 1], certainty: 'sheet' as const } }
const onePart = { mix: { value: [1], certainty: 'sheet' as const } }
const pack = (own: { volume: number; partA?: number; partB?: number }) => ({
  id: 'can',
  sheet: 'paint',
  volume: figure(own.volume),
  ...(own.partA === undefined ? {} : { partA: figure(own.partA) }),
  ...(own.partB === undefined ? {} : { partB: figure(own.partB) }),
})
const litres = (parts: readonly number[]) => parts.map((part) => Number((part * 1000).toPrecision(9)))

describe('the parts of a pack', () => {
  it.each([
    ['by the mix ratio where nothing is written', { volume: 4 }, [3, 1]],
    ['as written on it', { volume: 4, partA: 2.9, partB: 1.1 }, [2.9, 1.1]],
    ['one part by itself where it fills the pack', { volume: 1, partB: 1 }, [0, 1]],
    ['the rest of the volume where one part is written', { volume: 4, partA: 2.8 }, [2.8, 1.2]],
    ['one part by itself where only rounding is left', { volume: 0.95, partA: 0.946 }, [0.946, 0]],
  ])('are %s', (_, own, expected) => {
    expect(litres(packParts(pack(own), twoPart))).toEqual(expected)
  })

  it('are the whole pack of a one-part', () => {
    expect(litres(packParts(pack({ volume: 2.5 }), onePart))).toEqual([2.5])
  })

  it('disagree with its volume when they make more than a slip of rounding', () => {
    expect(partsDisagree(pack({ volume: 4, partA: 3, partB: 1 }))).toBe(false)
    expect(partsDisagree(pack({ volume: 4, partA: 3, partB: 1.5 }))).toBe(true)
    expect(partsDisagree(pack({ volume: 4, partA: 3 }))).toBe(false)
  })
})
