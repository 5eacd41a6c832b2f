/** The section through a build-up with a row a layer, joined to it by leaders. */
import { type BandScale, bandsOf, dryTogether, type JointMark, type Stack, section } from '#papers'
import { weakest } from '#plan'
import { labelOf, type Words } from '#words'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { Dimension, ShapesSvg } from '../../parts/index.ts'
import { type LayerRow, layerRows } from './layer-rows.ts'
import './build-up.css'

const mm = 50
/** As large as drawings of the papers are shown at most. */
const perMm = 5.29
const dimensionWide = 44
const rowHeight = 58

export type SectionDrawingProps = {
  readonly stack: Stack
  readonly view: JobView
  readonly scale: BandScale
  readonly marks: readonly JointMark[]
}

export const SectionDrawing = ({ stack, view, scale, marks }: SectionDrawingProps) => {
  const { drawing, height, anchors } = section(stack, mm, scale, marks)
  const rows = layerRows(stack, view.words)
  const tall = Math.max(height * perMm, rows.length * rowHeight)
  return (
    <div className="build-up">
      <div className="build-up-section">
        <p className="build-up-side">{labelOf('paperSection.weather')}</p>
        <div className="build-up-drawing">
          <DryTogether stack={stack} words={view.words} scale={scale} height={height} />
          <div style={{ width: mm * perMm, height: height * perMm }}>
            <ShapesSvg drawing={drawing} width={mm} height={height} label={labelOf('buildUp.drawing')} />
          </div>
        </div>
        <p className="build-up-side">
          {labelOf('paperSection.inside')}
          <span>{labelOf(scale === 'true' ? 'paperSection.trueScale' : 'paperSection.notToScale')}</span>
        </p>
      </div>
      <svg className="build-up-leaders" width="56" height={tall} aria-hidden="true">
        {rows.map(({ id }, at) => {
          const anchor = anchors.get(id)
          const y = at * rowHeight + 20
          return anchor ? <path key={id} d={`M0 ${anchor[1] * perMm}H12L44 ${y}H56`} /> : null
        })}
      </svg>
      <ul className="build-up-rows">
        {rows.map((row) => (
          <Row key={row.id} row={row} view={view} />
        ))}
      </ul>
    </div>
  )
}

type DryProps = {
  readonly stack: Stack
  readonly words: Words
  readonly scale: BandScale
  readonly height: number
}

/** All that covers, dry, from the boat to the weather. */
const DryTogether = ({ stack, words, scale, height }: DryProps) => {
  const fresh = bandsOf(stack, scale).bands.filter(({ id }) => id.startsWith('new:'))
  const to = fresh.reduce((sum, band) => sum + band.height, 0) * perMm
  const filmM = dryTogether(stack)
  const films = stack.layers.filter(({ spot }) => !spot).map(({ dryFilmM }) => dryFilmM?.certainty)
  return (
    <svg className="build-up-dry" width={dimensionWide} height={height * perMm}>
      {filmM > 0 ? (
        <Dimension
          upright
          from={0}
          to={to}
          at={dimensionWide - 14}
          extendFrom={dimensionWide}
          text={words.sentence('buildup.dryTogether', { filmM })}
          certainty={weakest(...films)}
        />
      ) : null}
    </svg>
  )
}

type RowProps = { readonly row: LayerRow; readonly view: JobView }

const Row = ({ row: { name, family, film, litres, recoat }, view }: RowProps) => (
  <li className="build-up-row">
    <span className="build-up-name">
      <b>{name}</b>
      <span className="build-up-family">{family}</span>
    </span>
    <span className="build-up-figure">
      {film ? <WayFigure {...film} view={view} label={`${labelOf('paperColumn.film')}, ${name}`} /> : null}
    </span>
    <span className="build-up-figure">
      {litres ? (
        <WayFigure {...litres} view={view} label={`${labelOf('paperColumn.mixed')}, ${name}`} />
      ) : null}
    </span>
    <span className="build-up-recoat">{recoat}</span>
  </li>
)
