/** Generic sheets of paints that dry or harden out of one can, and of the solvent the boat is wiped with. */
import { assumed, dewMargin, from, guessedFrom, humidityAtMost85, row, type SheetRow } from './sheet-row.ts'
import { applicationGuides, magazines, oneParts, refitLogs } from './sources.ts'

/** Drying of air-drying enamel at 20 °C; a longest wait is not given, so it is always sanded between coats. */
const onePartClocks = assumed({
  touchDry: '20C: 4h',
  dryToDew: '20C: 8h',
  dryToSand: '20C: 24h',
  dryToTape: '20C: 72h',
  dryToTread: '20C: 72h',
  dryToFit: '20C: 7d',
  dryToSling: '20C: 10d',
  fullCure: '20C: 10d',
})

const onePartAir = from(applicationGuides, { airLeast: '5 °C', airMost: '30 °C', humidityMost: '85 %' })

const onePartRecoat = from(oneParts, { recoatLeast: '10C: 16h, 23C: 12h, 35C: 8h' })

export const onePartSheets = {
  'one-part-enamel': row(
    from(
      oneParts,
      { volumeSolids: '46 %', dryFilm: '40 µm', flashPoint: '36 °C', voc: '410 g/L' },
      {
        volumeSolids: ['44 %', '48 %'],
        dryFilm: ['20 µm', '75 µm'],
        flashPoint: ['36 °C', '38 °C'],
        voc: ['387 g/L', '435 g/L'],
      },
    ),
    onePartRecoat,
    from(refitLogs, { thinnerShare: '5 %', thinnerMost: '10 %' }),
    onePartAir,
    dewMargin,
    onePartClocks,
    assumed({ name: 'One-part enamel', family: 'one-part', role: 'finish', mix: '1', isocyanate: 'no' }),
  ),
  'one-part-deck': row(
    assumed(
      { coverage: '7 m²/L', thinnerShare: '0 %', thinnerMost: '5 %' },
      { coverage: ['6 m²/L', '8 m²/L'], thinnerShare: ['0 %', '5 %'] },
    ),
    from(oneParts, { flashPoint: '36 °C' }, { flashPoint: ['36 °C', '38 °C'] }),
    onePartRecoat,
    onePartAir,
    dewMargin,
    onePartClocks,
    assumed({
      name: 'One-part deck paint with grit',
      family: 'one-part',
      role: 'non-skid',
      mix: '1',
      isocyanate: 'no',
    }),
  ),
  'textured-acrylic': row(
    assumed(
      { coverage: '1 m²/L', dryFilm: '500 µm', thinnerShare: '0 %', thinnerMost: '0 %', fullCure: '20C: 7d' },
      { coverage: ['1 m²/L', '2 m²/L'], dryFilm: ['500 µm', '1000 µm'] },
    ),
    from(magazines, { airLeast: '10 °C', airMost: '32 °C' }),
    from(refitLogs, { recoatLeast: '20C: 16h' }),
    humidityAtMost85,
    dewMargin,
    assumed({
      name: 'Textured acrylic non-skid',
      family: 'acrylic',
      role: 'non-skid',
      mix: '1',
      isocyanate: 'no',
      touchDry: '20C: 2h',
      dryToDew: '20C: 8h',
      dryToSand: '20C: 24h',
      dryToTape: '20C: 24h',
      dryToTread: '20C: 48h',
      dryToFit: '20C: 72h',
      dryToSling: '20C: 7d',
    }),
  ),
  'solvent-dewax': row(
    assumed({ coverage: '50 ml/m²', touchDry: '20C: 15min' }, { coverage: ['40 ml/m²', '60 ml/m²'] }),
    guessedFrom('memory, butanone: the most volatile in common use', { flashPoint: '-9 °C' }),
    dewMargin,
    humidityAtMost85,
    assumed({
      name: 'Dewaxing solvent',
      family: 'solvent',
      role: 'thinner',
      mix: '1',
      thinnerShare: '0 %',
      thinnerMost: '0 %',
      isocyanate: 'no',
      recoatLeast: '20C: 15min',
      airLeast: '5 °C',
      airMost: '35 °C',
    }),
  ),
} satisfies Record<string, SheetRow>
