/** The zones with their areas: the table twin of the drawing. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { otherSystem } from '../../job/other-system.ts'
import { Ledger, MovedFigure } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'

export type ZoneTableProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly chosen: string | undefined
  readonly onChoose: (zone: string) => void
}

export const ZoneTable = ({ view, plan, chosen, onChoose }: ZoneTableProps) => {
  const { words, before, change } = view
  const zones = [...plan.surfaces.zones, ...plan.marks.zones]
  const areas = new Map(
    [...(before?.surfaces.zones ?? []), ...(before?.marks.zones ?? [])].map((z) => [z.id, z.areaM2]),
  )
  const litres = (id: string): number =>
    plan.quantities.layers.filter(({ zone }) => zone === id).reduce((sum, layer) => sum + layer.mixedM3, 0)
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
        const volume = litres(zone.id)
        return {
          id: zone.id,
          selected: zone.id === chosen,
          onSelect: () => onChoose(zone.id),
          cells: {
            name: zone.name,
            area: (
              <MovedFigure
                text={words.figure('areaM2', zone.areaM2)}
                was={was === undefined ? undefined : words.figure('areaM2', was)}
                change={change.number}
                certainty={zone.certainty}
                label={zone.name}
                detail={{
                  other: otherSystem(view).figure('areaM2', zone.areaM2),
                  formula: labelOf(`how.${zone.how}`),
                  parts: [
                    {
                      label: labelOf('column.edge'),
                      text: words.figure('perimeterM', zone.perimeterM),
                      certainty: zone.certainty,
                    },
                  ],
                  firmUp:
                    zone.certainty === 'measured'
                      ? undefined
                      : words.sentence('boat.firmUpArea', { name: zone.name }),
                }}
              />
            ),
            litres: volume > 0 ? words.figure('volumeM3', volume) : '',
          },
        }
      })}
    />
  )
}
