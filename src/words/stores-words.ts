/** Sentences about packs, reserves and consumables. */

/** Which product it is, where the data names one. */
const product = '{name, select, none {} other { of {name}}}'

export const storesWords: Readonly<Record<string, string>> = {
  'stores.needOutOfRange': `The amount${product} comes out as {volumeL}, which cannot be bought. Check the areas and coverages behind it.`,
  'stores.packNotUsable': `The pack {pack}${product} is left out: its volume, stock or price is not a usable number. Check it in the list of packs.`,
  'stores.noPacks': `{volumeL}${product} have to be bought, but no pack size is known{parts, select, A { for part A} B { for part B} other {}}. Add the packs your shop sells.`,
  'stores.packUnpriced': `The pack {pack}${product} has no price, so packs are chosen by volume instead of cost. Add its price.`,
  'stores.bulkInOnePack': `For so large an amount${product}, {count, plural, one {# pack} other {# packs}} of {pack} are taken first and only the rest is searched.`,
  'stores.pastDate': `The pack {pack}${product} is past its date when the work begins, so it is not counted on.`,
  'stores.openTooLong': `The pack {pack}${product} has stood open for too long when its last coat goes on, so it is not counted on.`,
  'stores.otherBatch': `The pack {pack} on the shelf${product} is of another batch, or nobody knows of which: beside the new paint it would show. Keep it for what is not seen, or write its batch on the pack.`,
  'stores.openedAgain': `Between the first and the last coat${product} lie {days, plural, one {# day} other {# days}}; hardener open for more than {mostDays, plural, one {# day} other {# days}} does not go on what is seen. The packs are counted for {count, plural, other {# openings}}, each with packs of its own.`,
  'stores.boughtTooSoon': `Bought when the job begins, it waits {days, plural, one {# day} other {# days}}${product} for its last coat, and keeps {keepsDays, plural, one {# day} other {# days}}. Buy it later, nearer to its day.`,
  'stores.packParts': `The parts of the pack {pack}${product} do not make its volume; the parts are what is reckoned with. Check what is printed on it.`,
  'stores.consumableUnknown':
    'There is no rate for {consumable}, so none is planned. Add how much of it you use.',
  'stores.consumableDriver':
    'The rate of {consumable} is counted on something else than {driver, select, areaM2 {area} lengthM {length} personDays {days worked} other {pieces}}. Correct the rate.',
  'stores.consumableFigure':
    'The amount of {consumable} cannot be worked out: a figure behind it is missing or negative. Check its rate.',
}
