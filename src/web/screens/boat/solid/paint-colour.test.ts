import { describe, expect, it } from 'vitest'
import { lineOn, paintColour } from './paint-colour.ts'

/** Hue in degrees and lightness as a share. */
const hueAndLightness = (text: string): readonly [hue: number, lightness: number] => {
  const colour = paintColour(text)!
  const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255) as [
    number,
    number,
    number,
  ]
  const [most, least] = [Math.max(r, g, b), Math.min(r, g, b)]
  const span = most - least || 1
  const sixth = most === r ? (g - b) / span : most === g ? 2 + (b - r) / span : 4 + (r - g) / span
  return [(60 * sixth + 360) % 360, (most + least) / 2]
}

describe('the colour of a paint', () => {
  it('is that of its plain words', () => {
    expect(hueAndLightness('red')[0]).toBeLessThan(10)
    expect(hueAndLightness('Green')[0]).toBeCloseTo(146, -1)
    expect(hueAndLightness('Blue')[0]).toBeCloseTo(212, -1)
    expect(hueAndLightness('white')[1]).toBeGreaterThan(0.93)
    expect(hueAndLightness('black')[1]).toBeLessThan(0.15)
    expect(paintColour('gray')).toBe(paintColour('grey'))
  })

  it('is darker or lighter by the word before, and tinged by a tone before', () => {
    expect(hueAndLightness('dark blue')[1]).toBeLessThan(hueAndLightness('blue')[1])
    expect(hueAndLightness('pale teal')[1]).toBeGreaterThan(hueAndLightness('teal')[1])
    expect(hueAndLightness('off-white')[1]).toBeLessThan(hueAndLightness('white')[1])
    expect(hueAndLightness('slate blue')[0]).toBeCloseTo(212, -1)
  })

  it('is none where no word names one', () => {
    for (const text of ['', 'as before', 'No. 4012', 'constructor']) expect(paintColour(text)).toBeUndefined()
  })
})

it('a line on a paint is ink or paper, whichever stands out', () => {
  expect(lineOn(paintColour('white')!)).toBe('#15202b')
  expect(lineOn(paintColour('dark blue')!)).toBe('#f8faf5')
})
