/** Generic sheets of everything that cures as epoxy: primers, barrier, fairing compound, resin. */
import { assumed, dewMargin, from, humidityAtMost85, row, type SheetRow } from './sheet-row.ts'
import {
  applicationGuides,
  barriers,
  compositesText,
  epoxies,
  epoxyGuides,
  fairings,
  refitLogs,
  trainingText,
} from './sources.ts'

/** The slower of two published recoat tables: yacht primers take 12 to 14 h where the quick ones take 5. */
const primerClocks = from(
  epoxies,
  {
    potLife: '5C: 5h, 10C: 3h, 25C: 2h, 35C: 1h',
    recoatLeast: '10C: 20h, 15C: 16h, 25C: 12h, 40C: 6h',
    recoatMost: '20C: 7d, 30C: 3d',
    fullCure: '10C: 7d, 20C: 5d, 30C: 3d',
    flashPoint: '25 °C',
    voc: '400 g/L',
  },
  { recoatMost: ['20C: 24h', '20C: 14d'], flashPoint: ['25 °C', '35 °C'], voc: ['326 g/L', '480 g/L'] },
)

const primerInduction = from(
  trainingText,
  { induction: '20C: 15min' },
  { induction: ['20C: 15min', '20C: 30min'] },
)

const primerAir = from(applicationGuides, { airLeast: '15 °C', airMost: '25 °C', humidityMost: '70 %' })

const primerDrying = assumed({
  touchDry: '20C: 4h',
  dryToDew: '20C: 8h',
  dryToSand: '20C: 16h',
  dryToTape: '20C: 16h',
  dryToTread: '20C: 16h',
  dryToFit: '20C: 48h',
  dryToSling: '20C: 72h',
})

const primer = { family: 'epoxy', isocyanate: 'no' } as const

const resinDrying = assumed({
  touchDry: '20C: 6h',
  dryToDew: '20C: 12h',
  dryToTape: '20C: 24h',
  dryToTread: '20C: 24h',
  dryToFit: '20C: 48h',
  dryToSling: '20C: 72h',
  airMost: '30 °C',
  flashPoint: '60 °C',
})

export const epoxySheets = {
  'epoxy-primer': row(
    from(
      epoxies,
      { volumeSolids: '55 %', dryFilm: '50 µm', thinnerShare: '5 %', thinnerMost: '10 %' },
      { volumeSolids: ['50 %', '65 %'], dryFilm: ['40 µm', '125 µm'], thinnerShare: ['0 %', '10 %'] },
    ),
    from(applicationGuides, { mix: '3:1' }),
    primerClocks,
    primerInduction,
    primerAir,
    dewMargin,
    primerDrying,
    assumed({ name: 'Epoxy primer', ...primer, role: 'primer' }),
  ),
  'epoxy-high-build': row(
    from(
      epoxies,
      { volumeSolids: '60 %', dryFilm: '100 µm', thinnerShare: '5 %', thinnerMost: '10 %' },
      { volumeSolids: ['50 %', '65 %'], dryFilm: ['40 µm', '125 µm'], thinnerShare: ['0 %', '10 %'] },
    ),
    from(applicationGuides, { mix: '1:1' }),
    primerClocks,
    primerInduction,
    primerAir,
    dewMargin,
    primerDrying,
    assumed({ name: 'High-build epoxy primer', ...primer, role: 'primer' }),
  ),
  'epoxy-tie': row(
    assumed(
      { coverage: '10 m²/L', dryFilm: '40 µm' },
      { coverage: ['8 m²/L', '12 m²/L'], dryFilm: ['25 µm', '50 µm'] },
    ),
    from(
      refitLogs,
      { mix: '1:1', thinnerShare: '10 %', thinnerMost: '20 %' },
      { thinnerShare: ['10 %', '20 %'] },
    ),
    primerClocks,
    primerInduction,
    primerAir,
    dewMargin,
    primerDrying,
    assumed({ name: 'Epoxy tie coat', ...primer, role: 'tie coat' }),
  ),
  'epoxy-barrier': row(
    from(barriers, { dryFilm: '56 µm', mix: '3:1' }, { dryFilm: ['50 µm', '64 µm'] }),
    primerClocks,
    primerInduction,
    primerAir,
    dewMargin,
    primerDrying,
    assumed({
      name: 'Epoxy barrier coat',
      ...primer,
      role: 'primer',
      volumeSolids: '55 %',
      thinnerShare: '0 %',
      thinnerMost: '10 %',
    }),
  ),
  'epoxy-fairing': row(
    from(fairings, { mix: '1:1' }),
    from(epoxyGuides, { fullCure: '20C: 7d' }, { fullCure: ['20C: 5d', '20C: 7d'] }),
    dewMargin,
    humidityAtMost85,
    resinDrying,
    assumed(
      {
        name: 'Epoxy fairing compound',
        ...primer,
        role: 'fairing',
        volumeSolids: '100 %',
        dryFilm: '1 mm',
        thinnerShare: '0 %',
        thinnerMost: '0 %',
        potLife: '20C: 45min',
        recoatLeast: '20C: 16h',
        recoatMost: '20C: 24h',
        dryToSand: '20C: 16h',
        airLeast: '12 °C',
      },
      { potLife: ['20C: 30min', '20C: 90min'], airLeast: ['10 °C', '15 °C'], dryFilm: ['1 mm', '6 mm'] },
    ),
  ),
  'epoxy-resin': row(
    from(compositesText, { densityA: '1.1 kg/L' }),
    from(epoxyGuides, { fullCure: '20C: 7d' }, { fullCure: ['20C: 5d', '20C: 7d'] }),
    dewMargin,
    humidityAtMost85,
    resinDrying,
    assumed({
      name: 'Epoxy laminating resin',
      ...primer,
      role: 'laminating resin',
      mix: '2:1',
      volumeSolids: '100 %',
      dryFilm: '150 µm',
      thinnerShare: '0 %',
      thinnerMost: '0 %',
      potLife: '15C: 45min, 25C: 20min',
      recoatLeast: '20C: 4h',
      recoatMost: '20C: 24h',
      dryToSand: '20C: 24h',
      airLeast: '12 °C',
    }),
  ),
} satisfies Record<string, SheetRow>
