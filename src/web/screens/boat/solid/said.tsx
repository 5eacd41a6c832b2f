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
  const [end, setEnd] = useState<number>()
  const said = face && saidOf(face, plan, measured)
  useLayoutEffect(() => {
    const { current } = label
    setEnd(current && said ? current.offsetWidth : undefined)
  }, [said?.name, said?.areaM2])
  const place = face && placeOn(faces, face, at)
  return (
    <>
      {place && end !== undefined ? (
        <svg className="solid-leader" width={size.width} height={size.height} aria-hidden="true">
          <path className="solid-leader-clear" d={leader(end, place)} />
          <path d={leader(end, place)} />
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

/** From the end of the line under the name. */
const leader = (end: number, [x, y]: readonly [number, number]): string =>
  `M${end} -4.5L${x.toFixed(1)} ${y.toFixed(1)}`

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
