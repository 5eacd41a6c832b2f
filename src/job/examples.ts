/** What each kind of cell may look like: shown on the reference page and in the JSON Schema. */
import type { Dimension } from '#units'
import type { Field } from './field.ts'

const ofDimension: Readonly<Partial<Record<Dimension, readonly string[]>>> = {
  length: ['7.72 m', '25 ft 4 in'],
  area: ['12.5 m²', '135 ft²'],
  volume: ['0.75 L', '4 fl oz'],
  mass: ['1.2 kg', '2 lb 4 oz'],
  density: ['1.1 kg/L', '9.2 lb/gal'],
  coverage: ['9.8 m²/L', '100 ft²/qt'],
  temperature: ['16 °C', '60 °F'],
  power: ['5 kW', '30000 BTU/h'],
  temperatureDifference: ['3 °C', '5 °F'],
  time: ['2 h 30 min', '90 min'],
  angle: ['21°', '58.4°'],
  share: ['45 %', '0.45'],
  volumeShare: ['50 ml/L', '4 fl oz/qt'],
}

/** A length that may be no more than this is a film. */
const filmMost = 0.02

const ofFilm = ['40 µm', '2 mil']

const ofKind: Readonly<Partial<Record<Field['kind'], readonly string[]>>> = {
  money: ['EUR 62', '$49.95', '£1,200'],
  currency: ['EUR', '£'],
  ratio: ['2:1', '100:2', '1'],
  date: ['2027-04-12'],
  instant: ['2027-04-14T09:30+02:00'],
  timeOfDay: ['07:00', '6:30 pm'],
  weekdays: ['Mon-Fri', 'Sat, Sun', 'weekends'],
  clockTable: ['5C: 24h, 15C: 10h, 25C: 6h', '10 h'],
}

/** One to four ways to write it; none for free text and names. */
export const examplesOf = (field: Field): readonly string[] => {
  if (field.kind === 'quantity') {
    return field.most !== undefined && field.dimension === 'length' && field.most <= filmMost
      ? ofFilm
      : (ofDimension[field.dimension] ?? [])
  }
  if (field.kind === 'text') return field.example === undefined ? [] : [field.example]
  return ofKind[field.kind] ?? []
}
