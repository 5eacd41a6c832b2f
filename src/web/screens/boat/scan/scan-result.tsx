/** The hull of a scan before it is taken: in lines, with areas, how far its sides differ, and all that was assumed. */
import type { ScanHull, SeenScan } from '#plan'
import { labelOf, type Words } from '#words'
import { Ledger, useWidth } from '../../../parts/index.ts'
import { boatLayout, type Place, pathOf } from '../boat-layout.ts'

type Hull = Extract<ScanHull, { readonly ok: true }>

export type ScanResultProps = { readonly hull: Hull; readonly seen: SeenScan; readonly words: Words }

export const ScanResult = ({ hull, seen, words }: ScanResultProps) => {
  const { ref, width } = useWidth<HTMLDivElement>()
  return (
    <>
      <p>
        {words.sentence('scan.hull', {
          lengthM: hull.lengthM,
          takenOffShare: seen.takenOffShare,
          factor: hull.factor.toFixed(3),
        })}
        {hull.deviationM === undefined
          ? null
          : ` ${words.sentence('scan.deviation', { rmsByTapeM: hull.deviationM })}`}
      </p>
      <div ref={ref}>{width > 0 ? <Preview hull={hull} width={width} /> : null}</div>
      <Ledger
        caption={labelOf('scan.areas')}
        columns={[
          { key: 'zone', label: labelOf('scan.zone'), phone: 'first' },
          { key: 'area', label: labelOf('scan.area'), align: 'right', phone: 'side' },
        ]}
        rows={hull.zones.map(({ kind, areaM2 }) => ({
          id: kind,
          cells: { zone: labelOf(`scanZone.${kind}`), area: words.figure('areaM2', areaM2) },
        }))}
      />
      <Ledger
        caption={labelOf('scan.marksFit')}
        columns={[
          { key: 'mark', label: labelOf('column.mark'), phone: 'first' },
          { key: 'across', label: labelOf('scan.across'), align: 'right', phone: 'second' },
          { key: 'up', label: labelOf('scan.up'), align: 'right', phone: 'side' },
        ]}
        rows={hull.marks.map(({ id, across, up }) => ({
          id,
          cells: { mark: id, across: byTape(words, across), up: byTape(words, up) },
        }))}
      />
      <ul className="scan-found">
        {hull.notes.map(({ code, data }) => (
          <li key={`${code} ${JSON.stringify(data)}`}>{words.sentence(code, data)}</li>
        ))}
      </ul>
    </>
  )
}

const byTape = (words: Words, value: number | undefined) =>
  value === undefined ? '' : words.figure('residualByTapeM', value)

const Preview = ({ hull: { outline }, width }: { readonly hull: Hull; readonly width: number }) => {
  const { sheerPlan, halfBreadthPlan, bodyPlan } = outline
  const layout = boatLayout(outline, width)
  const line = (points: readonly (readonly [number, number])[], place: Place): string =>
    pathOf(points.map(([a, b]) => place(a, b)))
  const middle = bodyPlan.length / 2
  return (
    <svg
      className="lines-plan"
      width={width}
      height={layout.height}
      role="img"
      aria-label={labelOf('boat.drawing')}
    >
      <path
        className="lines-thick"
        d={line(sheerPlan.sheer, layout.side) + line(sheerPlan.keel, layout.side)}
      />
      <path className="lines-thick" d={line(halfBreadthPlan.sheer, layout.above)} />
      <path className="lines-thick" d={sternOf(outline, layout.side, layout.above)} />
      <path
        className="lines-chain"
        d={line(
          [
            [0, 0],
            [layout.length, 0],
          ],
          layout.above,
        )}
      />
      {[...sheerPlan.knuckles].map(({ line: points }, k) => (
        <path
          key={k}
          className="lines-medium"
          d={line(points, layout.side) + line(halfBreadthPlan.knuckles[k]!.line, layout.above)}
        />
      ))}
      <g className="lines-water">
        {sheerPlan.waterlines.flatMap(({ lines }) =>
          lines.map((points) => <path key={`side ${points[0]?.[0]}`} d={line(points, layout.side)} />),
        )}
        {halfBreadthPlan.waterlines.flatMap(({ lines }) =>
          lines.map((points) => <path key={`above ${points[0]?.[0]}`} d={line(points, layout.above)} />),
        )}
      </g>
      {bodyPlan.map(({ id, line: points }, k) => (
        <path
          key={id}
          className="lines-thin"
          d={line(
            points.map(([y, z]) => [k < middle ? -y : y, z]),
            layout.ahead,
          )}
        />
      ))}
    </svg>
  )
}

/** The after end in both views, from keel to sheer and from the centreline out. */
const sternOf = ({ sheerPlan, halfBreadthPlan }: Hull['outline'], side: Place, above: Place): string => {
  const [keel, sheer, out] = [sheerPlan.keel[0], sheerPlan.sheer[0], halfBreadthPlan.sheer[0]]
  if (!keel || !sheer || !out) return ''
  return pathOf([side(...keel), side(...sheer)]) + pathOf([above(out[0], 0), above(...out)])
}
