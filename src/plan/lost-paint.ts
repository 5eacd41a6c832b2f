/** The paint of coats that were lost has to be bought again. */
import type { Mended } from './mended.ts'
import type { Stage } from './remember.ts'
import type { Quantities, SheetQuantity } from './types.ts'

export type LostPaintInput = { readonly quantities: Quantities; readonly lost: Mended['lost'] }

/** The very same quantities when no coat was lost. */
export const withLostPaint: Stage<LostPaintInput, Quantities> = {
  name: 'lost paint',
  run: ({ quantities, lost }) =>
    lost.length === 0
      ? quantities
      : { ...quantities, sheets: quantities.sheets.map((sheet) => withLost(sheet, { quantities, lost })) },
  fresh: true,
}

function withLost(sheet: SheetQuantity, { quantities, lost }: LostPaintInput): SheetQuantity {
  const own = lost.flatMap(({ zone, layer, times }) =>
    quantities.layers.flatMap((one) =>
      one.zone === zone && one.layer === layer && one.sheet === sheet.sheet
        ? [
            {
              mixedM3: one.mixedPerCoatM3 * times,
              thinnerM3: (one.thinnerM3 / one.coats) * times,
              additiveM3: (one.additiveM3 / one.coats) * times,
            },
          ]
        : [],
    ),
  )
  const sum = (key: 'mixedM3' | 'thinnerM3' | 'additiveM3') => own.reduce((all, one) => all + one[key], 0)
  if (sum('mixedM3') === 0) return sheet
  const mixedM3 = sheet.mixedM3 + sum('mixedM3')
  return {
    ...sheet,
    mixedM3,
    partsM3: sheet.partsM3.map((part) => (part * mixedM3) / sheet.mixedM3),
    thinnerM3: sheet.thinnerM3 + sum('thinnerM3'),
    additiveM3: sheet.additiveM3 + sum('additiveM3'),
  }
}
