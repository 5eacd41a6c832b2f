/** Sets strips down pages: as many pages as it takes, nothing over the edge. */
import type { Drawing } from './shapes.ts'
import { type Flowing, heightOf, type Strip, type Unit } from './strips.ts'

export type Column = { readonly top: number; readonly bottom: number }

/** @returns a drawing for each page, at least one. */
export function flow(parts: readonly Flowing[], { top, bottom }: Column): readonly Drawing[] {
  const pages: Drawing[] = [[]]
  let y = top
  const room = (height: number): boolean => y + height <= bottom + 1e-6
  const turn = (): void => {
    pages.push([])
    y = top
  }
  const put = (strip: Strip): void => {
    pages[pages.length - 1] = [...(pages.at(-1) ?? []), ...strip.draw(y)]
    y += strip.height
  }
  const putUnit = (unit: Unit, repeat: readonly Strip[]): void => {
    const whole = heightOf(unit)
    if (!room(whole) && whole + heightOf(repeat) <= bottom - top) {
      turn()
      repeat.forEach(put)
    }
    for (const strip of unit) {
      if (!room(strip.height) && y > top) {
        turn()
        repeat.forEach(put)
      }
      put(strip)
    }
  }
  for (const part of parts) {
    const repeat = part.repeat ? [part.repeat] : []
    const lead = [...(part.heading ? [part.heading] : []), ...repeat]
    const first = part.units[0] ?? []
    const together = heightOf(lead) + Math.min(heightOf(first), (bottom - top) / 2)
    if (y > top) {
      if (room(part.gap + together)) y += part.gap
      else turn()
    }
    lead.forEach(put)
    for (const unit of part.units) putUnit(unit, repeat)
  }
  return pages
}
