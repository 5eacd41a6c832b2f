/** Stand pads and keel blocks: what they hide of the hull, left out of what is painted now. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { FigureText, Ledger, PartBlock } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'

export type PadTableProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
}

export const PadTable = ({ view: { words }, plan, chosen, onChoose }: PadTableProps) =>
  plan.surfaces.pads.length === 0 ? null : (
    <PartBlock title={labelOf('heading.pads')}>
      <Ledger
        caption={labelOf('heading.pads')}
        columns={[
          { key: 'name', label: labelOf('column.pad'), phone: 'first' },
          { key: 'hides', label: labelOf('column.hides'), phone: 'second' },
          { key: 'area', label: labelOf('column.area'), align: 'right', phone: 'side' },
        ]}
        rows={plan.surfaces.pads.map(({ id, name, count, hides, areaM2, certainty }) => ({
          id,
          selected: id === chosen,
          onSelect: () => onChoose(id),
          cells: {
            name: count === 1 ? name : `${count} × ${name}`,
            hides: labelOf(`hides.${hides}`),
            area: <FigureText text={words.figure('areaM2', areaM2)} certainty={certainty} />,
          },
        }))}
      />
    </PartBlock>
  )
