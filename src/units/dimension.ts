/** What kinds of quantity can be read and written, and what each accepts when read. */

export const dimensions = [
  'length',
  'area',
  'volume',
  'mass',
  'areicMass',
  'density',
  'coverage',
  'temperature',
  'temperatureDifference',
  'speed',
  'time',
  'angle',
  'share',
  'ratio',
  'money',
  'volumeRate',
  'volumeShare',
  'pace',
  'workRate',
  'pressure',
  'power',
  'clock',
  'count',
  'number',
] as const

/**
 * Result of reading, by dimension: length m, area m², volume m³, mass kg, areicMass kg/m², density kg/m³,
 * coverage m²/m³, temperature °C, temperatureDifference K, speed m/s, time h, angle rad, share 0 to 1,
 * ratio first part over second, money smallest coins, volumeRate m³/h, volumeShare m³/m³, pace m²/h,
 * workRate h/m², pressure Pa, power W, clock hours since midnight, count whole number, number as it stands.
 */
export type Dimension = (typeof dimensions)[number]

/** What a unit measures; a unit made of two (`g/m²`) has the kind that the pair makes. */
export type Kind =
  | Exclude<Dimension, 'temperatureDifference' | 'ratio' | 'money' | 'clock' | 'count' | 'number'>
  | 'massShare'
  | 'areicVolume'
  | 'energy'

export type Sign = 'positive' | 'notNegative' | 'any'

export type DimensionRule = {
  readonly kinds: readonly Kind[]
  /** A kind that is read upside down: `120 ml/m²` is a coverage too. */
  readonly inverse?: Kind
  readonly sign: Sign
  readonly atLeast?: number
  readonly atMost?: number
  /** A number may stand without a unit. */
  readonly bare: boolean
  /** Several parts may be added up: `25 ft 4 in`. */
  readonly parts: boolean
  readonly examples: readonly string[]
}

const plain = { sign: 'notNegative', bare: false, parts: false } as const
const positive = { sign: 'positive', bare: false, parts: false } as const

export const dimensionRules: Readonly<Record<Dimension, DimensionRule>> = {
  length: { ...plain, parts: true, kinds: ['length'], examples: ['7.72 m', '25 ft 4 in'] },
  area: { ...plain, kinds: ['area'], examples: ['12.5 m²', '135 ft²'] },
  volume: { ...plain, parts: true, kinds: ['volume'], examples: ['0.75 L', '4 fl oz', '1 qt'] },
  mass: { ...plain, parts: true, kinds: ['mass'], examples: ['1.2 kg', '2 lb 4 oz'] },
  areicMass: { ...plain, kinds: ['areicMass'], examples: ['300 g/m²', '1.5 oz/ft²', '18 oz/yd²'] },
  density: { ...positive, kinds: ['density'], examples: ['1.1 kg/L', '9.2 lb/gal'] },
  coverage: {
    ...positive,
    kinds: ['coverage'],
    inverse: 'areicVolume',
    examples: ['9.84 m²/L', '100 ft²/qt'],
  },
  temperature: {
    ...plain,
    sign: 'any',
    atLeast: -273.15,
    kinds: ['temperature'],
    examples: ['16 °C', '60 °F'],
  },
  temperatureDifference: { ...plain, sign: 'any', kinds: ['temperature'], examples: ['3 °C', '5 °F'] },
  speed: { ...plain, kinds: ['speed'], examples: ['5 m/s', '10 kn', '12 mph'] },
  time: { ...plain, parts: true, kinds: ['time'], examples: ['2 h 30 min', '90 min', '3 d'] },
  angle: { ...plain, sign: 'any', parts: true, kinds: ['angle'], examples: ['4.8°', '0.08 rad'] },
  share: {
    ...plain,
    bare: true,
    atMost: 1,
    kinds: ['share', 'massShare', 'volumeShare'],
    examples: ['45 %', '0.45'],
  },
  ratio: { ...positive, bare: true, kinds: [], examples: ['2:1', '100:45'] },
  money: { ...plain, kinds: [], examples: ['EUR 12.50', '$12.50'] },
  volumeRate: { ...plain, kinds: ['volumeRate'], examples: ['400 m³/h', '250 cfm'] },
  volumeShare: { ...plain, kinds: ['volumeShare', 'share'], examples: ['50 ml/L', '4 fl oz/qt', '5 %'] },
  pace: { ...positive, kinds: ['pace'], inverse: 'workRate', examples: ['8 m²/h', '90 ft²/h'] },
  workRate: { ...plain, kinds: ['workRate'], inverse: 'pace', examples: ['0.5 h/m²', '3 min/ft²'] },
  pressure: { ...plain, kinds: ['pressure'], examples: ['1013 hPa', '2 bar', '30 psi'] },
  power: { ...plain, kinds: ['power'], examples: ['5 kW', '30000 BTU/h'] },
  clock: { ...plain, atMost: 24, kinds: [], examples: ['07:30', '7:30 am'] },
  count: { ...plain, bare: true, kinds: [], examples: ['3'] },
  number: { ...plain, bare: true, sign: 'any', kinds: [], examples: ['1.5'] },
}
