/** The estimate, line by line, and the change orders. */
import { amountText, moneyLineName } from '#papers'
import type { Plan } from '#plan'
import type { Words } from '#words'
import { section, table } from './table.ts'

export function moneyLines(plan: Plan, words: Words): readonly string[] {
  const { money } = plan
  if (!money) return section(words.label('heading.money'), [words.sentence('money.notShown')])
  const coins = (value: number | undefined): string =>
    value === undefined
      ? words.label('money.noPrice')
      : words.figure('coins', value, { currency: money.currency })
  const rows = money.lines.map((line) => [
    moneyLineName(plan, line, words),
    amountText(line.quantity, line.unit, words),
    line.unitCoins === undefined ? '' : coins(line.unitCoins),
    coins(line.coins),
  ])
  const sums: readonly (readonly [string, number])[] = [
    ['margin', money.marginCoins],
    ['net', money.netCoins],
    ['tax', money.taxCoins],
    ['total', money.totalCoins],
    ['deposit', money.depositCoins],
  ]
  const totals = sums.map(([key, value]) => [words.label(`money.${key}`), '', '', coins(value)])
  const changes = money.changes.map((change) => [
    change.name,
    words.figure('hours', change.hours),
    words.figure('days', change.days),
    coins(change.totalCoins),
  ])
  return [
    ...section(
      words.label('heading.money'),
      table([...rows, ...totals], ['left', 'right', 'right', 'right']),
    ),
    ...section(words.label('heading.changes'), table(changes, ['left', 'right', 'right', 'right'])),
  ]
}

export const moneyJson = (plan: Plan) => {
  const { money } = plan
  if (!money) return { shown: false }
  const { lines, changes, notes: _notes, ...rest } = money
  return {
    shown: true,
    ...rest,
    lines: lines.map((line) => ({ ...line })),
    changes: changes.map(({ volumeM3, ...change }) => ({ ...change, volumeL: volumeM3 * 1000 })),
  }
}
