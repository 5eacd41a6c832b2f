/** Pours as lines of a table, for a day with more of them than there is room for cards. */

import { type MixAmounts, type MixPart, mixAmounts } from '#plan'
import { fittedLines } from '../blocks.ts'
import type { Figure } from '../figure.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { type Strip, stacked, type Unit } from '../strips.ts'
import {
  cell,
  figureCell,
  slotsOf,
  strongCell,
  type TableAt,
  type TableColumn,
  tableHead,
  tableRow,
} from '../table.ts'
import type { DayPour } from './day-data.ts'

export type MixedPour = DayPour & { readonly amounts: MixAmounts }
type Part = MixPart['part']

const allParts = ['A', 'B', 'thinner', 'bead'] as const

export const mixedOf = (pours: readonly DayPour[]): readonly MixedPour[] =>
  pours.map((pour) => ({ ...pour, amounts: mixAmounts(pour.pour) }))

export function mixTable(kit: Kit, pours: readonly DayPour[]): Strip {
  const mixed = mixedOf(pours)
  const table: TableAt = {
    ...measureOf(kit.page),
    setter: kit.setter,
    columns: mixColumns(kit, mixed),
  }
  return stacked([
    tableHead(table),
    ...mixed.map((pour) => stacked(mixRow(kit, table, { pour, pours: mixed }).slice(1))),
  ])
}

/** Only the parts that some pour has get a column. */
const partsOf = (pours: readonly MixedPour[]): readonly Part[] =>
  allParts.filter((part) => pours.some(({ amounts }) => amounts.parts.some((one) => one.part === part)))

function mixColumns(kit: Kit, pours: readonly MixedPour[]): readonly TableColumn[] {
  const { say } = kit
  const parts = partsOf(pours)
  const product = 44 + 16 * (allParts.length - parts.length)
  return [
    { head: say.label('paperWrite.step'), align: 'left', share: 9 },
    { head: say.label('column.product'), align: 'left', share: product },
    ...parts.map((part): TableColumn => ({ head: say.label(`paperMix.${part}`), align: 'right', share: 16 })),
    ...(['mix', 'from', 'until'] as const).map(
      (key): TableColumn => ({
        head: say.label(`paperClock.${key}`),
        align: 'right',
        share: say.hour12 ? 20 : 15,
      }),
    ),
  ]
}

type Row = { readonly pour: MixedPour; readonly pours: readonly MixedPour[] }

function mixRow(kit: Kit, table: TableAt, { pour: { number, pour, amounts }, pours }: Row): Unit {
  const { say, plan } = kit
  const sheet = plan.buildUps.sheets.find((one) => one.id === pour.sheet)
  const amount = (part: Part): readonly Figure[] => {
    const found = amounts.parts.find((one) => one.part === part)
    return found ? [{ text: say.millilitres(found.ml, amounts.decimals), certainty: pour.certainty }] : []
  }
  return tableRow(table, [
    strongCell(String(number)),
    cell(
      nameLines(
        kit,
        table,
        say.sentence('paper.cupsOf', { times: pour.times, name: sheet?.name ?? pour.sheet }),
      ),
    ),
    ...partsOf(pours).map((part) => figureCell(...amount(part))),
    cell(say.time(pour.mixAtMinute)),
    cell(say.time(pour.useFromMinute)),
    strongCell(pour.useUntilMinute === undefined ? '\u2013' : say.time(pour.useUntilMinute)),
  ])
}

/** Two lines of a name tell one can from another. */
const nameLines = ({ setter }: Kit, table: TableAt, text: string): string =>
  fittedLines(setter, { text, style: 'body', width: slotsOf(table)[1]?.width ?? 0, most: 2 }).join('\n')
