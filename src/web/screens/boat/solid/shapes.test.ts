// A cube with its faces as zones stands in for a boat: what is seen of it, and where its outline runs, can be said.
import { describe, expect, it } from 'vitest'
import type { Solid, SolidFace } from '#plan'
import { dashesOf } from './dashes.ts'
import { chainsOf, edgeTable, outlineOf } from './outlines.ts'
import { faceAt, placeOn } from './pick.ts'
import { pictureOf } from './picture.ts'
import { stillShapes } from './still-shapes.ts'
import { axesOf, type Camera, extentOf, namedViews, projected, type View } from './view.ts'

/** Corner n has x, y, z of its three bits. */
const positions = Float32Array.from([0, 1, 2, 3, 4, 5, 6, 7].flatMap((n) => [n & 1, (n >> 1) & 1, n >> 2]))
const face = (id: string, kind: SolidFace['kind'], corners: readonly number[]): SolidFace => {
  const [a, b, c, d] = corners as [number, number, number, number]
  return {
    id,
    kind,
    zone: `zone ${id}`,
    rough: false,
    areaM2: 1,
    triangles: Uint32Array.from([a, b, c, a, c, d]),
    stations: Uint32Array.from([]),
    border: Uint32Array.from([a, b, b, c, c, d, d, a]),
  }
}
const faces = [
  face('starboard', 'topsides-starboard', [0, 1, 5, 4]),
  face('port', 'topsides-port', [2, 6, 7, 3]),
  face('transom', 'transom', [0, 4, 6, 2]),
  face('bow', 'transom', [1, 3, 7, 5]),
  face('bottom', 'bottom', [0, 2, 3, 1]),
  face('deck', 'deck', [4, 5, 7, 6]),
]
const solid: Solid = { positions, faces, lines: [], points: new Float32Array() }
const corner: View = { turn: -Math.PI / 4, tilt: 0.6, zoom: 1, shift: [0, 0] }
const cameraOf = (view: View): Camera => ({
  view,
  size: { width: 200, height: 200 },
  extent: extentOf(positions),
})
const seen = (view: View) => projected(positions, cameraOf(view))
const lengthOf = (pairs: Uint32Array): number => pairs.length / 2

describe('the outline', () => {
  it('of a cube seen on a corner is six edges, of one seen square four', () => {
    const table = edgeTable(positions, faces)
    expect(lengthOf(outlineOf(table, axesOf(corner).eye))).toBe(6)
    expect(lengthOf(outlineOf(table, axesOf({ turn: 0.01, tilt: 0.01 }).eye))).toBe(6)
    expect(lengthOf(outlineOf(table, axesOf(namedViews.bow).eye))).toBe(4)
  })

  it('hangs together as a ring', () => {
    const chains = chainsOf(outlineOf(edgeTable(positions, faces), axesOf(corner).eye))
    expect(chains).toHaveLength(1)
    expect(chains[0]).toHaveLength(7)
    expect(chains[0]!.at(-1)).toBe(chains[0]![0])
  })
})

it('a line with ends is one chain from end to end, whatever order its pieces have', () => {
  expect(chainsOf(Uint32Array.from([3, 4, 1, 2, 2, 3]))).toEqual([[1, 2, 3, 4]])
})

it('dashes are as long as asked, on over the points of a line', () => {
  const line = { x: Float32Array.from([0, 10, 10]), y: Float32Array.from([0, 0, 10]) }
  const dashes = dashesOf([[0, 1, 2]], line, [8, 4])
  const lengths = dashes.map(([a, b]) => Math.abs(b.share - a.share) * 10)
  expect(lengths.map((length) => Number(length.toFixed(6)))).toEqual([8, 8])
})

describe('pointing at the boat', () => {
  it('finds the nearest face, and none beside her', () => {
    const at = seen(namedViews.side)
    expect(faceAt(faces, at, [100, 100])?.id).toBe('starboard')
    expect(faceAt(faces, seen(namedViews.above), [100, 100])?.id).toBe('deck')
    expect(faceAt(faces, seen(namedViews.astern), [100, 100])?.id).toBe('transom')
    expect(faceAt(faces, at, [2, 2])).toBeUndefined()
  })

  it('points back at a face where it is seen, and nowhere where it is not', () => {
    const at = seen(corner)
    for (const id of ['starboard', 'bow', 'deck']) {
      const one = faces.find((each) => each.id === id)!
      expect(faceAt(faces, at, placeOn(faces, one, at)!)?.id).toBe(id)
    }
    expect(placeOn(faces, faces[1]!, at)).toBeUndefined()
  })
})

describe('the still picture', () => {
  const drawn = (view: View) => {
    const picture = pictureOf(solid, () => undefined, {
      finish: 'drawn',
      chosen: 'zone deck',
      hovered: undefined,
    })
    const camera = cameraOf(view)
    // On the middle of the starboard and of the port face.
    const points = projected([0.5, 0, 0.5, 0.5, 1, 0.5], camera)
    return stillShapes({ ...picture, at: seen(view), points, camera })
  }

  it('shows the faces that look at the eye, the deck before what may hide it', () => {
    expect(drawn(corner).faces.map(({ look }) => look.face.id)).toEqual(['deck', 'bow', 'starboard'])
    expect(drawn(namedViews.side).faces.map(({ look }) => look.face.id)).toEqual(['starboard'])
    const below = drawn({ ...corner, tilt: -0.6 })
    expect(below.faces.map(({ look }) => look.face.id)).toEqual(['starboard', 'bow', 'bottom'])
  })

  it('leaves hidden points out', () => {
    expect(drawn(corner).dots).toHaveLength(1)
    expect(drawn({ ...corner, turn: 1.2 }).dots).toHaveLength(1)
    expect(drawn(namedViews.astern).dots).toHaveLength(2)
  })

  it('leaves hidden lines out', () => {
    const pieces = (view: View) => drawn(view).lines.find(({ look }) => look.key === 'border deck')?.path
    expect(pieces(corner)?.match(/[ML]/g)).toHaveLength(5)
    // From below only its two near edges are seen, where the sides end.
    expect(pieces({ ...corner, tilt: -0.6 })?.match(/[ML]/g)).toHaveLength(3)
  })
})

describe('the look of a face', () => {
  const lookOf = (finish: 'drawn' | 'painted', chosen?: string) =>
    pictureOf(solid, (zone) => (zone === 'zone port' ? '#112233' : undefined), {
      finish,
      chosen,
      hovered: 'deck',
    }).faces.map(({ face: { id }, fill }) => [id, 'ink' in fill ? fill.ink : fill.paint])

  it('is paper, the one chosen selected, the one pointed at quiet', () => {
    expect(Object.fromEntries(lookOf('drawn', 'zone bow'))).toMatchObject({
      port: 'paper',
      bow: 'sel',
      deck: 'inset',
    })
  })

  it('is its paint only where it is asked for and known', () => {
    expect(Object.fromEntries(lookOf('drawn')).port).toBe('paper')
    expect(Object.fromEntries(lookOf('painted', 'zone port'))).toMatchObject({
      port: '#112233',
      starboard: 'paper',
    })
  })
})
