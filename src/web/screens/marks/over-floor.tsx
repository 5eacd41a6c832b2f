/** A stripe's edges over the floor, as she stands: four heights a station, port and starboard apart. */
import type { Certainty } from '#core/note'
import type { RowSure, StripeMark } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { FigureText, Ledger } from '../../parts/index.ts'

export type OverFloorProps = {
  readonly view: JobView
  readonly stripe: Pick<StripeMark, 'id' | 'name' | 'sure'>
}

const keys = ['portLower', 'portUpper', 'starboardLower', 'starboardUpper'] as const

export const OverFloor = ({ view: { plan, words }, stripe }: OverFloorProps) => {
  const fit = plan?.standing.fit
  const found = fit?.stripes.find(({ mark }) => mark === stripe.id)
  if (!fit || !found) return null
  return (
    <Ledger
      caption={words.sentence('marks.overFloor', { name: stripe.name, over: fit.over })}
      captionShown
      columns={[
        { key: 'fromStern', label: labelOf('column.fromStern'), align: 'right', phone: 'first' },
        ...keys.map((key) => ({
          key,
          label: labelOf(`column.overFloor.${key}`),
          align: 'right' as const,
          phone: 'second' as const,
        })),
      ]}
      rows={found.rows.map((row, at) => ({
        id: String(at),
        cells: {
          fromStern: words.figure('xM', row.xM),
          ...Object.fromEntries(
            keys.map((key) => [
              key,
              <span key={key}>
                <span className="marks-label">{labelOf(`column.overFloor.${key}`)} </span>
                <FigureText
                  text={words.figure('heightByTapeM', row[`${key}M`])}
                  certainty={sureOf(fit, stripe.sure[at], key)}
                />
              </span>,
            ]),
          ),
        },
      }))}
    />
  )
}

/** As sure as the edge itself and as how she stands. */
const sureOf = (
  fit: { readonly certainty: Certainty },
  sure: RowSure | undefined,
  key: (typeof keys)[number],
): Certainty =>
  fit.certainty === 'assumed' || sure?.[key.endsWith('Lower') ? 'lower' : 'upper'] === 'assumed'
    ? 'assumed'
    : 'worked'
