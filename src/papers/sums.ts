/** A column of money: lines, net, tax, total; the total under a thick rule. */
import type { Kit } from './kit.ts'
import { measureOf } from './page.ts'
import { line } from './shapes.ts'
import type { Strip, Unit } from './strips.ts'
import { type Cell, cell, figureCell, strongCell, type TableAt, tableRow } from './table.ts'

export type SumLine = {
  readonly label: string
  readonly amount: string
  readonly coins: number
  readonly weight: 'line' | 'total'
}

export const sumsTable = ({ page, setter }: Kit): TableAt => ({
  ...measureOf(page),
  setter,
  columns: [
    { head: '', align: 'left', share: 92 },
    { head: '', align: 'right', share: 36 },
    { head: '', align: 'right', share: 42 },
  ],
})

export function sumUnits(kit: Kit, lines: readonly SumLine[]): readonly Unit[] {
  const table = sumsTable(kit)
  return lines.map(({ label, amount, coins, weight }) => {
    const cells: readonly Cell[] = [
      weight === 'total' ? strongCell(label) : cell(label),
      amount === '' ? cell('') : figureCell({ text: amount, certainty: 'worked' }),
      figureCell({ text: kit.say.figure('totalCoins', coins), certainty: 'worked' }),
    ]
    const row = tableRow(table, cells)
    return weight === 'total' ? [bar(table), ...row] : row
  })
}

const bar = ({ x, width }: TableAt): Strip => ({
  height: 0.6,
  draw: (top) => [line('outline', [x, top], [x + width, top])],
})
