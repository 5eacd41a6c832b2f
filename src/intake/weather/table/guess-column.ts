/** What a column is, from its name in the languages that loggers speak. */
import { weatherColumns } from '../weather-columns.ts'
import type { TableColumn } from './table-mapping.ts'

/** Beginnings of names, letters only; longer ones stand first. */
const words: readonly (readonly [string, readonly string[]])[] = [
  [
    'time',
    [
      'datetime',
      'dateandtime',
      'timestamp',
      'datumzeit',
      'datumuhrzeit',
      'dateheure',
      'fechahora',
      'zeitstempel',
    ],
  ],
  ['date', ['date', 'datum', 'fecha', 'dato']],
  ['clock', ['time', 'uhrzeit', 'zeit', 'heure', 'hora', 'klokkeslett', 'kl']],
  [
    'dewC',
    ['dewpoint', 'dewpt', 'dew', 'taupunkt', 'pointderosee', 'puntoderocio', 'daggpunkt', 'duggpunkt'],
  ],
  [
    'humidityPct',
    [
      'relativehumidity',
      'relhumidity',
      'humidity',
      'humidite',
      'hum',
      'rh',
      'relh',
      'relativefeuchte',
      'relfeuchte',
      'luftfeuchte',
      'luftfeuchtigkeit',
      'feuchte',
      'feuchtigkeit',
      'humedad',
      'umidita',
      'luftfuktighet',
      'fuktighet',
    ],
  ],
  ['windFromDeg', ['winddirection', 'winddir', 'windfrom', 'windrichtung']],
  ['windMps', ['windspeed', 'wind', 'windgeschwindigkeit']],
  ['rainChancePct', ['rainchance', 'precipitationprobability', 'pop']],
  ['rainMm', ['rain', 'precipitation', 'precip', 'regen', 'niederschlag', 'pluie']],
  ['cloudPct', ['cloudcover', 'cloud', 'bewolkung']],
  ['sunWm2', ['solarradiation', 'solar', 'globalradiation', 'radiation', 'sun', 'irradiance']],
  [
    'airC',
    [
      'airtemperature',
      'airtemp',
      'temperature',
      'temperatur',
      'temperatura',
      'lufttemperatur',
      'temp',
      'air',
      't',
    ],
  ],
]

/** Words that must be the whole name: as the beginning of one they mean anything. */
const wholeOnly = new Set([
  't',
  'rh',
  'kl',
  'hum',
  'air',
  'sun',
  'dew',
  'pop',
  'time',
  'zeit',
  'hora',
  'wind',
  'rain',
  'relh',
])

/**
 * The best guess of each column by its name; what no word fits is passed over. A time beside a date is the clock, a time
 * alone is both.
 */
export function guessColumns(names: readonly string[]): readonly TableColumn[] {
  const guessed = names.map((name) => {
    const to = targetOf(name)
    return { name, to, unit: to === undefined ? '' : unitIn(name, to) }
  })
  const hasDate = guessed.some(({ to }) => to === 'date')
  const seen = new Set<string>()
  return guessed.map(({ name, to, unit }) => {
    const whole = (to === 'clock' || to === 'date') && !(hasDate && guessed.some((one) => one.to === 'clock'))
    const target = to === undefined ? 'ignore' : whole ? 'time' : to
    // A second column of a kind is for the person to choose.
    if (target === 'ignore' || seen.has(target)) return { name, to: 'ignore', unit }
    seen.add(target)
    return { name, to: target, unit }
  })
}

function targetOf(name: string): string | undefined {
  const own = weatherColumns.find((column) => column.name.toLowerCase() === name.trim().toLowerCase())
  if (own !== undefined) return own.name
  const letters = lettersOf(name)
  const found = words.find(([, list]) => list.includes(letters))
  if (found !== undefined) return found[0]
  return words.find(([, list]) => list.some((word) => !wholeOnly.has(word) && letters.startsWith(word)))?.[0]
}

/** Without what stands in brackets, units, digits and accents. */
function lettersOf(name: string): string {
  return name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[([].*?[)\]]/g, ' ')
    .replace(/[,;].*$/, ' ')
    .replace(
      /°\s*[cfk]?|%|[_\s](?:c|f|rh|deg ?[cf]|celsius|fahrenheit|pct|percent|m\/s|km\/h|mph|mm)\s*$/g,
      ' ',
    )
    .replace(/[^a-z]/g, '')
}

/** The unit in a name, as a person would write it: `Temp (°F)`, `T_C`, `RH %`. */
function unitIn(name: string, to: string): string {
  const quantity = weatherColumns.find((column) => column.name === to)?.quantity
  const plain = name.normalize('NFKC')
  if (quantity === 'temperature') {
    if (to === name.trim() || /celsius/i.test(plain)) return '°C'
    if (/fahrenheit/i.test(plain)) return '°F'
    const letter = /(?:°|º|deg(?:rees)?\.?)\s*([CFK])\b|[([_\s,]([CFK])[)\]\s]*$|^[Tt]emp([CF])$/.exec(plain)
    const found = letter?.[1] ?? letter?.[2] ?? letter?.[3]
    return found === undefined ? '' : found === 'K' ? 'K' : `°${found}`
  }
  if (quantity === 'speed')
    return /km\/?h|kph/i.test(plain)
      ? 'km/h'
      : /mph/i.test(plain)
        ? 'mph'
        : /kn|kt/i.test(plain)
          ? 'kn'
          : /m\/s|mps/i.test(plain)
            ? 'm/s'
            : ''
  if (quantity === 'depth') return /\bin(?:ch)?\b/i.test(plain) ? 'in' : 'mm'
  return quantity === 'share' ? '%' : quantity === 'angle' ? '°' : quantity === 'power' ? 'W/m²' : ''
}
