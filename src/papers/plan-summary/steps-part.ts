/** Every step, day by day, with the numbers that stand on the day sheets, and its pours. */

import { partKey } from '#plan'
import { heading, lineStrip } from '../blocks.ts'
import { type DayData, dayData } from '../day-sheet/day-data.ts'
import { type MixedPour, mixedOf } from '../day-sheet/mix-table.ts'
import { timesOf } from '../day-sheet/steps-list.ts'
import { nameOf } from '../day-sheet/tape.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { inked, line } from '../shapes.ts'
import { beside, type Flowing, type Strip, space, type Unit } from '../strips.ts'
import { slotsOf, type TableColumn } from '../table.ts'
import { dayHours } from '../work-hours.ts'

export function stepsPart(kit: Kit): readonly Flowing[] {
  const days = kit.plan.days.days.map((day) => dayData(kit, day.date))
  if (days.length === 0) return []
  const of = { ...measureOf(kit.page), setter: kit.setter }
  return [
    {
      gap: 8,
      heading: heading(kit.say.label('paperPart.steps'), of),
      units: days.map((day) => dayUnit(kit, day)),
    },
  ]
}

function dayUnit(kit: Kit, data: DayData): Unit {
  const { x, width } = measureOf(kit.page)
  const mixed = mixedOf(data.pours)
  const hours = data.day ? kit.say.hours(dayHours(data.day)) : ''
  return [
    lineStrip(`${kit.say.date(data.date)}, ${hours}`, 'strong', { x, width }),
    { height: 0.8, draw: (top) => [inked(line('thin', [x, top + 0.2], [x + width, top + 0.2]), 'rule')] },
    ...data.steps.flatMap((step) => [
      ...stepLines(kit, data, step),
      ...mixed.filter((pour) => pour.number === step.number).flatMap((pour) => pourLines(kit, pour)),
    ]),
    space(2.2),
  ]
}

/** Clock times with `am` and `pm` take more room. */
const columnsFor = ({ say }: Kit): readonly TableColumn[] => {
  const times = say.hour12 ? 37 : 25
  return [
    { head: '', align: 'right', share: 7 },
    { head: '', align: 'left', share: times },
    { head: '', align: 'left', share: 129 - times },
    { head: '', align: 'left', share: 34 },
  ]
}

function stepLines(kit: Kit, data: DayData, step: DayData['steps'][number]): readonly Strip[] {
  const slots = slotsOf({ ...measureOf(kit.page), columns: columnsFor(kit) })
  const texts = [
    String(step.number),
    timesOf(kit, data, step),
    step.text,
    step.people.map((id) => nameOf(kit, id)).join(', '),
  ]
  const columns = texts.map((text, index) => kit.setter.wrap(text, 'small', slots[index]!.width))
  const count = Math.max(...columns.map((lines) => lines.length))
  return Array.from({ length: count }, (_, row) =>
    beside(
      columns.map((lines, index) =>
        lineStrip(lines[row] ?? '', 'small', slots[index]!, { align: slots[index]!.align }),
      ),
    ),
  )
}

/** Under its step: what goes in the cup, and the clock of the pour. */
function pourLines(kit: Kit, { pour, amounts }: MixedPour): readonly Strip[] {
  const { say, setter } = kit
  const slot = slotsOf({ ...measureOf(kit.page), columns: columnsFor(kit) })[2]!
  const parts = amounts.parts.map(
    ({ part, ml }) =>
      `${say.label(`paperMix.${partKey(pour, part)}`)} ${say.millilitres(ml, amounts.decimals)}`,
  )
  const text = say.sentence('paper.pourLine', {
    nr: pour.nr,
    of: pour.of,
    times: pour.times,
    parts: parts.join(', '),
    mixAt: say.time(pour.mixAtMinute),
    from: say.time(pour.useFromMinute),
    until: pour.useUntilMinute === undefined ? 'none' : say.time(pour.useUntilMinute),
  })
  const { x, width } = measureOf(kit.page)
  const of = { x: slot.x + 3, width: x + width - slot.x - 3 }
  return setter.wrap(text, 'fine', of.width).map((each) => lineStrip(each, 'fine', of, { ink: 'ink2' }))
}
