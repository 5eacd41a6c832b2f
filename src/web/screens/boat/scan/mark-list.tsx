/** The marks of a scan as a list to choose from, and the chosen one's place to type: the way for a keyboard. */
import type { Point3 } from '#plan'
import { labelOf, type Words } from '#words'
import type { JobView } from '../../../job/job-view.ts'
import { Button } from '../../../parts/index.ts'
import { inMetres, LengthField, metresOf } from './length-field.tsx'
import type { MarkId, MarkKind, Places } from './scan-marks.ts'

export type MarkListProps = {
  readonly marks: readonly MarkKind[]
  readonly places: Places
  readonly chosen: MarkId
  readonly onChoose: (mark: MarkId) => void
  readonly words: Words
}

export const MarkList = ({ marks, places, chosen, onChoose, words }: MarkListProps) => (
  <ol className="scan-marks">
    {marks.map(({ id, sign }) => {
      const at = places[id]
      return (
        <li key={id}>
          <button
            type="button"
            className="scan-mark-row off-paper"
            aria-pressed={id === chosen}
            onClick={() => onChoose(id)}
          >
            <span className="scan-mark-sign">{sign}</span>
            <span>{labelOf(`scanMark.${id}`)}</span>
            <span className="scan-mark-place">
              {at ? words.sentence('scan.at', { xM: at.x, zM: at.z }) : labelOf('scan.notSet')}
            </span>
          </button>
        </li>
      )
    })}
  </ol>
)

export type MarkFieldsProps = {
  readonly view: JobView
  readonly places: Places
  readonly chosen: MarkId
  readonly put: (mark: MarkId, at: Point3 | undefined) => void
}

const nowhere: Point3 = { x: 0, y: 0, z: 0 }

export const MarkFields = ({ view, places, chosen, put }: MarkFieldsProps) => {
  const at = places[chosen]
  return (
    <fieldset className="scan-mark-fields">
      <legend>{labelOf(`scanMark.${chosen}`)}</legend>
      <div className="cells">
        {(['x', 'y', 'z'] as const).map((axis) => (
          <LengthField
            key={axis}
            view={view}
            label={labelOf(`scanAxis.${axis}`)}
            value={at ? inMetres(at[axis]) : ''}
            onCommit={(text) => {
              const value = metresOf(text)
              if (value !== undefined) put(chosen, { ...(at ?? nowhere), [axis]: value })
            }}
          />
        ))}
      </div>
      {at ? <Button onClick={() => put(chosen, undefined)}>{labelOf('scan.unset')}</Button> : null}
    </fieldset>
  )
}
