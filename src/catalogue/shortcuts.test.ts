import { describe, expect, it } from 'vitest'
import { sentence } from '#words'
import { shortcuts, temptingShortcuts } from './shortcuts.ts'

const reader = { locale: 'en-GB', system: 'metric' } as const

describe('a shortcut that fails', () => {
  it('has a name, a sentence that says what helps and defers to the sheet where it is close, and a source', () => {
    for (const { id, source } of shortcuts) {
      expect(sentence(`shortcut.${id}`, {}, reader), id).toMatch(/^[A-Z].{40,}\.$/)
      expect(source.length, id).toBeGreaterThan(5)
    }
  })

  it('stands beside the build-up that tempts to it', () => {
    const ids = (families: readonly string[], existing: string) =>
      temptingShortcuts(families, existing).map(({ id }) => id)
    expect(ids(['two-part polyurethane'], 'one-part')[0]).toBe('twoPartOverOnePart')
    expect(ids(['epoxy'], 'bare laminate')).toContain('solventOnLaminate')
    expect(ids(['epoxy'], 'gelcoat')).not.toContain('solventOnLaminate')
    expect(ids(['acrylic'], 'acrylic')).toEqual([])
  })
})
