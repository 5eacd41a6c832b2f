/** The section through a build-up with a row a layer, joined to it by leaders. */
import { type Stack, section } from '#papers'
import { labelOf } from '#words'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { ShapesSvg } from '../../parts/index.ts'
import { type LayerRow, layerRows } from './layer-rows.ts'
import './build-up.css'

const mm = 50
const perMm = 6
const rowHeight = 58

export type SectionDrawingProps = { readonly stack: Stack; readonly view: JobView }

export const SectionDrawing = ({ stack, view }: SectionDrawingProps) => {
  const { drawing, height, anchors } = section(stack, mm)
  const rows = layerRows(stack, view.words)
  const tall = Math.max(height * perMm, rows.length * rowHeight)
  return (
    <div className="build-up">
      <div className="build-up-section">
        <p className="build-up-side">{labelOf('paperSection.weather')}</p>
        <div style={{ width: mm * perMm, height: height * perMm }}>
          <ShapesSvg drawing={drawing} width={mm} height={height} label={labelOf('buildUp.drawing')} />
        </div>
        <p className="build-up-side">
          {labelOf('paperSection.inside')}
          <span>{labelOf('paperSection.notToScale')}</span>
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
