/**
 * Every simple unit: its size in the unit of the result and how people spell it.
 * Sizes are exact by definition (international foot and pound of 1959, US gallon of 231 in³, imperial gallon of
 * 4.54609 L) unless a remark says otherwise. SOURCE: A. Thompson, B. N. Taylor, Guide for the Use of the
 * International System of Units (SI), NIST Special Publication 811, 2008, Appendix B.
 */

import type { Kind } from './dimension.ts'

/** A size is `times / over`, both short decimals, so that `50 µm` is exactly 50 / 1000000. */
export type Unit = {
  readonly id: string
  readonly kind: Kind
  readonly times: number
  readonly over: number
  /** Temperatures: the reading of this scale at 0 °C, in its own degrees. */
  readonly zero: number
  readonly spellings: readonly string[]
  /** False for one made of two (`g/m²`, `kn`), which no smaller unit may follow. */
  readonly simple: boolean
}

type Row = readonly [id: string, times: number, over: number, spellings: string]

const unitsOfKind = (kind: Kind, rows: readonly Row[]): readonly Unit[] =>
  rows.map(([id, times, over, spellings]) => ({
    id,
    kind,
    times,
    over,
    zero: 0,
    spellings: [id, ...spellings.split(',').filter(Boolean)],
    simple: true,
  }))

const lengths = unitsOfKind('length', [
  ['km', 1000, 1, 'kilometre,kilometres,kilometer,kilometers'],
  ['m', 1, 1, 'metre,metres,meter,meters'],
  ['dm', 1, 10, 'decimetre,decimetres,decimeter,decimeters'],
  ['cm', 1, 100, 'centimetre,centimetres,centimeter,centimeters'],
  ['mm', 1, 1000, 'millimetre,millimetres,millimeter,millimeters'],
  ['µm', 1, 1e6, 'um,micron,microns,micrometre,micrometres,micrometer,micrometers,mu m'],
  ['nmi', 1852, 1, 'nautical mile,nautical miles'],
  ['mi', 1609344, 1000, 'mile,miles'],
  ['yd', 1143, 1250, 'yds,yard,yards'],
  ['ft', 381, 1250, "foot,feet,'"],
  ['in', 127, 5000, 'inch,inches,"'],
  ['mil', 127, 5e6, 'mils,thou,thousandth,thousandths'],
])

const squareOf = (spelling: string): readonly string[] =>
  /^[a-z]/.test(spelling) ? [`sq ${spelling}`, `sq${spelling}`, `square ${spelling}`] : []

const cubeOf = (spelling: string): readonly string[] =>
  /^[a-z]/.test(spelling) ? [`cu ${spelling}`, `cu${spelling}`, `cubic ${spelling}`] : []

const powersOf = (ids: readonly string[], power: 2 | 3): readonly Unit[] =>
  lengths
    .filter(({ id }) => ids.includes(id))
    .map((unit) => ({
      ...unit,
      id: `${unit.id}${power === 2 ? '²' : '³'}`,
      kind: power === 2 ? 'area' : 'volume',
      times: unit.times ** power,
      over: unit.over ** power,
      spellings: [
        `${unit.id}${power === 2 ? '²' : '³'}`,
        ...unit.spellings.flatMap(power === 2 ? squareOf : cubeOf),
      ],
    }))

const areas = powersOf(['m', 'dm', 'cm', 'mm', 'yd', 'ft', 'in'], 2)

const volumes = [
  ...powersOf(['m', 'dm', 'cm', 'mm', 'yd', 'ft', 'in'], 3),
  ...unitsOfKind('volume', [
    ['L', 1, 1000, 'l,ℓ,ltr,litre,litres,liter,liters'],
    ['dl', 1, 1e4, 'decilitre,decilitres,deciliter,deciliters'],
    ['cl', 1, 1e5, 'centilitre,centilitres,centiliter,centiliters'],
    ['ml', 1, 1e6, 'cc,ccm,millilitre,millilitres,milliliter,milliliters'],
    ['gal', 3785411784, 1e12, 'gals,gallon,gallons,us gal,us gallon,us gallons,u s gal,u s gallons'],
    ['qt', 3785411784, 4e12, 'qts,quart,quarts,us qt,us quart,us quarts,u s qt'],
    ['pt', 3785411784, 8e12, 'pts,pint,pints,us pt,us pint,us pints,u s pt'],
    ['cup', 3785411784, 16e12, 'cups,us cup,us cups'],
    [
      'fl oz',
      3785411784,
      128e12,
      'floz,fluid oz,fl ounce,fl ounces,fluid ounce,fluid ounces,oz fl,us fl oz,us fluid ounce,us fluid ounces,u s fl oz',
    ],
    ['tbsp', 3785411784, 256e12, 'tablespoon,tablespoons'],
    ['tsp', 3785411784, 768e12, 'teaspoon,teaspoons'],
    [
      'imp gal',
      454609,
      1e8,
      'imperial gal,imperial gallon,imperial gallons,imp gallon,imp gallons,uk gal,gal imp',
    ],
    ['imp qt', 454609, 4e8, 'imperial qt,imperial quart,imperial quarts,imp quart,imp quarts,uk qt,qt imp'],
    ['imp pt', 454609, 8e8, 'imperial pt,imperial pint,imperial pints,imp pint,imp pints,uk pt,pt imp'],
    [
      'imp fl oz',
      454609,
      160e8,
      'imperial fl oz,imperial fluid ounce,imperial fluid ounces,imp fluid ounce,imp fluid ounces,uk fl oz,fl oz imp',
    ],
  ]),
]

const masses = unitsOfKind('mass', [
  ['t', 1000, 1, 'tonne,tonnes,metric ton,metric tons,ton,tons'],
  ['kg', 1, 1, 'kgs,kilo,kilos,kilogram,kilograms,kilogramme,kilogrammes'],
  ['g', 1, 1000, 'gm,gms,gram,grams,gramme,grammes'],
  ['mg', 1, 1e6, 'milligram,milligrams'],
  ['long ton', 45359237 * 2240, 1e8, 'long tons,ton,tons'],
  ['short ton', 45359237 * 2000, 1e8, 'short tons,ton,tons'],
  ['lb', 45359237, 1e8, 'lbs,pound,pounds'],
  ['oz av', 45359237, 16e8, 'oz,ozs,ounce,ounces,oz avdp,oz wt,oz by weight,ounces by weight'],
])

const times = unitsOfKind('time', [
  ['yr', 365.2425 * 24, 1, 'yrs,year,years'],
  ['month', 365.2425 * 2, 1, 'months'],
  ['wk', 168, 1, 'wks,week,weeks'],
  ['d', 24, 1, 'day,days'],
  ['h', 1, 1, 'hr,hrs,hour,hours'],
  ['min', 1, 60, 'mins,minute,minutes'],
  ['s', 1, 3600, 'sec,secs,second,seconds'],
])

const angles = unitsOfKind('angle', [
  ['°', Math.PI, 180, 'deg,degs,degree,degrees'],
  ['rad', 1, 1, 'rads,radian,radians'],
  ['mrad', 1, 1000, 'milliradian,milliradians'],
  ['′', Math.PI, 10800, "',arcmin"],
  ['″', Math.PI, 648000, '",arcsec'],
])

const shares = unitsOfKind('share', [
  ['%', 1, 100, 'percent,per cent,pct,% rh,% r h,% by volume,% by weight,% vol'],
  ['‰', 1, 1000, 'permille,per mille'],
  ['ppm', 1, 1e6, ''],
])

const degree = (unit: string): string => `° ${unit},deg ${unit},degree ${unit},degrees ${unit}`

const temperatures: readonly Unit[] = [
  ...unitsOfKind('temperature', [
    ['°C', 1, 1, `C,℃,celsius,centigrade,degC,${degree('C')},${degree('celsius')},°,deg,degs,degree,degrees`],
  ]),
  ...unitsOfKind('temperature', [
    ['°F', 5, 9, `F,℉,fahrenheit,degF,${degree('F')},${degree('fahrenheit')},°,deg,degs,degree,degrees`],
  ]).map((unit) => ({ ...unit, zero: 32 })),
  ...unitsOfKind('temperature', [['K', 1, 1, 'kelvin,kelvins']]).map((unit) => ({ ...unit, zero: 273.15 })),
]

/** psi is lbf/in² with g = 9.80665 m/s²; the columns are conventional (NIST SP 811 B.8: inHg, mmHg, inH2O). */
const pressures = unitsOfKind('pressure', [
  ['bar', 1e5, 1, 'bars'],
  ['mbar', 100, 1, 'mb,millibar,millibars'],
  ['MPa', 1e6, 1, ''],
  ['kPa', 1000, 1, ''],
  ['hPa', 100, 1, ''],
  ['Pa', 1, 1, 'pascal,pascals'],
  ['psi', 45359237 * 9.80665, 64516, 'psig'],
  ['inHg', 3386.389, 1, 'in hg,inches hg,inches of mercury'],
  ['mmHg', 133.3224, 1, 'mm hg,torr'],
  ['in wg', 249.0889, 1, 'inwg,in wc,inwc,inches of water'],
])

const powers = unitsOfKind('power', [
  ['kW', 1000, 1, 'kilowatt,kilowatts'],
  ['hp', 745.6999, 1, 'horsepower'],
  ['W', 1, 1, 'watt,watts'],
])

/** Watt hours; only read over a time. The British thermal unit is the international table one (NIST SP 811 B.8). */
const energies = unitsOfKind('energy', [
  ['kWh', 1000, 1, ''],
  ['BTU', 0.2930711, 1, 'btus'],
])

/** Pairs with a name of their own. */
const named: readonly Unit[] = [
  ...unitsOfKind('speed', [
    ['kn', 1852, 3600, 'kt,kts,knot,knots'],
    ['mph', 1609.344, 3600, ''],
    ['km/h', 1000, 3600, 'kph,kmh,kmph'],
    ['m/s', 1, 1, 'mps'],
    ['ft/min', 381, 75000, 'fpm'],
    ['ft/s', 381, 1250, 'fps'],
  ]),
  ...unitsOfKind('areicMass', [['g/m²', 1, 1000, 'gsm,gm2']]),
  ...unitsOfKind('density', [
    ['lb/ft³', 45359237 * 1953125, 55306341 * 1e5, 'pcf'],
    ['lb/gal', 45359237e4, 3785411784, 'ppg'],
  ]),
  ...unitsOfKind('volumeRate', [
    ['ft³/min', 55306341 * 60, 1953125000, 'cfm'],
    ['gal/min', 3785411784 * 60, 1e12, 'gpm'],
    ['gal/h', 3785411784, 1e12, 'gph'],
  ]),
].map((unit) => ({ ...unit, simple: false }))

export const unitTable: readonly Unit[] = [
  ...lengths,
  ...areas,
  ...volumes,
  ...masses,
  ...times,
  ...angles,
  ...temperatures,
  ...shares,
  ...pressures,
  ...powers,
  ...energies,
  ...named,
]
