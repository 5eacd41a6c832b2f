/** How any figure of a plan came about, told when somebody asks: nothing of it is kept with the plan. */
import type { PlanInput } from '../plan.ts'
import { readCatalogue } from '../read-catalogue.ts'
import type { Plan } from '../types.ts'
import { airWay } from './air-ways.ts'
import { panelWay, ruleWay, zoneAreaWay } from './area-ways.ts'
import { changeWay, moneyGroupWay, moneyHoursWay, moneyLineWay, moneySumWay } from './money-ways.ts'
import { layerFilmWay, layerLitresWay, pourWay, zoneLitresWay } from './paint-ways.ts'
import { consumableWay, storeWay } from './store-ways.ts'
import { stripeWay } from './stripe-ways.ts'
import type { Told } from './told.ts'
import type { FigureRef, Way } from './way.ts'

export type TellInput = Pick<PlanInput, 'work' | 'money' | 'catalogue'> & { readonly plan: Plan }

/** Undefined for a figure that the plan does not have, or that nobody knows how it was made. */
export function tellWay({ plan, work, money, catalogue }: TellInput, ref: FigureRef): Way | undefined {
  const known = readCatalogue.run({ catalogue })
  return tell({ plan, work, catalogue, known, ...(money ? { money } : {}) }, ref)
}

function tell(told: Told, ref: FigureRef): Way | undefined {
  switch (ref.kind) {
    case 'zone area':
      return zoneAreaWay(told, ref.zone)
    case 'zone litres':
      return zoneLitresWay(told, ref.zone)
    case 'rule area':
      return ruleWay(told, ref.rule)
    case 'layer film':
      return layerFilmWay(told, ref)
    case 'layer litres':
      return layerLitresWay(told, ref)
    case 'stripe':
      return stripeWay(told, ref)
    case 'panel':
      return panelWay(told, ref.mark, ref.of)
    case 'store':
      return storeWay(told, ref)
    case 'consumable':
      return consumableWay(told, ref)
    case 'money line':
      return moneyLineWay(told, ref.line)
    case 'money hours':
      return moneyHoursWay(told, ref.line)
    case 'money group':
      return moneyGroupWay(told, ref.group)
    case 'money sum':
      return moneySumWay(told, ref.of)
    case 'change':
      return changeWay(told, ref.change)
    case 'air':
      return airWay(told, ref)
    case 'pour':
      return pourWay(told, ref)
  }
}
