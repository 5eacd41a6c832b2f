/** What to buy: packs that cover a need, reserves, and consumables. */

export type { ConsumableNeed, ConsumableRate, Consumables, ConsumableUse, Driver } from './consumables.ts'
export { consumables } from './consumables.ts'
export type { Cover, Pack, PackCount } from './cover.ts'
export { cover } from './cover.ts'
export type { Purchase, PurchaseInput, Refused, ShelfPack, SoldPack, StoreUse } from './purchase.ts'
export { purchase } from './purchase.ts'
export { reserve } from './reserve.ts'
