/** The same pours as lines of a table, for a day with more of them than there is room for cards. */
import type { Figure } from '../figure.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { type Strip, stacked } from '../strips.ts'
import {
  cell,
  figureCell,
  strongCell,
  type TableAt,
  type TableColumn,
  tableHead,
  tableRow,
} from '../table.ts'
import type { DayPour } from './day-data.ts'
import { type MixAmounts, type MixPart, mixAmounts } from './mix-amounts.ts'

const allParts = ['A', 'B', 'thinner', 'bead'] as const

export function mixTable(kit: Kit, pours: readonly DayPour[]): Strip {
  const mixed = pours.map((pour) => ({ ...pour, amounts: mixAmounts(pour.pour) }))
  const parts = allParts.filter((part) =>
    mixed.some(({ amounts }) => amounts.parts.some((one) => one.part === part)),
  )
  const table: TableAt = { ...measureOf(kit.page), setter: kit.setter, columns: columnsOf(kit, parts) }
  return stacked([
    tableHead(table),
    ...mixed.map((pour) => stacked(tableRow(table, cellsOf(kit, pour, parts)).slice(1))),
  ])
}

type Part = MixPart['part']

const columnsOf = ({ say }: Kit, parts: readonly Part[]): readonly TableColumn[] => [
  { head: say.label('paperWrite.step'), align: 'left', share: 9 },
  { head: say.label('column.product'), align: 'left', share: 44 + 16 * (allParts.length - parts.length) },
  ...parts.map((part): TableColumn => ({ head: say.label(`paperMix.${part}`), align: 'right', share: 16 })),
  ...(['mix', 'from', 'until'] as const).map(
    (key): TableColumn => ({ head: say.label(`paperClock.${key}`), align: 'right', share: 15 }),
  ),
]

type Mixed = DayPour & { readonly amounts: MixAmounts }

function cellsOf(kit: Kit, { number, pour, amounts }: Mixed, parts: readonly Part[]) {
  const { say, plan, setter } = kit
  const sheet = plan.buildUps.sheets.find((one) => one.id === pour.sheet)
  const amount = (part: Part): readonly Figure[] => {
    const found = amounts.parts.find((one) => one.part === part)
    return found ? [{ text: say.millilitres(found.ml, amounts.decimals), certainty: pour.certainty }] : []
  }
  return [
    strongCell(String(number)),
    cell(setter.fit(sheet?.name ?? pour.sheet, 'body', 38 + 14 * (allParts.length - parts.length))),
    ...parts.map((part) => figureCell(...amount(part))),
    cell(say.time(pour.mixAtMinute)),
    cell(say.time(pour.useFromMinute)),
    strongCell(pour.useUntilMinute === undefined ? '\u2013' : say.time(pour.useUntilMinute)),
  ]
}
