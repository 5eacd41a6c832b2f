/** The sanding below each layer of a build-up, grit by grit. */
import type { Stack } from '#papers'
import { sandingRows } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { FigureText, Ledger, PartBlock } from '../../parts/index.ts'

export const Sanding = ({ stack, view }: { readonly stack: Stack; readonly view: JobView }) => {
  const { plan, words } = view
  const zones = new Set(stack.zones.map(({ id }) => id))
  const rows = sandingRows(plan?.buildUps.layers.filter(({ zone }) => zones.has(zone)) ?? [])
  if (rows.length === 0) return null
  return (
    <PartBlock title={labelOf('sanding.title')}>
      <Ledger
        caption={labelOf('sanding.title')}
        columns={[
          { key: 'name', label: labelOf('sanding.before'), phone: 'second' },
          { key: 'grit', label: labelOf('sanding.grit'), phone: 'first' },
          { key: 'area', label: labelOf('column.area'), align: 'right', phone: 'second' },
          { key: 'hours', label: labelOf('sanding.hours'), align: 'right', phone: 'side' },
          { key: 'discs', label: labelOf('sanding.discs'), align: 'right', phone: 'second', named: true },
        ]}
        rows={rows.map(({ layer, name, when, grit, areaM2, hours, discs }) => ({
          id: `${layer} ${when} ${grit}`,
          cells: {
            name: words.sentence('sanding.at', { name, when }),
            grit,
            area: words.figure('areaM2', areaM2),
            hours: <FigureText text={words.figure('workHours', hours.value)} certainty={hours.certainty} />,
            discs: words.figure('count', Math.ceil(discs)),
          },
        }))}
      />
    </PartBlock>
  )
}
