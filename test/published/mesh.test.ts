// Measured triangle meshes against areas, lengths and volumes of surfaces with a formula.
import { describe, expect, it } from 'vitest'
import {
  clipMesh,
  flippedPlane,
  levelPlane,
  meshArea,
  meshVolume,
  planeSection,
  repairMesh,
  splitByPlane,
  type TriangleMesh,
} from '#core/geometry'
import { gridMesh, parabolicHull } from '../support/hull-meshes.mjs'
import { checkPublished, figure, type Given } from './published.ts'

const repaired = (mesh: TriangleMesh, tolerance: number) => repairMesh(mesh, { tolerance, distinct: false })

type Steps = { readonly along: number; readonly up: number }
type Shape = (given: Given, steps: Steps) => TriangleMesh

/** A full turn about x, or `part` of one, of a radius over the share of the length. */
const revolved =
  (part: number, curve: (given: Given, u: number) => { readonly x: number; readonly r: number }): Shape =>
  (given, steps) =>
    gridMesh(steps, (u, v) => {
      const { x, r } = curve(given, u)
      const angle = 2 * Math.PI * part * v
      return [x, r * Math.cos(angle), r * Math.sin(angle)]
    })

const spheroid = revolved(0.5, (given, u) => ({
  x: -figure(given, 'a') * Math.cos(Math.PI * u),
  r: figure(given, 'b') * Math.sin(Math.PI * u),
}))

const frustum = revolved(1, (given, u) => ({
  x: u * figure(given, 'h'),
  r: figure(given, 'R') + u * (figure(given, 'r') - figure(given, 'R')),
}))

const zone = revolved(1, (given, u) => {
  const radius = figure(given, 'R')
  const x = 0.4 + u * figure(given, 'h')
  return { x, r: Math.sqrt(radius * radius - x * x) }
})

const bottom: Shape = (given, { along, up }) =>
  gridMesh({ along, up: 2 * up }, (u, v) => {
    const y = figure(given, 'beamM') * (v - 0.5)
    return [
      u * figure(given, 'lengthM'),
      y,
      Math.abs(y) * Math.tan((figure(given, 'deadriseDeg') * Math.PI) / 180),
    ]
  })

const parabolic: Shape = (given, steps) => parabolicHull({ length: figure(given, 'lengthM'), ...steps })
const finest = { along: 320, up: 128 }
const doubled = ({ along, up }: Steps): Steps => ({ along: 2 * along, up: 2 * up })

/** The limit of areas whose error falls with the square of the step (Richardson, 1911). */
const extrapolated = (shape: Shape, steps: Steps) => (given: Given) =>
  (4 * meshArea(shape(given, doubled(steps))) - meshArea(shape(given, steps))) / 3

/** Below z = 0, closed but for the deck. */
const hullBelow = (given: Given) =>
  repaired(parabolicHull({ length: figure(given, 'lengthM'), ...finest, joined: true }), 0).mesh

checkPublished('mesh-surfaces', {
  'inscribed area of the parabolic hull': (given) =>
    meshArea(parabolic(given, { along: figure(given, 'along'), up: figure(given, 'up') })),
  'area of the parabolic hull, from two meshes': (given) =>
    extrapolated(parabolic, { along: figure(given, 'along'), up: figure(given, 'up') })(given),
  'area of the V bottom of a prism': (given) => meshArea(bottom(given, { along: 7, up: 3 })),
  'area of half a prolate spheroid, from two meshes': extrapolated(spheroid, { along: 160, up: 128 }),
  'area of a frustum, from two meshes': extrapolated(frustum, { along: 64, up: 128 }),
  'area of a sphere zone, from two meshes': extrapolated(zone, { along: 64, up: 128 }),
  'design waterline of the parabolic hull, one side': (given) => {
    const raised = parabolicHull({
      length: figure(given, 'lengthM'),
      ...finest,
      topsides: 0.1,
      upAbove: 4,
      joined: true,
    })
    const lines = planeSection(repaired(raised, 0).mesh, levelPlane(figure(given, 'heightM')))
    expect(lines).toMatchObject([{ closed: true }])
    return lines[0]!.length / 2
  },
  'stripe of the parabolic hull, both sides': (given) => {
    const above = clipMesh(parabolic(given, finest), levelPlane(figure(given, 'lowM')))
    return meshArea(clipMesh(above, flippedPlane(levelPlane(figure(given, 'highM')))))
  },
  'volume of the parabolic hull': (given) => {
    const split = splitByPlane(hullBelow(given), levelPlane(0)).below.volume
    expect(meshVolume(hullBelow(given), { x: 0, y: 0, z: 0 })).toBeCloseTo(split, 12)
    return split
  },
})

describe('the area of a mesh in a smooth surface', () => {
  const cases: readonly (readonly [string, Shape, Given, number])[] = [
    ['the parabolic hull', parabolic, { lengthM: 1 }, 0.14879063105],
    ['a spheroid', spheroid, { a: 3, b: 1 }, 15.4468619875],
    ['a frustum', frustum, { R: 1, r: 0.2, h: 2 }, 8.1206372143],
    ['a sphere zone', zone, { R: 2, h: 0.3 }, 3.7699111843],
  ]

  it.each(cases)('of %s is short by a quarter when the steps are halved', (_, shape, given, whole) => {
    const short = [1, 2, 4, 8].map((n) => whole - meshArea(shape(given, { along: 20 * n, up: 16 * n })))
    for (let i = 1; i < short.length; i++) expect(short[i - 1]! / short[i]!).toBeCloseTo(4, 1)
  })
})
