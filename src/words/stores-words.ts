/** Sentences about packs, reserves and consumables. */

/** Which product it is, where the data names one. */
const product = '{name, select, none {} other { of {name}}}'

export const storesWords: Readonly<Record<string, string>> = {
  'stores.needOutOfRange': `The amount${product} comes out as {volumeL}, which cannot be bought. Check the areas and coverages behind it.`,
  'stores.packNotUsable': `The pack {pack}${product} is left out: its volume, stock or price is not a usable number. Check it in the list of packs.`,
  'stores.noPacks': `{volumeL}${product} have to be bought, but no pack size is known. Add the packs your shop sells.`,
  'stores.packUnpriced': `The pack {pack}${product} has no price, so packs are chosen by volume instead of cost. Add its price.`,
  'stores.bulkInOnePack': `For so large an amount${product}, {count, plural, one {# pack} other {# packs}} of {pack} are taken first and only the rest is searched.`,
  'stores.consumableUnknown':
    'There is no rate for {consumable}, so none is planned. Add how much of it you use.',
  'stores.consumableDriver':
    'The rate of {consumable} is counted on something else than {driver, select, areaM2 {area} lengthM {length} personDays {days worked} other {pieces}}. Correct the rate.',
  'stores.consumableFigure':
    'The amount of {consumable} cannot be worked out: a figure behind it is missing or negative. Check its rate.',
}
