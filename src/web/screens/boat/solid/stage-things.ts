/** The things that a stage holds on the graphics card: meshes of faces, lines and dots, about the boat's middle. */
import {
  BufferAttribute,
  BufferGeometry,
  Group,
  Mesh,
  MeshBasicMaterial,
  Points,
  PointsMaterial,
} from 'three'
import { LineMaterial } from 'three/addons/lines/LineMaterial.js'
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js'
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js'
import { type Dash, dashesOf } from './dashes.ts'
import { chainsOf } from './outlines.ts'
import { colourOf, type FaceLook, type LineLook } from './picture.ts'
import type { StageScene } from './stage-scene.ts'
import { projected } from './view.ts'

type Drawn = {
  readonly look: LineLook
  readonly line: LineSegments2
  readonly chains?: readonly (readonly number[])[]
}

export type Built = {
  readonly of: StageScene
  readonly middled: Float32Array
  readonly faces: Group
  readonly lines: Group
  /** Lines over the others. */
  readonly over: Group
  /** Those that depend on the eye. */
  readonly following: readonly Drawn[]
}

export function built(asked: StageScene): Built {
  const { solid, picture, outline, camera } = asked
  const [faces, lines, over] = [new Group(), new Group(), new Group()]
  const about = (positions: Float32Array) => positions.map((value, k) => value - camera.extent.middle[k % 3]!)
  const middled = about(solid.positions)
  const shared = new BufferAttribute(middled, 3)
  for (const look of picture.faces) faces.add(faceMesh(look, shared, asked))
  const drawn = [...picture.lines, outline].map((look): Drawn => {
    const material = new LineMaterial({ color: colourOf(look.fill, asked.inks), linewidth: look.width })
    const line = new LineSegments2(new LineSegmentsGeometry(), material)
    line.frustumCulled = false
    ;(look.over ? over : lines).add(line)
    if (!look.dash && look !== outline) put(line, pointsOf(look.pairs, middled))
    return { look, line, ...(look.dash ? { chains: chainsOf(look.pairs) } : {}) }
  })
  if (solid.points.length > 0) lines.add(dots(about(solid.points), asked))
  const following = drawn.filter(({ look, chains }) => chains || look === outline)
  return refreshed({ of: asked, middled, faces, lines, over, following }, asked)
}

/** The outline and the dashes as they are now. */
export function refreshed(things: Built, asked: StageScene): Built {
  const at = projected(asked.solid.positions, asked.camera)
  for (const { look, line, chains } of things.following)
    put(
      line,
      chains
        ? dashPoints(dashesOf(chains, at, look.dash!), things.middled)
        : pointsOf(asked.outline.pairs, things.middled),
    )
  return { ...things, of: asked }
}

export function emptied(things: Built | undefined): void {
  for (const group of things ? [things.faces, things.lines, things.over] : [])
    for (const child of group.children as Mesh[]) {
      child.geometry.dispose()
      for (const material of [child.material].flat()) material.dispose()
    }
}

function put(line: LineSegments2, points: Float32Array): void {
  line.geometry.dispose()
  line.geometry = new LineSegmentsGeometry()
  line.visible = points.length > 0
  if (line.visible) line.geometry.setPositions(points)
}

function pointsOf(pairs: Uint32Array, positions: Float32Array): Float32Array {
  const points = new Float32Array(3 * pairs.length)
  pairs.forEach((n, k) => {
    points.set(positions.subarray(3 * n, 3 * n + 3), 3 * k)
  })
  return points
}

function dashPoints(dashes: readonly Dash[], positions: Float32Array): Float32Array {
  const points = new Float32Array(6 * dashes.length)
  dashes.flat().forEach(({ from, to, share }, k) => {
    for (let n = 0; n < 3; n += 1) {
      const [a, b] = [positions[3 * from + n]!, positions[3 * to + n]!]
      points[3 * k + n] = a + share * (b - a)
    }
  })
  return points
}

function faceMesh({ face, fill }: FaceLook, positions: BufferAttribute, { inks }: StageScene): Mesh {
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', positions)
  geometry.setIndex(new BufferAttribute(face.triangles, 1))
  return new Mesh(
    geometry,
    // Pushed back by its slant, so that the inner half of a line on its edge is not lost in it.
    new MeshBasicMaterial({
      color: colourOf(fill, inks),
      polygonOffset: true,
      polygonOffsetFactor: 1.5,
      polygonOffsetUnits: 1,
    }),
  )
}

const dotPx = 6

/** Round ones. */
function dots(positions: Float32Array, { inks }: StageScene): Points {
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(positions, 3))
  const material = new PointsMaterial({ color: inks.ink, size: dotPx, sizeAttenuation: false })
  material.onBeforeCompile = (shader) => {
    const start = '#include <clipping_planes_fragment>'
    shader.fragmentShader = shader.fragmentShader.replace(
      start,
      `${start}\nif (length(gl_PointCoord - 0.5) > 0.5) discard;`,
    )
  }
  return new Points(geometry, material)
}
