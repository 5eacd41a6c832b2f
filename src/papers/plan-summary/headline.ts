/** What the plan says first: dates and hours, then how it stands with the launch. */
import { paragraph } from '../blocks.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { type Flowing, space } from '../strips.ts'
import { allHours } from '../work-hours.ts'

export function headline(kit: Kit): Flowing {
  const of = { ...measureOf(kit.page), setter: kit.setter }
  return {
    gap: 0,
    units: [
      [
        ...paragraph(firstSentence(kit), 'sheet', of),
        space(1),
        ...paragraph(secondSentence(kit), 'say', of),
        ...paragraph(aboutSentence(kit), 'small', of, { ink: 'ink2' }),
      ],
    ],
  }
}

function firstSentence({ plan, job, say }: Kit): string {
  const { days } = plan.days
  const [first, last] = [days[0], days.at(-1)]
  if (!first || !last) return say.sentence('paper.nothingPlanned', { boat: job.boatName })
  return say.sentence('paper.planHeadline', {
    boat: job.boatName,
    work: say.hours(allHours(plan)),
    count: days.length,
    fromDate: first.date,
    untilDate: last.date,
  })
}

function secondSentence({ plan, job, say }: Kit): string {
  const { launchMinute, unplaced, days } = plan.days
  if (days.length === 0) return say.sentence('paper.giveWork')
  if (unplaced.length > 0) return say.sentence('paper.stepsUnplaced', { count: unplaced.length })
  if (launchMinute === undefined) return ''
  const slingsDate = say.dateOf(launchMinute)
  if (job.launchDate === undefined) return say.sentence('paper.slingsFrom', { slingsDate })
  const spare = daysBetween(slingsDate, job.launchDate)
  const code = spare >= 0 ? 'paper.slingsInTime' : 'paper.slingsLate'
  return say.sentence(code, { slingsDate, launchDate: job.launchDate, count: Math.abs(spare) })
}

export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000)

const aboutSentence = ({ job }: Kit): string =>
  [job.name, job.owner, job.shop, job.place].filter((part) => part !== '').join(' \u00b7 ')
