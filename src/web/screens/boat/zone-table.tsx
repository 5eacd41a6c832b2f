/** The zones with their areas: the table twin of the drawing. */
import { weakest } from '#plan'
import { labelOf } from '#words'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { Ledger } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'

export type ZoneTableProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
}

export const ZoneTable = ({ view, plan, chosen, onChoose }: ZoneTableProps) => {
  const { words, before } = view
  const zones = [...plan.surfaces.zones, ...plan.marks.zones]
  const areas = new Map(
    [...(before?.surfaces.zones ?? []), ...(before?.marks.zones ?? [])].map((z) => [z.id, z.areaM2]),
  )
  const own = (id: string) => plan.quantities.layers.filter(({ zone }) => zone === id)
  return (
    <Ledger
      caption={labelOf('heading.zones')}
      columns={[
        { key: 'name', label: labelOf('column.zone'), phone: 'first' },
        { key: 'area', label: labelOf('column.area'), align: 'right', phone: 'side' },
        { key: 'litres', label: labelOf('boat.paint'), align: 'right', phone: 'second' },
      ]}
      rows={zones.map((zone) => {
        const was = areas.get(zone.id)
        const volume = own(zone.id).reduce((sum, layer) => sum + layer.mixedM3, 0)
        return {
          id: zone.id,
          selected: zone.id === chosen,
          onSelect: () => onChoose(zone.id),
          cells: {
            name: zone.name,
            area: (
              <WayFigure
                view={view}
                of={{ kind: 'zone area', zone: zone.id }}
                text={words.figure('areaM2', zone.areaM2)}
                was={was === undefined ? undefined : words.figure('areaM2', was)}
                certainty={zone.certainty}
                label={zone.name}
              />
            ),
            litres:
              volume > 0 ? (
                <WayFigure
                  view={view}
                  of={{ kind: 'zone litres', zone: zone.id }}
                  text={words.figure('volumeM3', volume)}
                  certainty={weakest(...own(zone.id).map(({ certainty }) => certainty))}
                  label={words.sentence('boat.paintOn', { name: zone.name })}
                />
              ) : (
                ''
              ),
          },
        }
      })}
    />
  )
}
