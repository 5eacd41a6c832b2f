import { describe, expect, it } from 'vitest'
import { createWords } from '#words'
import { usualFigure } from './usual-figure.ts'

const view = (system: 'metric' | 'us') => ({
  words: createWords({ locale: 'en-GB', system }),
  system,
  locale: 'en-GB',
})
const plain = (text: string | undefined) => text?.replace(/[\u2009\u00a0\u202f]/g, ' ')

describe('what the generic sheet has', () => {
  it('is said with its range in the reader’s units', () => {
    const at = { like: 'two-part-finish', key: 'dryFilm' }
    expect(plain(usualFigure(view('metric'), at))).toBe('Usual: 20 µm; 10 µm to 25 µm seen.')
    expect(plain(usualFigure(view('us'), at))).toMatch(/^Usual: 0\.787 mil; 0\.394 mil to 0\.984 mil seen\.$/)
  })

  it('is said as it stands where it is no single quantity', () => {
    expect(usualFigure(view('metric'), { like: 'two-part-finish', key: 'mix' })).toBe('Usual: 2:1.')
  })

  it('is nothing without a generic sheet, or for a cell that it leaves out', () => {
    expect(usualFigure(view('metric'), { like: '', key: 'mix' })).toBeUndefined()
    expect(usualFigure(view('metric'), { like: 'constructor', key: 'mix' })).toBeUndefined()
    expect(usualFigure(view('metric'), { like: 'two-part-finish', key: 'densityA' })).toBeUndefined()
  })
})
