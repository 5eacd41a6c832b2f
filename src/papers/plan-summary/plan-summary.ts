/** The whole plan on paper: sentence, boat, zones, dates, build-ups, days, what to buy, notes, cautions. */
import { heading } from '../blocks.ts'
import { buildUpPart } from '../build-up/build-up-part.ts'
import { stacksOf } from '../build-up/stacks.ts'
import { flow } from '../flow.ts'
import type { Kit } from '../kit.ts'
import { linesPlan, noLinesPlan } from '../lines-plan/lines-plan.ts'
import { columnOf, measureOf } from '../page.ts'
import { sheetsOf } from '../sheets.ts'
import { type Flowing, type Strip, space, stacked } from '../strips.ts'
import type { PdfSheets } from '../to-pdf.ts'
import { buyPart } from './buy-part.ts'
import { cautionsPart } from './cautions-part.ts'
import { datesPart } from './dates-part.ts'
import { daysPart } from './days-part.ts'
import { headline } from './headline.ts'
import { notesPart } from './notes-part.ts'
import { stepsPart } from './steps-part.ts'
import { zonesPart } from './zones-part.ts'

export function planSummarySheets(kit: Kit): PdfSheets {
  const { say, plan } = kit
  const parts = [
    headline(kit),
    boatPart(kit),
    ...datesPart(kit),
    ...zonesPart(kit),
    ...buildUps(kit),
    ...daysPart(kit),
    ...buyPart(kit),
    ...notesPart(kit),
    ...cautionsPart(kit),
    ...stepsPart(kit),
  ]
  return sheetsOf(kit, {
    title: say.label('paperTitle.planSummary'),
    date: say.date(say.dateOf(Math.floor(plan.stamp.nowMs / 60_000))),
    pages: flow(parts, columnOf(kit.page)),
  })
}

function boatPart(kit: Kit): Flowing {
  const { x, width } = measureOf(kit.page)
  const drawn = linesPlan(kit, { x, width, mostHeight: 92 }) ?? noLinesPlan(kit, { x, width })
  return { gap: 3, units: [[drawn]] }
}

const under = (title: Strip, part: Flowing): Flowing => ({
  ...part,
  heading: stacked([title, space(2), ...(part.heading ? [part.heading] : [])]),
})

function buildUps(kit: Kit): readonly Flowing[] {
  const { x, width } = measureOf(kit.page)
  const { top, bottom } = columnOf(kit.page)
  const title = heading(kit.say.label('paperPart.buildUps'), { x, width, setter: kit.setter })
  const parts = stacksOf(kit.plan).map((stack) =>
    buildUpPart(kit, stack, { x, width, mostHeight: bottom - top - 12 }),
  )
  return parts.map((part, index) => (index === 0 ? under(title, part) : part))
}
