import { describe, expect, it } from 'vitest'
import { families } from '#job'
import { type Hazard, hazardFlags, protections } from './hazard-type.ts'
import { hazards } from './hazards.ts'
import { standingCautions } from './standing-cautions.ts'

const all = [...hazards, ...standingCautions]
const find = (id: string): Hazard | undefined => all.find((row) => row.id === id)

describe('hazards', () => {
  it('have an id and a code of their own, and a source', () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length)
    for (const { id, code, source, certainty } of all) {
      expect(code).toBe(`caution.${id}`)
      expect(source, id).not.toBe('')
      expect(certainty, id).toBe(source.startsWith('assumed') ? 'assumed' : 'typical')
    }
  })

  it('are each brought by something, and every flag and wet family brings one', () => {
    for (const { id, families: of, flags } of all) expect(of.length + flags.length, id).toBeGreaterThan(0)
    const flagged = new Set(all.flatMap(({ flags }) => flags))
    expect(Object.keys(hazardFlags).filter((flag) => !flagged.has(flag as keyof typeof hazardFlags))).toEqual(
      [],
    )
    const bringing = new Set(all.flatMap((row) => row.families))
    expect(families.filter((family) => !bringing.has(family))).toEqual(['acrylic'])
  })

  it('name only protection that has a key', () => {
    for (const { id, protection } of all)
      expect(
        protection.filter((each) => !protections.includes(each)),
        id,
      ).toEqual([])
  })

  it.each([
    'standCover',
    'standMove',
    'fuelTank',
    'unventedFlame',
    'peroxideMix',
    'sensitisedPerson',
    'flashPoint',
    'wetFloorPower',
  ])('%s is a danger', (id) => {
    expect(find(id)?.severity).toBe('danger')
  })

  it('keep what is left alone a notice: the boat is harmed, not a person', () => {
    expect(find('leaveAlone')?.severity).toBe('notice')
  })

  it('count one-part paint among what makes rags burn, and epoxy among what heats in the pot', () => {
    expect(find('oilyRags')?.families).toContain('one-part')
    expect(find('leftovers')?.families).toContain('epoxy')
  })
})
