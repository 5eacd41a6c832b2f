/** The colour of the paint that stands outermost on the chosen zone, to be changed where it is seen. */
import { labelOf } from '#words'
import { Cells } from '../../fields/cells.tsx'
import type { JobView } from '../../job/job-view.ts'
import { PartBlock } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { outerSheet } from './solid/picture.ts'

export type PaintCellProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly zone: string | undefined
}

export const PaintCell = ({ view, plan, zone }: PaintCellProps) => {
  const sheet = zone === undefined ? undefined : outerSheet(plan, zone)
  return sheet ? (
    <PartBlock title={sheet.name} level={3}>
      <Cells
        view={view}
        place={{ part: 'work', section: 'sheets', item: sheet.id }}
        keys={['colour']}
        helped
      />
    </PartBlock>
  ) : (
    <p className="boat-look-help">{labelOf('boat.choosePainted')}</p>
  )
}
