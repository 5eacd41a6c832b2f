/** Corners or offsets of a zone in figures: the table twin of the drawing, each figure in a box of its own. */
import { labelOf } from '#words'
import { CellField } from '../../../fields/cell-field.tsx'
import type { CollectionPlace, JobView } from '../../../job/job-view.ts'
import { classes } from '../../../parts/index.ts'

export type TableRow = {
  readonly id: string
  /** As its handle has it. */
  readonly mark: string
  /** In full, for whoever does not see the heads. */
  readonly name: string
}

export type RowTableProps = {
  readonly view: JobView
  readonly place: CollectionPlace
  readonly keys: readonly string[]
  readonly rows: readonly TableRow[]
  readonly caption: string
  readonly chosen: string | undefined
  readonly onChoose: (id: string) => void
}

/** The first row says over its boxes what is in them all. */
export const RowTable = ({ view, place, keys, rows, caption, chosen, onChoose }: RowTableProps) => (
  <ol className={classes('deck-rows', keys.length > 2 && 'deck-rows-wide')} aria-label={caption}>
    {rows.map(({ id, mark, name }, at) => (
      <li
        key={id}
        className={id === chosen ? 'deck-row deck-row-chosen' : 'deck-row'}
        onFocus={() => onChoose(id)}
      >
        <span className="deck-row-mark" aria-hidden="true">
          {mark}
        </span>
        {keys.map((key) => (
          <div key={key} className="deck-row-cell">
            <CellField
              view={view}
              place={{ ...place, item: id, key }}
              label={
                <>
                  <span className="unseen">{name}, </span>
                  <span className={at === 0 ? undefined : 'unseen'}>
                    {labelOf(`cell.${place.section}.${key}`)}
                  </span>
                </>
              }
            />
          </div>
        ))}
      </li>
    ))}
  </ol>
)
