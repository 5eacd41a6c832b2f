/** The boat drawn by the graphics card; says so when it cannot be had, or is lost. */
import { useEffect, useLayoutEffect, useRef, useState } from 'react'
import type { Stage } from './stage.ts'
import type { StageScene } from './stage-scene.ts'

export type SpaceProps = { readonly scene: StageScene; readonly onFail: () => void }

export const Space = ({ scene, onFail }: SpaceProps) => {
  const canvas = useRef<HTMLCanvasElement>(null)
  const [stage, setStage] = useState<Stage>()
  const failed = useRef(onFail)
  failed.current = onFail
  useEffect(() => {
    const place = canvas.current
    if (!place) return
    let open: Stage | undefined
    let gone = false
    const lost = (event: Event): void => {
      event.preventDefault()
      failed.current()
    }
    place.addEventListener('webglcontextlost', lost)
    import('./stage.ts')
      .then(({ openStage }) => {
        if (gone) return
        open = openStage(place)
        setStage(open)
      })
      .catch(() => {
        if (!gone) failed.current()
      })
    return () => {
      gone = true
      place.removeEventListener('webglcontextlost', lost)
      open?.close()
    }
  }, [])
  useLayoutEffect(() => stage?.draw(scene), [stage, scene])
  return <canvas ref={canvas} className="solid-canvas" data-drawn={stage ? 'space' : undefined} />
}
