/** The estimate to the coin, in whole numbers from the cells of the money document. */
import { describe, expect, it } from 'vitest'
import * as cell from './cells.ts'
import { workingSpells } from './crew.ts'
import { sampleJobs } from './jobs.ts'
import { type Subject, subjectOf } from './plans.ts'
import { cellsOf, itemsOf } from './raw-sample.ts'

/** `over / under`, rounded half up, in whole numbers. */
const halfUp = (over: bigint, under: bigint): number => Number((2n * over + under) / (2n * under))
const up = (over: bigint, under: bigint): number => Number((over + under - 1n) / under)

/** A percentage of a whole number of coins: `6.35 %` is 635 of 10000. */
const shareOf = (coins: number, text: string | undefined): number =>
  halfUp(BigInt(coins) * BigInt(Math.round(cell.share(text ?? '0 %') * 10_000)), 10_000n)

const hourly = (subject: Subject, role: 'lead' | 'helper'): number =>
  cell.coins(Object.values(itemsOf(subject.raw.money, 'rates')).find((rate) => rate.role === role)!.hourly!)

/** Opening and closing: half an hour each, in every shift in which a person does anything. */
const aroundMinutes = 60

/** Minutes on the bill of a role: what its people do in the calendar, and their openings and closings. */
function minutesOf(subject: Subject, role: string): number {
  const people = Object.entries(itemsOf(subject.raw.work, 'people')).filter(
    ([, cells]) => cells.role === role,
  )
  return people.reduce((sum, [person]) => {
    const pieces = subject.plan.days.placed.flatMap((one) =>
      one.pieces.filter((piece) => piece.people.includes(person)),
    )
    const worked = pieces.reduce((all, piece) => all + piece.endMinute - piece.startMinute, 0)
    return sum + worked + aroundMinutes * sessionsOf(subject, person)
  }, 0)
}

/** Shifts in which a person does anything. */
function sessionsOf(subject: Subject, person: string): number {
  const pieces = subject.plan.days.placed.flatMap((one) => one.pieces)
  return workingSpells(subject.raw, person).filter(({ startMinute, endMinute }) =>
    pieces.some(
      (piece) =>
        piece.people.includes(person) && startMinute <= piece.startMinute && piece.endMinute <= endMinute,
    ),
  ).length
}

describe.each(sampleJobs)('the money of %s', (name) => {
  const subject = subjectOf(name)
  const { raw, plan } = subject
  const money = plan.money!
  const terms = cellsOf(raw.money, 'terms')
  const line = (id: string) => money.lines.find((one) => one.id === id)
  const sum = (group: string): number =>
    money.lines.filter((one) => one.group === group).reduce((all, one) => all + one.coins!, 0)

  it('bills what the people of each role do in the calendar, with opening and closing, and no other hours', () => {
    for (const role of ['lead', 'helper'] as const) {
      const minutes = minutesOf(subject, role)
      expect(line(role)?.quantity, role).toBe(minutes / 60)
      expect(line(role)?.coins, role).toBe(halfUp(BigInt(minutes) * BigInt(hourly(subject, role)), 60n))
    }
    expect(money.lines.filter((one) => one.group === 'labour').map((one) => one.id)).toEqual([
      'lead',
      'helper',
    ])
    const people = Object.keys(itemsOf(raw.work, 'people'))
    const sessions = people.reduce((all, person) => all + sessionsOf(subject, person), 0)
    expect(plan.days.sessions).toBe(sessions)
    expect(plan.days.sessionMinutes).toBe(sessions * aroundMinutes)
  })

  it('bills every pack that is bought at its price, and nothing from the shelf', () => {
    const bought = plan.stores.items.flatMap((item) =>
      item.buy.map(({ pack, count }) => ({ id: `${item.sheet}:${pack}`, pack, count })),
    )
    const prices = Object.values(itemsOf(raw.money, 'prices'))
    expect(money.lines.filter((one) => one.group === 'materials').length).toBe(bought.length)
    for (const { id, pack, count } of bought)
      expect(line(id)?.coins, id).toBe(count * cell.coins(prices.find((one) => one.pack === pack)!.price!))
  })

  it('bills what is used up at its price, tenths of a litre included', () => {
    const prices = Object.values(itemsOf(raw.money, 'consumablePrices'))
    for (const { id, sheet, amount } of plan.stores.consumables) {
      const price = cell.coins(prices.find((one) => one.consumable === id)!.price!)
      const tenths = BigInt(Math.round(amount * 10))
      expect(line(sheet ? `${id}:${sheet}` : id)?.coins, id).toBe(halfUp(tenths * BigInt(price), 10n))
    }
  })

  it('bills the fixed sums, and adds up to the coin', () => {
    const costs = Object.entries(itemsOf(raw.money, 'costs'))
    for (const [id, { amount }] of costs) expect(line(id)?.coins, id).toBe(cell.coins(amount!))
    for (const group of ['labour', 'materials', 'consumables', 'costs'] as const)
      expect(money.subtotals[group], group).toBe(sum(group))
    const margin = shareOf(sum('materials') + sum('consumables'), terms.margin)
    const net = sum('labour') + sum('materials') + sum('consumables') + sum('costs') + margin
    const tax = shareOf(net, terms.tax)
    expect(money.complete).toBe(true)
    expect(money.marginCoins).toBe(margin)
    expect(money.netCoins).toBe(net)
    expect(money.taxCoins).toBe(tax)
    expect(money.totalCoins).toBe(net + tax)
    expect(money.depositCoins).toBe(shareOf(net + tax, terms.deposit))
  })

  it('bills a change by the hour of the lead and the litre of the smallest pack, rounded up', () => {
    const changes = Object.entries(itemsOf(raw.work, 'changes'))
    expect(money.changes.length).toBe(changes.length)
    for (const [id, change] of changes) {
      const had = money.changes.find((one) => one.id === id)!
      const minutes = BigInt(Math.round(cell.hours(change.hours!) * 60))
      const labour = halfUp(minutes * BigInt(hourly(subject, 'lead')), 60n)
      const materials = change.sheet ? litrePrice(subject, change.sheet, change.volume!) : 0
      expect(had.labourCoins).toBe(labour)
      expect(had.materialsCoins).toBe(materials)
      expect(had.netCoins).toBe(labour + materials)
      expect(had.taxCoins).toBe(shareOf(labour + materials, terms.tax))
      expect(had.totalCoins).toBe(had.netCoins + had.taxCoins)
    }
  })
})

/** Volumes in tenths of a millilitre, so that all is whole. */
function litrePrice({ raw }: Subject, sheet: string, volume: string): number {
  const tenths = (text: string): bigint => BigInt(Math.round(cell.cubicMetres(text) * 1e7))
  const [smallest] = Object.entries(itemsOf(raw.work, 'packs'))
    .filter(([, pack]) => pack.sheet === sheet)
    .sort(([, a], [, b]) => Number(tenths(a.volume!) - tenths(b.volume!)))
  const [id, pack] = smallest!
  const price = Object.values(itemsOf(raw.money, 'prices')).find((one) => one.pack === id)!.price!
  return up(BigInt(cell.coins(price)) * tenths(volume), tenths(pack.volume!))
}
