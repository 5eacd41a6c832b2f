/** How the shopping list came about: what zones and repairs take, the reserve, whole packs, and what the work eats up. */
import type { ConsumableId } from '#catalogue'
import { usesOf } from '../stores/uses-of.ts'
import type { StoreItem } from '../types.ts'
import { layerLitres, repairLitres, weakestOf } from './paint-ways.ts'
import { limitPart, sheetOf, type Told, workCell, written } from './told.ts'
import { given, minus, over, type Part, plus, type Term, times, up, type Way, wayOf, worked } from './way.ts'

type StoreRef = { readonly sheet: string; readonly of: 'need' | 'reserve' | 'left' }

export function storeWay(told: Told, { sheet, of }: StoreRef): Way | undefined {
  const item = told.plan.stores.items.find((one) => one.sheet === sheet)
  if (!item) return undefined
  if (of === 'need') return wayOf(needPart(told, item))
  if (of === 'reserve') return wayOf(reservePart(told, item))
  return leftWay(told, item)
}

function needPart(told: Told, item: StoreItem): Part {
  const { quantities, repairs } = told.plan
  const layers = quantities.layers.filter(({ sheet }) => sheet === item.sheet)
  const parts = [
    ...layers.map((layer) => layerLitres(told, layer)),
    ...repairs.repairs
      .filter((repair) => repair.sheet === item.sheet && repair.volumeM3 > 0)
      .map((repair) => repairLitres(told, repair)),
  ]
  const lost = item.needM3 - parts.reduce((sum, { value }) => sum + value, 0)
  const again = given({ name: 'lostLitres', key: 'volumeM3', value: lost, certainty: 'worked' })
  return worked(
    { name: 'need', of: item.name, key: 'volumeM3', certainty: weakestOf(parts) },
    plus(...parts, ...(lost > 1e-9 ? [again] : [])),
  )
}

const reserveLimits = {
  finish: 'reserveFinish',
  'non-skid': 'reserveFinish',
  primer: 'reservePrimer',
  'tie coat': 'reservePrimer',
  filler: 'reserveFiller',
  fairing: 'reserveFiller',
  'laminating resin': 'reserveFiller',
} as const

/** A share for what always goes wrong; of a finish some more, kept for touch-up. */
function reservePart(told: Told, item: StoreItem): Part {
  const role = sheetOf(told, item.sheet)?.role ?? ''
  const key = Object.entries(reserveLimits).find(([known]) => known === role)?.[1]
  const need = needPart(told, item)
  const base = { name: 'reserve', of: item.name, key: 'volumeM3', certainty: item.certainty }
  if (key === undefined) return given({ ...base, value: item.reserveM3 })
  const { known } = told
  const value = known.reserveByRole[role]?.value ?? 0
  const share = times(need, limitPart(told, key, { name: 'reserveShare', key: 'share', value }))
  const touchUp = limitPart(told, 'touchUp', {
    name: 'touchUp',
    key: 'volumeM3',
    value: known.touchUpM3.value,
  })
  return worked(base, role === 'finish' ? plus(share, touchUp) : share)
}

/** Where no pack is known nothing is left, and nothing can be said of it. */
function leftWay(told: Told, item: StoreItem): Way {
  const base = { name: 'left', of: item.name, key: 'volumeM3', certainty: item.certainty }
  const packs = [
    ...item.fromStock.map((pack) => ({ ...pack, name: 'packsShelf', key: 'inStock' })),
    ...item.bought.map((pack) => ({ ...pack, name: 'packsHere', key: 'bought' })),
    ...item.buy.map((pack) => ({ ...pack, name: 'packsBought', key: 'volume' })),
  ].map(({ pack, count, volumeM3, name, key }) => {
    const volume = told.work.packs.find(({ id }) => id === pack)?.volume
    const size = { name: 'packVolume', key: 'volumeM3', at: workCell('packs', pack, 'volume') }
    return times(
      given({ name, key: 'count', value: count, certainty: 'worked', at: workCell('packs', pack, key) }),
      volume ? written(size, volume) : given({ ...size, value: volumeM3, certainty: 'assumed' }),
    )
  })
  if (item.shortM3 > 0 || packs.length === 0)
    return wayOf(given({ ...base, value: item.leftoverM3 }), { parts: [needPart(told, item)] })
  const wanted = plus(needPart(told, item), reservePart(told, item))
  return wayOf(worked(base, minus(plus(...packs), wanted)))
}

type ConsumableRef = { readonly id: string; readonly sheet?: string }

export function consumableWay(told: Told, { id, sheet }: ConsumableRef): Way | undefined {
  const item = told.plan.stores.consumables.find((one) => one.id === id && one.sheet === sheet)
  if (!item) return undefined
  return sheet === undefined ? piecesWay(told, id) : liquidWay(told, { id, sheet })
}

const drivers = { areaM2: 'areaM2', lengthM: 'lengthM', personDays: 'count', count: 'count' } as const

/** So much for each square metre, metre of edge, person-day or pour, in whole pieces. */
function piecesWay(told: Told, id: string): Way | undefined {
  const { plan, known, catalogue } = told
  const rate = known.consumableRates.find((one) => one.id === id)
  if (!rate) return undefined
  const uses = usesOf({ known, steps: plan.steps, days: plan.days, pours: plan.pours })
  const own = uses.filter(({ consumable }) => consumable === id)
  const row = catalogue.consumables[id as ConsumableId]
  const origin = { certainty: row.certainty, source: row.source }
  const isSpan = rate.driver === 'areaM2' || rate.driver === 'lengthM'
  // Both sides in one unit, so that the sum holds in whatever units it is read.
  const piecesFor = (value: number): Term => {
    const amount = given({
      name: `use.${rate.driver}`,
      key: drivers[rate.driver],
      value,
      certainty: 'worked',
    })
    return isSpan
      ? over(
          amount,
          given({ name: `useSpan.${rate.driver}`, key: rate.driver, value: 1 / rate.perDriver, ...origin }),
        )
      : times(
          amount,
          given({ name: `useEach.${rate.driver}`, key: 'count', value: rate.perDriver, ...origin }),
        )
  }
  const pieces = rate.fresh
    ? plus(...own.map(({ quantity, times: often }) => up(piecesFor(quantity * often), 1)))
    : up(piecesFor(own.reduce((sum, { quantity, times: often }) => sum + quantity * often, 0)), 1)
  return wayOf(worked({ name: 'consumable', key: 'count', certainty: 'assumed' }, pieces))
}

/** Thinner and bead, layer by layer, to the next tenth of a litre. */
function liquidWay(told: Told, { id, sheet }: { readonly id: string; readonly sheet: string }): Way {
  const own = told.plan.quantities.layers.filter((layer) => layer.sheet === sheet)
  const key = id === 'thinner' ? 'thinnerM3' : 'additiveM3'
  const total = told.plan.quantities.sheets.find((one) => one.sheet === sheet)?.[key] ?? 0
  const parts = own
    .filter((layer) => layer[key] > 0)
    .map((layer) =>
      given({
        name: id === 'thinner' ? 'layerThinner' : 'layerBead',
        of: layerLitres(told, layer).of ?? '',
        key: 'volumeL',
        value: layer[key] * 1000,
        certainty: layer.certainty,
        at: workCell('layers', layer.layer, id === 'thinner' ? 'thinnerShare' : 'additive'),
      }),
    )
  const lost = total * 1000 - parts.reduce((sum, { value }) => sum + value, 0)
  const again = given({ name: 'lostLitres', key: 'volumeL', value: lost, certainty: 'worked' })
  return wayOf(
    worked(
      { name: 'consumable', key: 'volumeL', certainty: 'worked' },
      up(plus(...parts, ...(lost > 1e-6 ? [again] : [])), 0.1),
    ),
  )
}
