/** The findings with their places: the table twin of the balloons. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Ledger } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'

export type FindingTableProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
}

export const FindingTable = ({ view: { words }, plan, chosen, onChoose }: FindingTableProps) => (
  <Ledger
    caption={labelOf('survey.findings')}
    columns={[
      { key: 'mark', label: labelOf('finding.mark'), phone: 'side', width: '3.5rem' },
      { key: 'what', label: labelOf('stores.what'), phone: 'first' },
      { key: 'where', label: labelOf('finding.where'), phone: 'second' },
    ]}
    rows={plan.repairs.repairs.map((finding, index) => {
      const zone = [...plan.surfaces.zones, ...plan.marks.zones].find(({ id }) => id === finding.zone)
      return {
        id: finding.finding,
        selected: finding.zone === chosen,
        onSelect: () => onChoose(finding.zone),
        cells: {
          mark: `F${index + 1}`,
          what: finding.name,
          where: words.sentence('boat.findingAt', {
            zone: zone?.name ?? finding.zone,
            ...placeData(finding),
          }),
        },
      }
    })}
  />
)

function placeData({ at: { xM, yM, heightM } = {} }: ShownPlan['repairs']['repairs'][number]) {
  const off = yM === undefined ? {} : { offM: Math.abs(yM), side: yM < 0 ? 'starboard' : 'port' }
  return { xM, heightM, ...off }
}
