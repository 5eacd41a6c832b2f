/** The boat in space: turned by hand or by keys, brought nearer, looked at from four sides; a zone tapped is chosen. */
import { type KeyboardEvent, useCallback, useId, useMemo, useRef, useState } from 'react'
import type { Solid, SolidFace } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../../job/job-view.ts'
import { Button, Ghost, Progress, useWidth } from '../../../parts/index.ts'
import type { ShownPlan } from '../../../worker/messages.ts'
import { nearBy, turnOf } from './keys.ts'
import { edgeTable, outlineOf } from './outlines.ts'
import { faceAt } from './pick.ts'
import { type Finish, type LineLook, paintOf, pictureOf } from './picture.ts'
import { Said } from './said.tsx'
import './solid.css'
import { Space } from './space.tsx'
import type { StageScene } from './stage-scene.ts'
import { Still } from './still.tsx'
import { useHands } from './use-hands.ts'
import { useInks } from './use-inks.ts'
import { useSolid } from './use-solid.ts'
import { useView, type ViewState } from './use-view.ts'
import {
  axesOf,
  type Camera,
  extentOf,
  firstView,
  namedViews,
  projected,
  type Size,
  viewNames,
} from './view.ts'

export type SolidViewProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly finish: Finish
  /** Colour of each face by how warm it is. */
  readonly heat?: ((face: SolidFace) => string | undefined) | undefined
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
}

export const SolidView = (props: SolidViewProps) => {
  const { ref, width } = useWidth<HTMLDivElement>()
  const { solid, asked } = useSolid(props.view, props.plan)
  return (
    <div ref={ref} className="solid">
      {solid && width > 0 ? (
        <Drawn {...props} solid={solid} width={width} />
      ) : asked ? (
        <Ghost kind="hull">{props.view.words.sentence('surfaces.noHull')}</Ghost>
      ) : (
        <Progress label={labelOf('frame.planning')} />
      )}
    </div>
  )
}

type DrawnProps = SolidViewProps & { readonly solid: Solid; readonly width: number }

const sizeFor = (width: number): Size => ({
  width,
  height: Math.round(Math.min(Math.max(width * 0.48, 224), 480)),
})

const Drawn = (props: DrawnProps) => {
  const { solid, plan, chosen, onChoose } = props
  const eye = useView()
  const box = useRef<HTMLDivElement>(null)
  const help = useId()
  const [flat, setFlat] = useState(false)
  const [hovered, setHovered] = useState<string>()
  /** Of a face that belongs to no zone of the job. */
  const [tappedFace, setTappedFace] = useState<string>()
  const scene = useScene({ ...props, hovered }, eye)
  const { camera } = scene
  const at = useMemo(() => projected(solid.positions, camera), [solid, camera])
  const faceOn = (place: readonly [number, number]) => faceAt(solid.faces, at, place)
  const hands = useHands({
    box,
    change: eye.change,
    pointed: (place) => setHovered(place && faceOn(place)?.id),
    tapped: (place) => {
      const face = faceOn(place)
      setTappedFace(face?.zone === undefined ? face?.id : undefined)
      if (face?.zone !== undefined) onChoose(face.zone)
    },
  })
  const shown = solid.faces.find(({ id }) => id === (hovered ?? tappedFace)) ?? seenFace(solid, chosen)
  const onKeyDown = (event: KeyboardEvent): void => {
    const plain = !event.ctrlKey && !event.metaKey && !event.altKey
    const turn = turnOf(event.key)
    if (!turn || !plain) return
    event.preventDefault()
    eye.change(turn)
  }
  const fail = useCallback(() => setFlat(true), [])
  return (
    <>
      <div className="solid-box">
        <div
          ref={box}
          className="solid-hands"
          style={{ height: camera.size.height }}
          role="img"
          aria-label={labelOf('solid.drawing')}
          aria-describedby={help}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys that turn her are heard here
          tabIndex={0}
          onKeyDown={onKeyDown}
          {...hands}
        >
          {flat ? <Still {...scene} /> : <Space scene={scene} onFail={fail} />}
        </div>
        <Said
          face={shown}
          faces={solid.faces}
          at={at}
          size={camera.size}
          plan={plan}
          measured={solid.points.length > 0}
          words={props.view.words}
        />
      </div>
      <Controls eye={eye} />
      <p id={help} className="solid-help">
        {labelOf('solid.help')}
      </p>
    </>
  )
}

type SceneInput = DrawnProps & { readonly hovered: string | undefined }

/** The whole of what is drawn, and no part of it anew without need. */
function useScene(input: SceneInput, { view }: ViewState): StageScene {
  const { solid, plan, finish, heat, chosen, width, hovered } = input
  const inks = useInks()
  const extent = useMemo(() => extentOf(solid.positions), [solid])
  const edges = useMemo(() => edgeTable(solid.positions, solid.faces), [solid])
  const { buildUps } = plan
  const picture = useMemo(
    () => pictureOf(solid, (zone) => paintOf({ buildUps }, zone), { finish, heat, chosen, hovered }),
    [solid, buildUps, finish, heat, chosen, hovered],
  )
  return useMemo(() => {
    const camera: Camera = { view, extent, size: sizeFor(width) }
    const pairs = outlineOf(edges, axesOf(view).eye)
    const outline: LineLook = { key: 'outline', pairs, fill: { ink: 'ink' }, width: 2.5 }
    return { solid, picture, outline, camera, inks }
  }, [solid, picture, inks, edges, extent, view, width])
}

const seenFace = (solid: Solid, chosen: string | undefined) =>
  chosen === undefined ? undefined : solid.faces.find(({ zone }) => zone === chosen)

const Controls = ({ eye: { change, goTo } }: { readonly eye: ViewState }) => (
  <fieldset className="solid-controls off-paper">
    <legend className="unseen">{labelOf('solid.from')}</legend>
    {viewNames.map((name) => (
      <Button key={name} onClick={() => goTo(namedViews[name])}>
        {labelOf(`solid.${name}`)}
      </Button>
    ))}
    <Button aria-label={labelOf('solid.nearer')} onClick={() => change(nearBy(1))}>
      +
    </Button>
    <Button aria-label={labelOf('solid.farther')} onClick={() => change(nearBy(-1))}>
      −
    </Button>
    <Button onClick={() => goTo(firstView)}>{labelOf('solid.whole')}</Button>
  </fieldset>
)
