/** A non-skid panel in its field: the border round it and the rounded corners, to scale. */
import type { PanelMark } from '#plan'
import type { Words } from '#words'
import { Dimension, useWidth } from '../../parts/index.ts'

export type PanelDrawingProps = { readonly panel: PanelMark; readonly words: Words }

const most = { width: 520, height: 260 }

export const PanelDrawing = ({ panel, words }: PanelDrawingProps) => {
  const { ref, width } = useWidth<HTMLDivElement>()
  const { lengthM, widthM, borderM, cornerRadiusM } = panel
  const room = Math.min(width, most.width) - 96
  const perM = Math.min(room / (lengthM + 2 * borderM), most.height / (widthM + 2 * borderM))
  if (!(perM > 0)) return <div ref={ref} />
  const [outer, inner] = [
    { width: (lengthM + 2 * borderM) * perM, height: (widthM + 2 * borderM) * perM },
    { width: lengthM * perM, height: widthM * perM },
  ]
  const left = 64
  const border = borderM * perM
  return (
    <div ref={ref}>
      <svg
        width={outer.width + 96}
        height={outer.height + 56}
        aria-hidden="true"
        fill="none"
        stroke="var(--ink)"
      >
        <rect x={left} y="8" {...outer} strokeDasharray="8 4" stroke="var(--ink2)" />
        <rect
          x={left + border}
          y={8 + border}
          {...inner}
          rx={Math.min(cornerRadiusM * perM, inner.height / 2)}
          strokeWidth="2.5"
          fill="var(--inset)"
        />
        <Dimension
          from={left + border}
          to={left + border + inner.width}
          at={outer.height + 32}
          extendFrom={outer.height + 10}
          text={words.figure('lengthM', lengthM)}
          certainty={panel.certainty}
        />
        <Dimension
          upright
          from={8 + border}
          to={8 + border + inner.height}
          at={left - 24}
          text={words.figure('widthM', widthM)}
          certainty={panel.certainty}
        />
      </svg>
    </div>
  )
}
