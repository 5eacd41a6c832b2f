/**
 * Draws the boat with the graphics card: flat faces, lines of even width, hidden ones left out. It draws when it is
 * told to and rests otherwise; it lives until it is closed.
 */
import { OrthographicCamera, Scene, WebGLRenderer } from 'three'
import type { StageScene } from './stage-scene.ts'
import { type Built, built, emptied, refreshed } from './stage-things.ts'
import { axesOf, type Camera, perM } from './view.ts'

export type Stage = { readonly draw: (scene: StageScene) => void; readonly close: () => void }

/** Lines stand this far before the faces they lie on, m; those over others twice. */
const before = 0.012
/** Far enough for any boat, m. */
const reach = 200

/** Throws where the page cannot draw space. */
export function openStage(canvas: HTMLCanvasElement): Stage {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true, preserveDrawingBuffer: true })
  const scene = new Scene()
  const camera = new OrthographicCamera()
  let things: Built | undefined
  return {
    draw: (asked) => {
      const same = things && isSame(things.of, asked)
      if (!things || !same) {
        emptied(things)
        scene.clear()
        things = built(asked)
        scene.add(things.faces, things.lines, things.over)
      } else things = refreshed(things, asked)
      place(camera, asked.camera)
      things.lines.position.copy(camera.position).setLength(before)
      things.over.position.copy(camera.position).setLength(2 * before)
      const { width, height } = asked.camera.size
      renderer.setPixelRatio(Math.min(globalThis.devicePixelRatio || 1, 2))
      renderer.setSize(width, height, false)
      renderer.render(scene, camera)
    },
    close: () => {
      emptied(things)
      renderer.dispose()
    },
  }
}

/** What did not change stays on the card: a turn makes the outline and the dashes anew and nothing else. */
const isSame = (a: StageScene, b: StageScene): boolean =>
  a.solid === b.solid && a.picture === b.picture && a.inks === b.inks

/** The same picture that `projected` works out. */
function place(camera: OrthographicCamera, asked: Camera): void {
  const { view, size } = asked
  const { eye, up } = axesOf(view)
  const scale = perM(asked)
  const [x, y] = [(view.shift[0] * view.zoom) / scale, (view.shift[1] * view.zoom) / scale]
  const [half, high] = [size.width / 2 / scale, size.height / 2 / scale]
  camera.left = -half - x
  camera.right = half - x
  camera.top = high + y
  camera.bottom = -high + y
  camera.near = 0
  camera.far = reach
  camera.position.set(eye[0], eye[1], eye[2]).multiplyScalar(reach / 2)
  camera.up.set(up[0], up[1], up[2])
  camera.lookAt(0, 0, 0)
  camera.updateProjectionMatrix()
}
