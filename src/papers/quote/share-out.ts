/**
 * Rounded values that add up: the whole is rounded once, and the step that is over goes to the parts that lost most.
 * SOURCE: largest-remainder method (Hamilton's apportionment, 1792).
 */

/** Values rounded to whole steps so that they sum to the rounded sum. */
export function shareOut(values: readonly number[], step: number): readonly number[] {
  const scaled = values.map((value) => value / step)
  const floors = scaled.map(Math.floor)
  const whole = Math.round(scaled.reduce((sum, value) => sum + value, 0))
  const over = whole - floors.reduce((sum, value) => sum + value, 0)
  const byRemainder = scaled
    .map((value, index) => ({ index, rest: value - floors[index]! }))
    .sort((a, b) => b.rest - a.rest || a.index - b.index)
  const raised = new Set(byRemainder.slice(0, over).map(({ index }) => index))
  return floors.map((floor, index) => tidy((floor + (raised.has(index) ? 1 : 0)) * step))
}

const tidy = (value: number): number => Math.round(value * 10) / 10
