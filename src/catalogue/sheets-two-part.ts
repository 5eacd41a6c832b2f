/** Generic sheet of the two-part polyurethane gloss that is rolled and tipped on yachts. */
import { assumed, dewMargin, from, row, type SheetRow } from './sheet-row.ts'
import { applicationGuides, doublingRule, refitLogs, rollAndTipLogs, twoParts } from './sources.ts'

export const twoPartSheets = {
  'two-part-finish': row(
    from(
      twoParts,
      {
        volumeSolids: '50 %',
        recoatLeast: '5C: 24h, 15C: 10h, 25C: 6h, 40C: 3h',
        flashPoint: '25 °C',
        isocyanate: 'yes',
      },
      { volumeSolids: ['44 %', '72 %'], flashPoint: ['25 °C', '39 °C'] },
    ),
    from(rollAndTipLogs, { dryFilm: '20 µm' }, { dryFilm: ['10 µm', '25 µm'] }),
    from(
      applicationGuides,
      {
        mix: '2:1',
        thinnerShare: '25 %',
        thinnerMost: '33 %',
        airLeast: '12 °C',
        airMost: '25 °C',
        humidityMost: '70 %',
        voc: '425 g/L',
      },
      { thinnerShare: ['5 %', '40 %'], voc: ['350 g/L', '500 g/L'] },
    ),
    from(
      refitLogs,
      { induction: '20C: 20min', recoatMost: '20C: 24h' },
      { induction: ['20C: 15min', '20C: 30min'], recoatMost: ['20C: 24h', '20C: 48h'] },
    ),
    from(doublingRule, { potLife: '11C: 4h, 21C: 2h, 31C: 1h' }),
    dewMargin,
    assumed({
      name: 'Two-part polyurethane gloss',
      family: 'two-part polyurethane',
      role: 'finish',
      touchDry: '10C: 6h, 20C: 3h, 30C: 1h 45min',
      dryToDew: '10C: 12h, 20C: 6h, 30C: 4h',
      dryToSand: '20C: 16h',
      dryToTape: '20C: 24h',
      dryToTread: '20C: 48h',
      dryToFit: '20C: 72h',
      dryToSling: '20C: 7d',
      fullCure: '20C: 10d',
    }),
  ),
} satisfies Record<string, SheetRow>
