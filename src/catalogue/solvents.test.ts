import { describe, expect, it } from 'vitest'
import { findSolvent, type SolventFigure, solvents } from './solvents.ts'

describe('solvents', () => {
  it('are each found by every name, and no name means two of them', () => {
    const seen = new Set<string>()
    for (const solvent of solvents) {
      for (const name of new Set([solvent.id, solvent.name, ...solvent.otherNames])) {
        expect(findSolvent(` ${name.toUpperCase()} `)?.id).toBe(solvent.id)
        const key = name.toLowerCase()
        if (key !== solvent.id && key !== solvent.name.toLowerCase()) expect(seen.has(key)).toBe(false)
        seen.add(key)
      }
    }
    expect(findSolvent('water')).toBeUndefined()
  })

  it('have a source and a positive value for every figure', () => {
    for (const solvent of solvents) {
      const figures = Object.values(solvent).flat().filter(isFigure)
      expect(figures.length).toBeGreaterThanOrEqual(6)
      for (const figure of figures) {
        expect(figure.value).toBeGreaterThan(0)
        expect(figure.source).not.toBe('')
      }
    }
  })

  it('make the vapour that the regulation gives, from specific gravity and molar mass within 1.5 %', () => {
    for (const { vapourFt3PerGal, specificGravity, molarMassGPerMol } of solvents) {
      if (!vapourFt3PerGal) continue
      // 8.345 lb/gal of water and 387 ft³/lb-mol at 70 °F.
      const worked = (8.345 * specificGravity.value * 387) / molarMassGPerMol.value
      expect(Math.abs(worked / vapourFt3PerGal.value - 1)).toBeLessThan(0.015)
    }
  })

  it('hold no limit over the concentration that is dangerous at once', () => {
    for (const { pelPpm, relPpm, idlhPpm } of solvents) {
      expect(Math.max(pelPpm.value, relPpm.value)).toBeLessThan(idlhPpm.value)
    }
  })
})

function isFigure(cell: unknown): cell is SolventFigure {
  return typeof cell === 'object' && cell !== null && 'value' in cell
}
