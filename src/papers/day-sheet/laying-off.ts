/** How each coat of the day is laid off: the way round, tools, sections against the wet edge, and how it looks when right. */
import { describeLaying } from '#plan'
import { heading, paragraph } from '../blocks.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { type Strip, space, stacked } from '../strips.ts'
import type { DayData } from './day-data.ts'

type Told = { readonly numbers: number[]; readonly names: string[]; readonly lines: readonly string[] }

/** A strip for each way of laying off, the first under a heading; coats laid off alike stand in one, by their numbers. */
export function layingOff(kit: Kit, data: DayData): readonly Strip[] {
  const { plan, say, setter } = kit
  const told = new Map<string, Told>()
  for (const { number, pour } of data.pours) {
    const lines =
      pour.nr === 1 ? describeLaying(plan, pour).map((one) => say.sentence(one.code, one.data)) : []
    // Of filler there is no more to say than how it looks.
    if (lines.length < 2) continue
    const name = plan.buildUps.sheets.find(({ id }) => id === pour.sheet)?.name ?? pour.sheet
    const key = lines.join(' ')
    const same = told.get(key) ?? { numbers: [], names: [], lines }
    told.set(key, same)
    if (!same.numbers.includes(number)) same.numbers.push(number)
    if (!same.names.includes(name)) same.names.push(name)
  }
  const of = { ...measureOf(kit.page), setter }
  return [...told.values()].map(({ numbers, names, lines }, at) =>
    stacked([
      ...(at === 0 ? [space(2.5), heading(say.label('paper.layingOff'), of)] : []),
      ...paragraph(`${numbers.join(', ')}. ${names.join('; ')}`, 'label', of),
      space(0.8),
      ...lines.flatMap((text) => [...paragraph(text, 'small', of), space(0.8)]),
      space(2),
    ]),
  )
}
