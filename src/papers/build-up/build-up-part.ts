/** One build-up on the sheet: the section, and a row a layer joined to it by leaders; under it the key of what is used. */
import { fittedLines, lineStrip } from '../blocks.ts'
import type { Kit } from '../kit.ts'
import { type Drawing, dot, line, moved, type Point, textAt } from '../shapes.ts'
import { type Flowing, heightOf, type Strip, space, stacked, type Unit } from '../strips.ts'
import {
  type Cell,
  cell,
  figureCell,
  noCell,
  strongCell,
  type TableAt,
  type TableColumn,
  tableHead,
  tableRow,
} from '../table.ts'
import type { StyleName } from '../type-styles.ts'
import { bandsOf, newId } from './bands.ts'
import { bondLine } from './bond-line.ts'
import { section } from './section.ts'
import type { Stack, StackLayer } from './stacks.ts'

export type BuildUpAt = { readonly x: number; readonly width: number; readonly mostHeight: number }

const sectionWidth = 50
const sectionLeft = 2
const leaders = 14

export function buildUpPart(kit: Kit, stack: Stack, at: BuildUpAt): Flowing {
  const heads = titleStrips(kit, stack, at)
  const table: TableAt = {
    x: at.x + sectionLeft + sectionWidth + leaders,
    width: at.width - sectionLeft - sectionWidth - leaders,
    columns: columnsOf(kit),
    setter: kit.setter,
  }
  const rows = rowsOf(kit, stack)
  const units = rows.map((row) => tableRow(table, row.cells))
  const body = sideBySide(kit, stack, { at, table, units, ids: rows.map((row) => row.id) })
  if (heightOf([heads, body]) <= at.mostHeight) return { gap: 7, heading: heads, units: [[body]] }
  const wide = { ...table, x: at.x, width: at.width }
  return {
    gap: 7,
    heading: heads,
    repeat: tableHead(wide),
    units: rows.map((row) => tableRow(wide, row.cells)),
  }
}

function titleStrips(kit: Kit, stack: Stack, { x, width }: BuildUpAt): Strip {
  const { say, setter } = kit
  const areaM2 = stack.zones.reduce((sum, zone) => sum + zone.areaM2, 0)
  const names = stack.zones
    .map((zone) => say.sentence('paper.zoneArea', { name: zone.name, areaM2: zone.areaM2 }))
    .join('; ')
  const title =
    stack.zones.length <= 3
      ? stack.zones.map((zone) => zone.name).join(', ')
      : say.sentence('paper.zonesMore', { name: stack.zones[0]!.name, count: stack.zones.length - 1 })
  const lines = (text: string, style: StyleName, most: number): readonly Strip[] =>
    fittedLines(setter, { text, style, width, most }).map((line) =>
      lineStrip(line, style, { x, width }, { ink: style === 'part' ? 'ink' : 'ink2' }),
    )
  return stacked([
    ...lines(say.sentence('paper.buildUpOf', { zones: title, areaM2 }), 'part', 3),
    ...(stack.zones.length > 1 ? lines(names, 'small', 8) : []),
    space(1.5),
  ])
}

const columnsOf = ({ say }: Kit): readonly TableColumn[] => [
  { head: say.label('column.layer'), align: 'left', share: 38 },
  { head: say.label('paperColumn.film'), align: 'right', share: 21 },
  { head: say.label('paperColumn.mixed'), align: 'right', share: 16 },
  { head: say.label('paperColumn.recoat'), align: 'right', share: 25 },
]

type Row = { readonly id: string; readonly cells: readonly Cell[] }

/** From the weather side down, as in the section. */
function rowsOf(kit: Kit, stack: Stack): readonly Row[] {
  const layers = stack.layers.map(
    (layer, index): Row => ({ id: newId(index), cells: layerCells(kit, layer) }),
  )
  const { say } = kit
  const bare = stack.existing === 'bare laminate' && !stack.onPaint
  const oldName = stack.onPaint ? say.label('paperLayer.onPaint') : say.label(`paperOld.${stack.existing}`)
  const old: Row = {
    id: 'old',
    cells: [
      strongCell(oldName, stack.onPaint ? '' : keyOf(kit, stack.layers[0]?.sandBefore ?? '')),
      noCell,
      noCell,
      noCell,
    ],
  }
  const laminate: Row = {
    id: 'laminate',
    cells: [strongCell(say.label('paperLayer.laminate')), noCell, noCell, noCell],
  }
  return [...[...layers].reverse(), ...(bare ? [] : [old]), laminate]
}

const keyOf = (kit: Kit, grit: string): string =>
  grit === '' ? '' : kit.say.sentence('paper.sandedWith', { grit })

function layerCells(kit: Kit, layer: StackLayer): readonly Cell[] {
  const { say } = kit
  const coats = say.sentence('paper.familyCoats', {
    family: say.label(`paperFamily.${layer.family}`),
    count: layer.coats,
  })
  const { dryFilmM, recoat } = layer
  const film = dryFilmM ? say.figure('dryFilmM', dryFilmM.value) : ''
  return [
    strongCell(layer.name, coats),
    dryFilmM
      ? figureCell({
          text: layer.coats > 1 ? `${layer.coats} × ${film}` : film,
          certainty: dryFilmM.certainty,
        })
      : noCell,
    figureCell(say.sure('volumeM3', layer.mixedM3.value, layer.mixedM3.certainty)),
    recoat
      ? figureCell(
          { text: recoatText(kit, recoat), certainty: recoat.certainty },
          { text: say.sentence('paper.atAir', { airC: recoat.airC }), certainty: 'worked' },
        )
      : cell(''),
  ]
}

function recoatText({ say }: Kit, { least, most }: NonNullable<StackLayer['recoat']>): string {
  const from = say.figure('hours', least)
  return most === undefined
    ? say.sentence('paper.fromHours', { from })
    : say.sentence('paper.fromTo', { from, to: say.figure('hours', most) })
}

type Parts = {
  readonly at: BuildUpAt
  readonly table: TableAt
  readonly units: readonly Unit[]
  readonly ids: readonly string[]
}

function sideBySide(kit: Kit, stack: Stack, { at, table, units, ids }: Parts): Strip {
  const head = tableHead(table)
  const drawn = section(stack, sectionWidth)
  const rows = stacked([head, ...units.map((unit) => stacked(unit))])
  const rowTops = topsOf(units, head.height)
  const caption = head.height + drawn.height + 5
  const key = keyStrip(kit, stack, { x: at.x + sectionLeft, width: sectionWidth + leaders })
  const left = at.x + sectionLeft
  return {
    height: Math.max(rows.height, caption + 1.5 + key.height),
    draw: (top) => [
      ...rows.draw(top),
      textAt([left, top + head.height - 2], kit.say.label('paperSection.weather'), 'caption', {
        ink: 'ink2',
      }),
      ...moved(drawn.drawing, [left, top + head.height]),
      textAt([left, top + caption], kit.say.label('paperSection.inside'), 'caption', { ink: 'ink2' }),
      textAt([left + sectionWidth, top + caption], kit.say.label('paperSection.notToScale'), 'caption', {
        align: 'right',
        ink: 'ink2',
      }),
      ...ids.flatMap((id, index) =>
        leader(drawn.anchors.get(id), {
          left,
          top: top + head.height,
          rowY: top + rowTops[index]! + 3.4,
          rowX: table.x,
        }),
      ),
      ...key.draw(top + caption + 1.5),
    ],
  }
}

function topsOf(units: readonly Unit[], first: number): readonly number[] {
  let y = first
  return units.map((unit) => {
    const top = y
    y += heightOf(unit)
    return top
  })
}

type Reach = { readonly left: number; readonly top: number; readonly rowY: number; readonly rowX: number }

/** From a dot in the layer straight out of the section, then to its row. */
function leader(anchor: Point | undefined, { left, top, rowY, rowX }: Reach): Drawing {
  if (!anchor) return []
  const from: Point = [left + anchor[0], top + anchor[1]]
  return [
    dot(from, 0.6, 'ink'),
    line('thin', from, [left + sectionWidth + 2, from[1]], [rowX - 4.5, rowY], [rowX - 1.2, rowY]),
  ]
}

/** The lines used between the layers of this build-up, nothing else. */
function keyStrip(
  kit: Kit,
  stack: Stack,
  { x, width }: { readonly x: number; readonly width: number },
): Strip {
  const { bands } = bandsOf(stack)
  const fresh = bands.filter(({ id }) => id.startsWith('new:'))
  const used = (['keyed', 'same coat', 'not tested'] as const).filter((bond) =>
    fresh.some((band) => band.below === bond || (band.coatLines.length > 0 && band.between === bond)),
  )
  return stacked(
    used.map((bond) => {
      const words = lineStrip(kit.say.label(`paperBond.${bond}`), 'small', { x: x + 14, width: width - 14 })
      return {
        height: words.height + 0.8,
        draw: (top) => [
          bondLine(bond, { from: x, to: x + 11, y: top + words.height / 2 }),
          ...words.draw(top),
        ],
      }
    }),
  )
}
