import { describe, expect, it } from 'vitest'
import { inOrder, movedPoint, moving, planeThrough, type Similarity, turning } from '#core/geometry'
import { normal } from '../../../../test/support/normal.ts'
import { type ScanMark, scanFrame } from './scan-frame.ts'

/** Marks in the boat frame: stem at the water, waterline aft on both sides, keel, stem head. */
const places: readonly ScanMark[] = [
  { id: 'stem', at: { x: 6.9, y: 0, z: 0 }, centred: true, height: 0 },
  { id: 'port', at: { x: 0.4, y: 1.1, z: 0 }, centred: false, height: 0 },
  { id: 'starboard', at: { x: 0.4, y: -1.1, z: 0 }, centred: false, height: 0 },
  { id: 'keel', at: { x: 1, y: 0, z: -0.4 }, centred: true },
  { id: 'stem head', at: { x: 7.6, y: 0, z: 1.2 }, centred: true },
  { id: 'middle', at: { x: 3.5, y: 1.2, z: 0 }, centred: false, height: 0 },
]
const degree = Math.PI / 180
const lying: Similarity = inOrder(
  inOrder(turning({ x: 1, y: 0, z: 0 }, 4 * degree), turning({ x: 0, y: 1, z: 0 }, -6 * degree)),
  inOrder(turning({ x: 0, y: 0, z: 1 }, 9 * degree), moving({ x: 2, y: -3, z: 1.4 })),
)
const seen = (marks: readonly ScanMark[] = places): readonly ScanMark[] =>
  marks.map((mark) => ({ ...mark, at: movedPoint(lying, mark.at) }))

const fitOf = (...asked: Parameters<typeof scanFrame>) => {
  const result = scanFrame(...asked)
  if (!result.ok) throw new Error(JSON.stringify(result.notes))
  return result
}

const expectBack = (move: Similarity, within: number) => {
  for (const { at } of places) {
    const back = movedPoint(move, movedPoint(lying, at))
    expect(Math.abs(back.y - at.y)).toBeLessThan(within)
    expect(Math.abs(back.z - at.z)).toBeLessThan(within)
  }
}

const raised = (mark: ScanMark): ScanMark => ({ ...mark, at: { ...mark.at, z: mark.at.z + 0.08 } })

describe('the frame of a scan', () => {
  it('is found from exact marks to a tenth of a millimetre', () => {
    // Closed form: the marks were turned by angles written down in this file.
    const { fit, notes } = fitOf({ marks: seen() })
    expectBack(fit.move, 1e-4)
    expect(fit.rms).toBeLessThan(1e-9)
    expect(notes).toEqual([])
  })

  it('takes the centreline from the plane of symmetry when three marks on the water do not tell it', () => {
    const three = seen().slice(0, 3)
    expect(scanFrame({ marks: three })).toMatchObject({
      ok: false,
      notes: [{ code: 'boat.scanMarksInLine' }],
    })
    const [a, b] = [movedPoint(lying, { x: 0, y: 0, z: 0 }), movedPoint(lying, { x: 0, y: 1, z: 0 })]
    const plane = planeThrough(a, { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z })
    const box = { least: { x: 0, y: -4, z: 0 }, most: { x: 10, y: -1, z: 3 } }
    expectBack(fitOf({ marks: three, mirror: { plane, box } }).fit.move, 1e-4)
  })

  it('names the mark that was picked 80 mm off, and no other', () => {
    const fifth = { id: 'fifth', at: { x: 4.5, y: -1.2, z: 0 }, centred: false, height: 0 }
    for (const slipped of ['port', 'middle', 'fifth']) {
      const marks = seen([...places, fifth]).map((mark) => (mark.id === slipped ? raised(mark) : mark))
      const data = { mark: slipped, way: 'up' }
      expect(fitOf({ marks }).notes[0]).toMatchObject({ code: 'boat.scanMarkDisagrees', data })
    }
  })

  it('sees a slip among four marks on the water, but not whose it is', () => {
    const marks = seen().map((mark) => (mark.id === 'middle' ? raised(mark) : mark))
    expect(fitOf({ marks }).notes).toMatchObject([{ code: 'boat.scanMarksDisagree' }])
  })

  it('blames nobody for what a finger misses by', () => {
    const random = normal(3)
    const blamed = Array.from({ length: 200 }, () => {
      const marks = seen().map((mark) => ({
        ...mark,
        at: { ...mark.at, y: mark.at.y + 0.01 * random(), z: mark.at.z + 0.01 * random() },
      }))
      return fitOf({ marks }).notes.length
    }).filter((count) => count > 0).length
    expect(blamed).toBeLessThan(6)
  })

  it('says that five ties cannot be checked, and that two marks are too few', () => {
    const five = seen().filter(({ id }) => !['starboard', 'middle'].includes(id))
    expect(fitOf({ marks: five }).notes).toMatchObject([{ code: 'boat.scanMarksUnchecked' }])
    expect(scanFrame({ marks: five.slice(0, 2) })).toMatchObject({
      ok: false,
      notes: [{ code: 'boat.scanMarksTooFew' }],
    })
  })
})
