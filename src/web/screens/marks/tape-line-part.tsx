/** A single tape line with the numbers to strike it: heights as sure as they were given, breadths off the hull. */
import type { LineMark, Plan } from '#plan'
import { labelOf } from '#words'
import { Figure, Ledger, Part } from '../../parts/index.ts'
import type { ScreenProps } from '../screen.ts'

export type TapeLineProps = Pick<ScreenProps, 'view'> & {
  readonly plan: Pick<Plan, 'surfaces'>
  readonly line: LineMark
}

const columns = ['fromStern', 'heightOver', 'halfBreadth'] as const

export const TapeLinePart = ({
  view: { words },
  plan,
  line: { name, zone, table, certainty },
}: TapeLineProps) => (
  <Part
    title={name}
    aside={words.sentence('marks.line', {
      tapeM: table.tapeM,
      zone: plan.surfaces.zones.find(({ id }) => id === zone)?.name ?? zone,
    })}
  >
    <Ledger
      caption={name}
      columns={columns.map((key) => ({
        key,
        label: labelOf(`column.${key}`),
        align: 'right',
        phone: key === 'fromStern' ? 'first' : 'second',
      }))}
      rows={table.rows.map((row, at) => ({
        id: String(at),
        cells: {
          fromStern: words.figure('xM', row.xM),
          heightOver: (
            <>
              <span className="marks-label">{labelOf('column.heightOver')} </span>
              <Figure text={words.figure('heightByTapeM', row.heightM)} certainty={certainty} />
            </>
          ),
          halfBreadth: (
            <>
              <span className="marks-label">{labelOf('column.halfBreadth')} </span>
              {words.figure('halfBreadthByTapeM', row.halfBreadthM)}
            </>
          ),
        },
      }))}
    />
  </Part>
)
