/** Cells of a product data sheet: what people copy from the can. The catalogue's generic sheets have the same. */
import { air, density, film, percent, spread } from './bounds.ts'
import type { Fields } from './field.ts'

/** Coating families, as `catalogue/` knows them; hatching and rules follow the family. */
export const families = [
  'polyester',
  'vinylester',
  'gelcoat',
  'epoxy',
  'two-part polyurethane',
  'one-part',
  'acrylic',
  'solvent',
] as const

export const sheetFields = {
  name: { kind: 'text', doc: 'What stands on the can, in your own words.' },
  like: { kind: 'ref', to: 'catalogue', doc: 'The generic sheet that fills what this one leaves out.' },
  family: { kind: 'choice', choices: families, doc: 'What it cures by.' },
  role: {
    kind: 'choice',
    choices: ['filler', 'fairing', 'laminating resin', 'primer', 'tie coat', 'finish', 'non-skid', 'thinner'],
    doc: 'What it is for.',
  },
  colour: { kind: 'text', doc: 'Colour as ordered.' },
  shade: { kind: 'choice', choices: ['light', 'medium', 'dark'], doc: 'How much sun it takes up.' },
  coverage: { kind: 'quantity', dimension: 'coverage', ...spread, doc: 'Spread as printed, per coat.' },
  volumeSolids: {
    kind: 'quantity',
    dimension: 'share',
    sign: 'positive',
    most: 1,
    doc: 'Solids by volume, as mixed.',
  },
  dryFilm: { kind: 'quantity', dimension: 'length', ...film, doc: 'Dry film of one coat.' },
  mix: { kind: 'ratio', doc: 'Parts A to B by volume, for example 2:1; 1 for a one-part.' },
  densityA: { kind: 'quantity', dimension: 'density', ...density, doc: 'Density of part A.' },
  densityB: { kind: 'quantity', dimension: 'density', ...density, doc: 'Density of part B.' },
  densityThinner: { kind: 'quantity', dimension: 'density', ...density, doc: 'Density of the thinner.' },
  thinnerShare: { kind: 'quantity', dimension: 'share', ...percent, doc: 'Thinner as a share of A and B.' },
  thinnerMost: { kind: 'quantity', dimension: 'share', ...percent, doc: 'Most thinner the sheet allows.' },
  induction: { kind: 'clockTable', doc: 'Standing time after mixing, at temperatures.' },
  potLife: { kind: 'clockTable', doc: 'Pot life, at temperatures.' },
  touchDry: { kind: 'clockTable', doc: 'Dry to touch, at temperatures.' },
  dryToDew: { kind: 'clockTable', doc: 'How long dew and rain must stay off, at temperatures.' },
  recoatLeast: { kind: 'clockTable', doc: 'Shortest wait to the next coat, at temperatures.' },
  recoatMost: { kind: 'clockTable', doc: 'Longest wait to the next coat without sanding, at temperatures.' },
  dryToSand: { kind: 'clockTable', doc: 'Dry enough to sand, at temperatures.' },
  dryToTape: { kind: 'clockTable', doc: 'Hard enough to take tape, at temperatures.' },
  dryToTread: { kind: 'clockTable', doc: 'Hard enough for soft soles, at temperatures.' },
  dryToFit: { kind: 'clockTable', doc: 'Hard enough for light hardware, at temperatures.' },
  dryToSling: { kind: 'clockTable', doc: 'Hard enough for slings and launching, at temperatures.' },
  fullCure: { kind: 'clockTable', doc: 'Full cure, at temperatures.' },
  airLeast: { kind: 'quantity', dimension: 'temperature', ...air, doc: 'Coldest air to apply in.' },
  airMost: { kind: 'quantity', dimension: 'temperature', ...air, doc: 'Warmest air to apply in.' },
  humidityMost: { kind: 'quantity', dimension: 'share', ...percent, doc: 'Highest relative humidity.' },
  dewMargin: {
    kind: 'quantity',
    dimension: 'temperatureDifference',
    least: 0,
    most: 20,
    doc: 'How far the surface must stay over the dew point.',
  },
  flashPoint: { kind: 'quantity', dimension: 'temperature', least: -60, most: 400, doc: 'Flash point.' },
  isocyanate: { kind: 'yesno', doc: 'The hardener holds isocyanates.' },
  source: { kind: 'text', doc: 'Where the figures are from.' },
} as const satisfies Fields
