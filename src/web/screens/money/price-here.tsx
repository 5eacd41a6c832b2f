/** A price that is missing, asked for in the line that lacks it. */
import { useState } from 'react'
import { moneyFields, readCell } from '#job'
import type { MoneyLine } from '#plan'
import { labelOf, problemText } from '#words'
import { itemsOf } from '../../fields/items.ts'
import type { CollectionPlace, JobView } from '../../job/job-view.ts'
import { QuantityField } from '../../parts/index.ts'

export type PriceHereProps = {
  readonly view: JobView
  readonly line: MoneyLine
  readonly currency: string
  /** What the line is for. */
  readonly name: string
}

export const PriceHere = ({ view, line, currency, name }: PriceHereProps) => {
  const [problem, setProblem] = useState<string>()
  const place = placeOf(line)
  if (!place || view.readOnly) return <>{labelOf('money.noPrice')}</>
  const commit = (typed: string): void => {
    const text = typed.trim()
    const reading = text === '' ? undefined : readCell(fields[place.section], text, { currency })
    setProblem(reading?.ok === false ? problemText(view.words, { ...reading, pointer: '' }) : undefined)
    if (reading?.ok) keep(view, place, text)
  }
  return (
    <QuantityField
      label={<span className="unseen">{`${labelOf('money.each')}, ${name}`}</span>}
      value=""
      unit={currency}
      onCommit={commit}
      problem={problem}
    />
  )
}

const fields = {
  rates: moneyFields.rates.fields.hourly,
  prices: moneyFields.prices.fields.price,
  consumablePrices: moneyFields.consumablePrices.fields.price,
} as const

type PricePlace = {
  readonly section: 'rates' | 'prices' | 'consumablePrices'
  readonly of: 'role' | 'pack' | 'consumable'
  readonly subject: string
  readonly key: 'hourly' | 'price'
}

function placeOf({ group, id, subject }: MoneyLine): PricePlace | undefined {
  if (group === 'labour') return { section: 'rates', of: 'role', subject: id, key: 'hourly' }
  if (group === 'materials')
    return { section: 'prices', of: 'pack', subject: id.slice(id.indexOf(':') + 1), key: 'price' }
  return group === 'consumables'
    ? { section: 'consumablePrices', of: 'consumable', subject, key: 'price' }
    : undefined
}

/** In the item that is there for it and has no price yet, else in a new one. */
function keep(view: JobView, { section, of, subject, key }: PricePlace, text: string): void {
  const collection: CollectionPlace = { part: 'money', section }
  const there = itemsOf(view, collection).find(({ cells }) => cells[of] === subject)
  if (there) view.edits.set({ ...collection, item: there.id, key }, text)
  else view.edits.add(collection, { [of]: subject, [key]: text })
}
