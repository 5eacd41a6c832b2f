/** The zones with area, edge and what is on them now. */
import { heading } from '../blocks.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import type { Flowing } from '../strips.ts'
import { cell, figureCell, strongCell, type TableAt, tableHead, tableRow } from '../table.ts'

export function zonesPart(kit: Kit): readonly Flowing[] {
  const { plan, say, setter } = kit
  const zones = [...plan.surfaces.zones, ...plan.marks.zones]
  if (zones.length === 0) return []
  const measure = measureOf(kit.page)
  const table: TableAt = {
    ...measure,
    setter,
    columns: [
      { head: say.label('column.zone'), align: 'left', share: 50 },
      { head: say.label('column.area'), align: 'right', share: 20 },
      { head: say.label('column.edge'), align: 'right', share: 22 },
      { head: say.label('paperColumn.now'), align: 'left', share: 46 },
      { head: say.label('paperColumn.areaFrom'), align: 'left', share: 32 },
    ],
  }
  const rows = zones.map((zone) =>
    tableRow(table, [
      strongCell(zone.name),
      figureCell(say.sure('areaM2', zone.areaM2, zone.certainty)),
      figureCell(say.sure('edgeM', zone.perimeterM, 'worked')),
      cell(
        zone.how === 'marks'
          ? say.label('paperLayer.onPaint')
          : say.sentence('paper.existing', {
              existing: say.label(`paperOld.${zone.existing}`),
              texture: zone.texture,
            }),
      ),
      cell(say.label(`how.${zone.how}`)),
    ]),
  )
  return [
    {
      gap: 6,
      heading: heading(say.label('paperPart.zones'), { ...measure, setter }),
      repeat: tableHead(table),
      units: rows,
    },
  ]
}
