/** The rooms of the road, each as a command of its own. */
import { weatherAtHand } from '#plan'
import { boatJson, boatLines } from '../views/boat-view.ts'
import { daysJson, daysLines } from '../views/days-view.ts'
import { hoursJson, hoursLines, hoursNotes, wouldMake } from '../views/hours-view.ts'
import { marksJson, marksLines } from '../views/marks-view.ts'
import { moneyJson, moneyLines } from '../views/money-view.ts'
import { poursJson, poursLines } from '../views/pours-view.ts'
import { repairsJson, repairsLines } from '../views/repairs-view.ts'
import { storesJson, storesLines } from '../views/stores-view.ts'
import { planPart } from './plan-part.ts'

export const boat = planPart({
  name: 'boat',
  summary: 'surfaces, zones, areas',
  lines: (plan, _work, words) => boatLines(plan, words),
  json: (plan) => ({ ...boatJson(plan), notes: plan.surfaces.notes }),
})

export const marks = planPart({
  name: 'marks',
  summary: 'tape lines and panels, with the numbers to strike them',
  lines: (plan, _work, words) => marksLines(plan, words),
  json: (plan) => ({ ...marksJson(plan), notes: plan.marks.notes }),
})

export const repairs = planPart({
  name: 'repairs',
  summary: 'findings and hardware; recipes are not worked out yet',
  lines: (plan, _work, words) => repairsLines(plan, words),
  json: (plan) => ({ ...repairsJson(plan), notes: plan.repairs.notes }),
})

export const hours = planPart({
  name: 'hours',
  summary: 'paintable hours for each product, from the weather',
  lines: (plan, _work, words, input) => hoursLines(plan, words, wouldMake(plan, input)),
  json: (plan, input) => ({
    ...hoursJson(plan, weatherAtHand(input)?.behind, wouldMake(plan, input)),
    notes: hoursNotes(plan),
  }),
})

export const days = planPart({
  name: 'days',
  summary: 'the calendar; how likely its dates are is not reckoned yet',
  lines: daysLines,
  json: (plan) => ({ ...daysJson(plan), notes: plan.days.notes }),
})

export const pours = planPart({
  name: 'pours',
  summary: 'mix cards: what goes in each cup, when, and what it covers',
  lines: poursLines,
  json: (plan) => ({ ...poursJson(plan), notes: plan.pours.notes }),
})

export const stores = planPart({
  name: 'stores',
  summary: 'what to buy',
  lines: (plan, _work, words) => storesLines(plan, words),
  json: (plan) => ({ ...storesJson(plan), notes: plan.stores.notes }),
})

export const money = planPart({
  name: 'money',
  summary: 'the estimate and the change orders',
  lines: (plan, _work, words) => moneyLines(plan, words),
  json: (plan) => ({ ...moneyJson(plan), notes: plan.money?.notes ?? [] }),
})
