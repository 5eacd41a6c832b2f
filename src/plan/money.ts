/** What it costs: hours, packs, consumables and fixed sums, to the coin. */
import { changeOrder, estimate, type LineInput, quoteWatch } from '#core/money'
import type { Note } from '#core/note'
import type { MoneyTerms, Work } from '#job'
import type { CalendarDays } from './calendar.ts'
import { labourMinutes, minutesInAll } from './labour-minutes.ts'
import type { Stage } from './remember.ts'
import type { ChangeOrder, Days, Estimate, MoneyLine, Steps, StorePack, Stores } from './types.ts'

export type MoneyInput = {
  readonly money: MoneyTerms
  readonly changes: Work['changes']
  readonly people: Work['people']
  readonly packs: Work['packs']
  readonly steps: Steps
  readonly days: Days
  readonly stores: Stores
  readonly calendar: CalendarDays
}

export const money: Stage<MoneyInput, Estimate> = { name: 'money', run: reckon }

type Described = { readonly line: LineInput; readonly subject: string; readonly unit: MoneyLine['unit'] }

function reckon(input: MoneyInput): Estimate {
  const { terms } = input.money
  const described = {
    labour: labourLines(input),
    materials: materialLines(input),
    consumables: consumableLines(input),
    costs: input.money.costs.map(
      (cost): Described => ({
        line: { id: cost.id, quantity: 1, unitCoins: cost.amount.coins },
        subject: cost.name,
        unit: 'sum',
      }),
    ),
  }
  const shares = {
    marginShare: terms.margin?.value ?? 0,
    taxShare: terms.tax?.value ?? 0,
    depositShare: terms.deposit?.value ?? 0,
  }
  const sum = estimate({
    labour: described.labour.map((one) => one.line),
    materials: described.materials.map((one) => one.line),
    consumables: described.consumables.map((one) => one.line),
    costs: described.costs.map((one) => one.line),
    changes: [],
    ...shares,
  })
  const lines = (['labour', 'materials', 'consumables', 'costs'] as const).flatMap((group) =>
    described[group].map((one, index): MoneyLine => {
      const { unitCoins } = one.line
      const coins = sum.lines[group][index]?.coins
      return {
        id: one.line.id,
        group,
        subject: one.subject,
        quantity: one.line.quantity,
        unit: one.unit,
        ...(unitCoins === undefined ? {} : { unitCoins }),
        ...(coins === undefined ? {} : { coins }),
      }
    }),
  )
  const changes = input.changes.map((change) => changeOf(input, change, shares.taxShare))
  return {
    currency: terms.currency,
    lines,
    subtotals: sum.subtotals,
    marginCoins: sum.marginCoins,
    netCoins: sum.netCoins,
    taxCoins: sum.taxCoins,
    totalCoins: sum.totalCoins,
    depositCoins: sum.depositCoins,
    complete: sum.complete,
    ...shares,
    quoteNumber: terms.quoteNumber ?? '',
    validDays: terms.validDays ?? 30,
    exclusions: terms.exclusions ?? '',
    unitPrices: input.money.unitPrices.map((one) => ({
      name: one.name,
      per: one.per,
      coins: one.price.coins,
    })),
    changes,
    ...(terms.signed ? { signedCoins: terms.signed.coins } : {}),
    ...(terms.signedOn === undefined ? {} : { signedDate: terms.signedOn }),
    notes: [
      ...sum.notes.map((note) => ({ ...note, data: { ...note.data, ...nameOf(input, note.data.line) } })),
      ...watched(input, sum.totalCoins),
    ],
  }
}

/** Against what was signed, and the change orders signed since. */
function watched(input: MoneyInput, totalCoins: number): readonly Note[] {
  const { signed, currency } = input.money.terms
  if (!signed) return []
  return quoteWatch({ quoteCoins: signed.coins, forecastCoins: totalCoins }).map((note) => ({
    ...note,
    data: { ...note.data, currency },
  }))
}

/** What a line without a price is for, as far as somebody named it. */
function nameOf(input: MoneyInput, line: unknown): { readonly name?: string } {
  const [first, second] = String(line).split(':')
  const named = (id: string | undefined) => input.stores.items.find((item) => item.sheet === id)?.name
  const product = named(first)
  const goesWith = named(second)
  if (product !== undefined) return { name: product }
  return goesWith === undefined ? {} : { name: `${first}, ${goesWith}` }
}

const hourlyOf = (money: MoneyTerms, role: 'lead' | 'helper'): number | undefined =>
  money.rates.find((rate) => rate.role === role)?.hourly.coins

/**
 * Labour is the hours in the calendar, the opening and closing of each session with them, at the rate of whoever
 * works them.
 */
function labourLines(input: MoneyInput): readonly Described[] {
  const lead = hourlyOf(input.money, 'lead')
  const helper = hourlyOf(input.money, 'helper') ?? lead
  const minutes = labourMinutes(input)
  const line = (id: 'lead' | 'helper', unitCoins: number | undefined): Described => ({
    line: {
      id,
      quantity: quarterHours(minutesInAll(minutes[id], input.calendar)),
      ...(unitCoins === undefined ? {} : { unitCoins }),
    },
    subject: id,
    unit: 'h',
  })
  return [line('lead', lead), line('helper', helper)].filter((one) => one.line.quantity > 0)
}

/** Hours in quarters, up: what stands on the quote can be checked on a watch. */
const quarterHours = (minutes: number): number => Math.ceil(minutes / 15) / 4

function materialLines(input: MoneyInput): readonly Described[] {
  return input.stores.items.flatMap((item) =>
    together([...item.buy, ...item.bought]).map(
      (bought): Described => ({
        line: {
          id: `${item.sheet}:${bought.pack}`,
          quantity: bought.count,
          ...(bought.priceCoins === undefined ? {} : { unitCoins: bought.priceCoins }),
        },
        subject: item.sheet,
        unit: 'pack',
      }),
    ),
  )
}

/** What is still to be bought and what was bought for this job is one line a pack. */
function together(packs: readonly StorePack[]): readonly StorePack[] {
  const ids = [...new Set(packs.map(({ pack }) => pack))]
  return ids.flatMap((id) => {
    const own = packs.filter(({ pack }) => pack === id)
    return own.slice(0, 1).map((one) => ({ ...one, count: own.reduce((sum, { count }) => sum + count, 0) }))
  })
}

/** One sum for all of them goes before prices one by one. */
function consumableLines(input: MoneyInput): readonly Described[] {
  const { sundries } = input.money.terms
  if (sundries)
    return [
      { line: { id: 'sundries', quantity: 1, unitCoins: sundries.coins }, subject: 'sundries', unit: 'sum' },
    ]
  return input.stores.consumables.map((item): Described => {
    const price = input.money.consumablePrices.find((one) => one.consumable === item.id)?.price.coins
    return {
      line: {
        id: item.sheet ? `${item.id}:${item.sheet}` : item.id,
        quantity: item.amount,
        ...(price === undefined ? {} : { unitCoins: price }),
      },
      subject: item.id,
      unit: item.unit,
    }
  })
}

/** Priced as the quote is: hours at the lead's rate, material by the litre of the dearest pack bought. */
function changeOf(input: MoneyInput, change: Work['changes'][number], taxShare: number): ChangeOrder {
  const hourlyCoins = hourlyOf(input.money, 'lead')
  const volumeM3 = change.volume?.value ?? 0
  const perLitre = change.sheet === undefined ? undefined : litrePrice(input, change.sheet)
  const materials: readonly LineInput[] =
    volumeM3 > 0
      ? [
          {
            id: change.sheet ?? change.id,
            quantity: volumeM3 * 1000,
            ...(perLitre === undefined ? {} : { unitCoins: perLitre }),
          },
        ]
      : []
  const order = changeOrder({
    hours: change.hours.value,
    ...(hourlyCoins === undefined ? {} : { hourlyCoins }),
    materials,
  })
  const taxCoins = Math.round(order.totalCoins * taxShare)
  return {
    id: change.id,
    name: change.name,
    found: change.found ?? '',
    ...(change.zone === undefined ? {} : { zone: change.zone }),
    photo: change.photo ?? '',
    date: change.date ?? '',
    hours: change.hours.value,
    ...(hourlyCoins === undefined ? {} : { hourlyCoins }),
    labourCoins: order.labourCoins,
    materialsCoins: order.materialsCoins,
    ...(change.sheet === undefined ? {} : { sheet: change.sheet }),
    volumeM3,
    netCoins: order.totalCoins,
    taxCoins,
    totalCoins: order.totalCoins + taxCoins,
    complete: order.complete,
    days: daysFor(change.hours.value, input.calendar),
  }
}

/** Coins a litre in the smallest pack there is a price for: extra material is bought small. */
function litrePrice(input: MoneyInput, sheet: string): number | undefined {
  const packs = input.packs
    .filter((pack) => pack.sheet === sheet)
    .sort((a, b) => a.volume.value - b.volume.value)
    .flatMap((pack) => {
      const price = input.money.prices.find((one) => one.pack === pack.id)?.price.coins
      return price === undefined ? [] : [price / (pack.volume.value * 1000)]
    })
  return packs[0] === undefined ? undefined : Math.ceil(packs[0] - 1e-9)
}

/** Working days the hours take, at the crew's hours over the first four weeks of the calendar; up to half a day. */
function daysFor(hours: number, calendar: CalendarDays): number {
  const first = calendar.days[0]?.startMinute ?? 0
  const inFourWeeks = calendar.people
    .flatMap((person) => person.shifts)
    .filter((shift) => shift.startMinute < first + 28 * 24 * 60)
  const workDays = new Set(inFourWeeks.map((shift) => Math.floor((shift.startMinute - first) / (24 * 60))))
    .size
  const minutes = inFourWeeks.reduce((sum, shift) => sum + shift.endMinute - shift.startMinute, 0)
  return workDays === 0 ? 0 : Math.ceil((2 * hours * 60 * workDays) / minutes - 1e-9) / 2
}

export const moneyMissing: Note = { code: 'money.notShown', severity: 'info', data: {} }
