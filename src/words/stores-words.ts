/** Sentences about packs, reserves and consumables. */
export const storesWords: Readonly<Record<string, string>> = {
  'stores.needOutOfRange':
    'The amount needed comes out as {volumeL}, which cannot be bought. Check the areas and coverages behind it.',
  'stores.packNotUsable':
    'The pack {pack} is left out: its volume, stock or price is not a usable number. Check it in the list of packs.',
  'stores.noPacks':
    'No pack size is known for {volumeL} that has to be bought. Add the packs your shop sells.',
  'stores.packUnpriced':
    'The pack {pack} has no price, so packs are chosen by volume instead of cost. Add its price.',
  'stores.bulkInOnePack':
    'For so large an amount, {count, plural, one {# pack} other {# packs}} of {pack} are taken first and only the rest is searched.',
  'stores.consumableUnknown':
    'There is no rate for {consumable}, so none is planned. Add how much of it you use.',
  'stores.consumableDriver':
    'The rate of {consumable} is counted on something else than {driver, select, areaM2 {area} lengthM {length} personDays {days worked} other {pieces}}. Correct the rate.',
  'stores.consumableFigure':
    'The amount of {consumable} cannot be worked out: a figure behind it is missing or negative. Check its rate.',
}
