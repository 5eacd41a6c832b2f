/** How sums of money came about: hours and packs at their prices, each line rounded to the coin once, then the shares. */
import { labourMinutes, type Role } from '../labour-minutes.ts'
import type { Estimate, MoneyLine } from '../types.ts'
import { type Told, workCell } from './told.ts'
import {
  type CellAt,
  given,
  type MoneyGroup,
  nearest,
  over,
  type Part,
  plus,
  type Term,
  times,
  up,
  type Way,
  wayOf,
  worked,
} from './way.ts'

const moneyCell = (section: string, item: string | undefined, key: string): CellAt => ({
  part: 'money',
  section,
  ...(item === undefined ? {} : { item }),
  key,
})

export function moneyLineWay(told: Told, id: string): Way | undefined {
  const line = told.plan.money?.lines.find((one) => one.id === id)
  const part = line && linePart(told, line)
  return part && wayOf(part)
}

/** Undefined without a price. */
function linePart(told: Told, line: MoneyLine): Part | undefined {
  const { coins, unitCoins } = line
  if (coins === undefined || unitCoins === undefined) return undefined
  const base = { name: `line.${line.group}`, of: line.subject, key: 'coins', certainty: 'worked' as const }
  const price = given({
    name: `each.${line.group}`,
    key: 'coins',
    value: unitCoins,
    certainty: 'measured',
    at: priceCell(told, line),
  })
  if (line.group === 'costs') return { ...price, name: base.name, of: line.subject }
  return worked(base, nearest(times(quantityPart(told, line), price), 1))
}

function priceCell({ money }: Told, { group, id, subject }: MoneyLine): CellAt {
  if (group === 'labour') {
    const rate =
      money?.rates.find(({ role }) => role === id) ?? money?.rates.find(({ role }) => role === 'lead')
    return moneyCell('rates', rate?.id, 'hourly')
  }
  if (group === 'materials')
    return moneyCell('prices', money?.prices.find(({ pack }) => pack === id.split(':')[1])?.id, 'price')
  if (group === 'costs') return moneyCell('costs', id, 'amount')
  if (subject === 'sundries') return moneyCell('terms', undefined, 'sundries')
  const price = money?.consumablePrices.find(({ consumable }) => consumable === subject)
  return moneyCell('consumablePrices', price?.id, 'price')
}

function quantityPart(told: Told, line: MoneyLine): Part {
  if (line.group === 'labour') return hoursPart(told, line)
  const key = line.unit === 'L' ? 'litres' : 'count'
  return given({ name: `quantity.${line.group}`, key, value: line.quantity, certainty: 'worked' })
}

export function moneyHoursWay(told: Told, id: string): Way | undefined {
  const line = told.plan.money?.lines.find((one) => one.id === id && one.group === 'labour')
  return line && wayOf(hoursPart(told, line))
}

/** Hours at the boat, with the opening and closing of each day, in quarters of an hour. */
function hoursPart(told: Told, line: MoneyLine): Part {
  const { plan, work, known, catalogue } = told
  const { rates } = known
  const [open, close] = [rates.sessionOpenHours, rates.sessionCloseHours]
  const minutes = labourMinutes({
    people: work.people,
    steps: plan.steps,
    days: plan.days,
    calendar: { openMinutes: open.value * 60, closeMinutes: close.value * 60 },
  })[line.id as Role]
  const hours = (name: string, value: number): Part =>
    given({ name, key: 'personHours', value, certainty: 'worked' })
  const rate = (
    name: string,
    id: 'session-open' | 'session-close',
    { value, certainty }: typeof open,
  ): Part => given({ name, key: 'personHours', value, certainty, source: catalogue.rates[id].source })
  const sessions = given({ name: 'sessions', key: 'count', value: minutes.sessions, certainty: 'worked' })
  return worked(
    { name: 'labourHours', of: line.subject, key: 'personHours', certainty: 'worked' },
    up(
      plus(
        hours('plannedHours', minutes.planned / 60),
        times(
          sessions,
          plus(rate('openHours', 'session-open', open), rate('closeHours', 'session-close', close)),
        ),
        ...(minutes.done > 0 ? [hours('doneHours', minutes.done / 60)] : []),
      ),
      0.25,
    ),
  )
}

const coinsPart = (name: string, value: number): Part =>
  given({ name, key: 'coins', value, certainty: 'worked' })

const groups: readonly MoneyGroup[] = ['labour', 'materials', 'consumables', 'costs']

/** What has no price is not in the sum. */
export function moneyGroupWay(told: Told, group: MoneyGroup): Way | undefined {
  const lines = told.plan.money?.lines.filter((line) => line.group === group) ?? []
  const parts = lines.flatMap((line) => linePart(told, line) ?? [])
  if (parts.length === 0) return undefined
  return wayOf(worked({ name: `group.${group}`, key: 'coins', certainty: 'worked' }, plus(...parts)))
}

export function moneySumWay(told: Told, of: 'margin' | 'net' | 'tax' | 'total' | 'deposit'): Way | undefined {
  const { money } = told.plan
  return (
    money && wayOf(worked({ name: `sum.${of}`, key: 'coins', certainty: 'worked' }, sumTerm(told, money, of)))
  )
}

function sumTerm(told: Told, money: Estimate, of: 'margin' | 'net' | 'tax' | 'total' | 'deposit'): Term {
  const group = (name: MoneyGroup): Part => coinsPart(`group.${name}`, money.subtotals[name])
  const share = (key: 'margin' | 'tax' | 'deposit', value: number): Part =>
    given({
      name: `share.${key}`,
      key: 'share',
      value,
      certainty: told.money?.terms[key]?.certainty ?? 'assumed',
      at: moneyCell('terms', undefined, key),
    })
  const rounded = (term: Term): Term => nearest(term, 1)
  switch (of) {
    case 'margin':
      return rounded(
        times(plus(group('materials'), group('consumables')), share('margin', money.marginShare)),
      )
    case 'net':
      return plus(...groups.map(group), coinsPart('sum.margin', money.marginCoins))
    case 'tax':
      return rounded(times(coinsPart('sum.net', money.netCoins), share('tax', money.taxShare)))
    case 'total':
      return plus(coinsPart('sum.net', money.netCoins), coinsPart('sum.tax', money.taxCoins))
    case 'deposit':
      return rounded(times(coinsPart('sum.total', money.totalCoins), share('deposit', money.depositShare)))
  }
}

/** A change order: hours at the lead's rate and material by the litre, then tax. */
export function changeWay(told: Told, id: string): Way | undefined {
  const { plan, work, money } = told
  const change = plan.money?.changes.find((one) => one.id === id)
  const item = work.changes.find((one) => one.id === id)
  if (!change || !item || change.hourlyCoins === undefined) return undefined
  const lead = money?.rates.find(({ role }) => role === 'lead')
  const hours = given({
    name: 'changeHours',
    key: 'personHours',
    value: change.hours,
    certainty: item.hours.certainty,
    at: workCell('changes', id, 'hours'),
  })
  const rate = given({
    name: 'each.labour',
    key: 'coins',
    value: change.hourlyCoins,
    certainty: 'measured',
    at: moneyCell('rates', lead?.id, 'hourly'),
  })
  const labour = worked(
    { name: 'changeLabour', key: 'coins', certainty: 'worked' },
    nearest(times(hours, rate), 1),
  )
  const net = worked(
    { name: 'sum.net', key: 'coins', certainty: 'worked' },
    plus(labour, ...(change.materialsCoins > 0 ? [changeMaterial(told, item, change.materialsCoins)] : [])),
  )
  const tax = given({
    name: 'share.tax',
    key: 'share',
    value: plan.money?.taxShare ?? 0,
    certainty: money?.terms.tax?.certainty ?? 'assumed',
    at: moneyCell('terms', undefined, 'tax'),
  })
  return wayOf(
    worked(
      { name: 'changeTotal', of: change.name, key: 'coins', certainty: 'worked' },
      plus(net, nearest(times(net, tax), 1)),
    ),
  )
}

/** By the litre of the smallest pack there is a price for, rounded up to the coin. */
function changeMaterial(told: Told, item: Told['work']['changes'][number], coins: number): Part {
  const base = { name: 'changeMaterial', key: 'coins', certainty: 'worked' as const }
  const pack = told.work.packs
    .filter(({ sheet }) => sheet === item.sheet)
    .sort((a, b) => a.volume.value - b.volume.value)
    .find(({ id }) => told.money?.prices.some((price) => price.pack === id))
  const price = told.money?.prices.find((one) => one.pack === pack?.id)
  if (!pack || !price || !item.volume) return given({ ...base, value: coins })
  const perLitre = worked(
    { name: 'perLitre', key: 'coins', certainty: 'worked' },
    up(
      over(
        given({
          name: 'packPrice',
          key: 'coins',
          value: price.price.coins,
          certainty: 'measured',
          at: moneyCell('prices', price.id, 'price'),
        }),
        given({
          name: 'packVolume',
          key: 'litres',
          value: pack.volume.value * 1000,
          certainty: pack.volume.certainty,
          at: workCell('packs', pack.id, 'volume'),
        }),
      ),
      1,
    ),
  )
  const volume = given({
    name: 'changeVolume',
    key: 'litres',
    value: item.volume.value * 1000,
    certainty: item.volume.certainty,
    at: workCell('changes', item.id, 'volume'),
  })
  return worked(base, nearest(times(volume, perLitre), 1))
}
