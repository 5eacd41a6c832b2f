import { describe, expect, it } from 'vitest'
import { absorptanceOf, paintColours } from './paint-colours.ts'

const of = (colour: string, shade?: 'light' | 'medium' | 'dark') => absorptanceOf({ colour, shade })

describe('how much of the sun a colour takes in', () => {
  it('goes by its name and what the name says of its shade', () => {
    expect(of('white')).toBe(0.26)
    expect(of('Off-white')).toBe(0.35)
    expect(of('Signal red')).toBe(0.75)
    expect(of('pale teal')).toBe(0.5)
    expect(of('dark blue')).toBe(0.9)
    expect(of('slate blue')).toBe(0.9)
    expect(of('light gray')).toBe(0.45)
    expect(of('dark grey')).toBe(0.9)
  })

  it('goes by the shade of the sheet where the name says none, and the name comes first', () => {
    expect(of('blue', 'dark')).toBe(0.9)
    expect(of('blue')).toBe(0.75)
    expect(of('pale blue', 'dark')).toBe(0.5)
    expect(of('Number 7', 'dark')).toBe(0.85)
  })

  it('is not known of a name that says nothing, nor of a colour within another word', () => {
    expect(of('Number 7')).toBeUndefined()
    expect(of('')).toBeUndefined()
    expect(of('redwood-like')).toBeUndefined()
  })

  it('is a share, more for each darker shade, and has its source', () => {
    for (const { absorptance, source, shade, words } of paintColours) {
      expect(absorptance).toBeGreaterThan(0.2)
      expect(absorptance).toBeLessThan(1)
      expect(source).not.toBe('')
      const lighter = paintColours.find((one) => one.words === words && one.shade === 'light')
      if (shade !== undefined && shade !== 'light') expect(absorptance).toBeGreaterThan(lighter!.absorptance)
    }
  })
})
