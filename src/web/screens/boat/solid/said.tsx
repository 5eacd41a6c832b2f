/** Name and area of the part of the boat that is pointed at or chosen, with a leader to it. */
import { useLayoutEffect, useRef, useState } from 'react'
import type { SolidFace } from '#plan'
import type { Words } from '#words'
import { labelOf } from '#words'
import { FigureText } from '../../../parts/index.ts'
import type { ShownPlan } from '../../../worker/messages.ts'
import { placeOn } from './pick.ts'
import type { Projected, Size } from './view.ts'

export type SaidProps = {
  readonly face: SolidFace | undefined
  readonly faces: readonly SolidFace[]
  readonly at: Projected
  readonly size: Size
  readonly plan: ShownPlan
  /** The hull was measured, not drawn from a few sizes. */
  readonly measured: boolean
  readonly words: Words
}

export const Said = ({ face, faces, at, size, plan, measured, words }: SaidProps) => {
  const label = useRef<HTMLParagraphElement>(null)
  const [corner, setCorner] = useState<readonly [number, number]>()
  const said = face && saidOf(face, plan, measured)
  useLayoutEffect(() => {
    const { current } = label
    setCorner(
      current && said
        ? [current.offsetLeft + current.offsetWidth, current.offsetTop + current.offsetHeight]
        : undefined,
    )
  }, [said?.name, said?.areaM2])
  const place = face && placeOn(faces, face, at)
  return (
    <>
      {place && corner ? (
        <svg className="solid-leader" width={size.width} height={size.height} aria-hidden="true">
          <path d={`M${corner[0]} ${corner[1] - 0.5}L${place[0].toFixed(1)} ${place[1].toFixed(1)}`} />
          <circle cx={place[0]} cy={place[1]} r={3.5} />
        </svg>
      ) : null}
      <p ref={label} className={said ? 'solid-said' : 'solid-said solid-said-none'} role="status">
        {said ? (
          <>
            {said.name} <FigureText text={words.figure('areaM2', said.areaM2)} certainty={said.certainty} />
          </>
        ) : (
          labelOf('solid.tap')
        )}
      </p>
    </>
  )
}

/** A face that nobody paints is measured by its triangles. */
function saidOf({ kind, zone, areaM2, id }: SolidFace, { surfaces, marks }: ShownPlan, measured: boolean) {
  const found = [...surfaces.zones, ...marks.zones].find((one) => one.id === zone)
  if (found) return found
  const drawn = kind === 'transom' && id === 'bow' ? 'bow' : kind
  return {
    name: labelOf(`solidFace.${drawn}`),
    areaM2,
    certainty: measured ? ('measured' as const) : ('assumed' as const),
  }
}
