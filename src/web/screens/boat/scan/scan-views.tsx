/** A scan in ink from the side, from above and from astern, with the marks on it: a touch or a drag sets the chosen one. */
import { type PointerEvent, useRef, useState } from 'react'
import type { Box, LaidScan, Point3, ScanView } from '#plan'
import { labelOf } from '#words'
import { useWidth } from '../../../parts/index.ts'
import { pathOf } from '../boat-layout.ts'
import type { MarkId, MarkKind, Places } from './scan-marks.ts'

export type ScanViewsProps = {
  readonly shown: LaidScan
  readonly marks: readonly MarkKind[]
  readonly places: Places
  readonly chosen: MarkId
  readonly crop: Box | undefined
  readonly onChoose: (mark: MarkId) => void
  readonly onPick: (mark: MarkId, view: ScanView, at: readonly [number, number]) => void
}

const axes = { side: ['x', 'z'], above: ['x', 'y'], astern: ['y', 'z'] } as const
/** Which way the first axis runs on the sheet: from astern port lies on the left. */
const flips = { side: 1, above: 1, astern: -1 } as const
const edge = 28

export const ScanViews = (props: ScanViewsProps) => {
  const { ref, width } = useWidth<HTMLDivElement>()
  return (
    <div ref={ref} className="scan-views">
      {width > 0
        ? (['side', 'above', 'astern'] as const).map((view) => (
            <OneView key={view} view={view} width={width} {...props} />
          ))
        : null}
    </div>
  )
}

type OneViewProps = ScanViewsProps & { readonly view: ScanView; readonly width: number }

function frameOf({ shown: { box }, view, width }: OneViewProps) {
  const [u, v] = axes[view]
  const toRight = flips[view]
  const length = box.most.x - box.least.x
  const [beam, room] = [box.most.y - box.least.y, width - 2 * edge]
  const common = room / Math.max(length, beam)
  // Seen end on she is small: drawn larger, for a thumb.
  const perM = view === 'astern' ? Math.min(room / beam, 2 * common) : common
  const from = toRight > 0 ? box.least[u] : box.most[u]
  const size = {
    w: (box.most[u] - box.least[u]) * perM + 2 * edge,
    h: (box.most[v] - box.least[v]) * perM + 2 * edge,
  }
  const place = (at: readonly [number, number]): readonly [number, number] => [
    edge + toRight * (at[0] - from) * perM,
    edge + (box.most[v] - at[1]) * perM,
  ]
  const back = (px: number, py: number): readonly [number, number] => [
    from + (toRight * (px - edge)) / perM,
    box.most[v] - (py - edge) / perM,
  ]
  return { u, v, size, place, back }
}

const OneView = (props: OneViewProps) => {
  const { shown, view, marks, places, chosen, crop, onChoose, onPick } = props
  const { u, v, size, place, back } = frameOf(props)
  const svg = useRef<SVGSVGElement>(null)
  const [held, setHeld] = useState<{ readonly mark: MarkId; readonly at: readonly [number, number] }>()
  const spotOf = (event: { readonly clientX: number; readonly clientY: number }) => {
    const { left, top } = svg.current!.getBoundingClientRect()
    return back(event.clientX - left, event.clientY - top)
  }
  const flat = (at: Point3): readonly [number, number] => [at[u], at[v]]
  const label = labelOf(`scan.${view}`)
  const drop = (event: PointerEvent): void => {
    if (held) onPick(held.mark, view, spotOf(event))
    setHeld(undefined)
  }
  return (
    <figure className="scan-view">
      <figcaption>{label}</figcaption>
      <svg
        ref={svg}
        width={size.w}
        height={size.h}
        role="img"
        aria-label={label}
        data-view={view}
        onClick={(event) => {
          if (!(event.target as Element).closest('.scan-mark')) onPick(chosen, view, spotOf(event))
        }}
      >
        <path className="scan-dots" d={dotsPath(shown, [u, v], place)} />
        <path className="scan-outline" d={pathOf(shown.outlines[view].map(place), true)} />
        {crop ? <Crop box={crop} axes={[u, v]} place={place} /> : null}
        {marks.map((mark) => {
          const at = places[mark.id]
          if (at === undefined) return null
          const [x, y] = place(held?.mark === mark.id ? held.at : flat(at))
          return (
            <g
              key={mark.id}
              className={mark.id === chosen ? 'scan-mark scan-mark-chosen' : 'scan-mark'}
              transform={`translate(${x} ${y})`}
              onPointerDown={(event) => {
                onChoose(mark.id)
                event.currentTarget.setPointerCapture(event.pointerId)
                setHeld({ mark: mark.id, at: spotOf(event) })
              }}
              onPointerMove={(event) => {
                if (held) setHeld({ mark: mark.id, at: spotOf(event) })
              }}
              onPointerUp={drop}
              onPointerCancel={() => setHeld(undefined)}
            >
              <circle r="24" className="scan-mark-reach" />
              <path d="M-12 0H12M0 -12V12" />
              <circle r="10" cx="14" cy="-14" className="scan-mark-balloon" />
              <text x="14" y="-9.5" textAnchor="middle">
                {mark.sign}
              </text>
            </g>
          )
        })}
      </svg>
    </figure>
  )
}

type Axes = readonly [keyof Point3, keyof Point3]
type Onto = (at: readonly [number, number]) => readonly [number, number]

const Crop = ({
  box,
  axes: [u, v],
  place,
}: {
  readonly box: Box
  readonly axes: Axes
  readonly place: Onto
}) => {
  const [a, b] = [place([box.least[u], box.least[v]]), place([box.most[u], box.most[v]])]
  return <path className="scan-crop" d={`M${a[0]} ${a[1]}H${b[0]}V${b[1]}H${a[0]}Z`} />
}

const offset = { x: 0, y: 1, z: 2 } as const

function dotsPath({ dots }: LaidScan, [u, v]: Axes, place: Onto): string {
  const strokes: string[] = []
  for (let at = 0; at < dots.length; at += 3) {
    const [x, y] = place([dots[at + offset[u]]!, dots[at + offset[v]]!])
    strokes.push(`M${x.toFixed(1)} ${y.toFixed(1)}h1`)
  }
  return strokes.join('')
}
