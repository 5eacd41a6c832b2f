/** A line cut into dashes that are as long on the screen as the look asks, whichever way it runs. */
import type { Projected } from './view.ts'

/** A place on a line: the share of the way from one point to the next. */
type Cut = { readonly from: number; readonly to: number; readonly share: number }
export type Dash = readonly [Cut, Cut]

/** `pattern` is on and off in turn, px. Each chain begins with a dash. */
export function dashesOf(
  chains: readonly (readonly number[])[],
  { x, y }: Pick<Projected, 'x' | 'y'>,
  pattern: readonly number[],
): readonly Dash[] {
  const dashes: Dash[] = []
  for (const chain of chains) {
    let [part, left] = [0, pattern[0]!]
    for (let k = 1; k < chain.length; k += 1) {
      const [from, to] = [chain[k - 1]!, chain[k]!]
      const length = Math.hypot(x[to]! - x[from]!, y[to]! - y[from]!)
      let done = 0
      while (done < length) {
        const step = Math.min(left, length - done)
        const at = (px: number): Cut => ({ from, to, share: px / length })
        if (part % 2 === 0) dashes.push([at(done), at(done + step)])
        done += step
        left -= step
        if (left > 1e-6) continue
        part = (part + 1) % pattern.length
        left = pattern[part]!
      }
    }
  }
  return dashes
}
