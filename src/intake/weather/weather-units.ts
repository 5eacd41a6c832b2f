/** Units that weather files write, each as a step and a factor to the unit of its column. */

export type Quantity = 'temperature' | 'share' | 'speed' | 'angle' | 'depth' | 'power'

/** Value in the unit of the column: `value * factor + step`. */
export type UnitStep = { readonly factor: number; readonly step: number }

const times = (factor: number): UnitStep => ({ factor, step: 0 })

/** SOURCE: a knot is 1852 m an hour, a mile 1609.344 m, an inch 25.4 mm, by definition. */
const units: Readonly<Record<Quantity, Readonly<Record<string, UnitStep>>>> = {
  temperature: named([
    [['c', 'degc', 'celsius', 'degreescelsius'], times(1)],
    [['f', 'degf', 'fahrenheit', 'degreesfahrenheit'], { factor: 1 / 1.8, step: -32 / 1.8 }],
    [['k', 'kelvin'], { factor: 1, step: -273.15 }],
  ]),
  share: named([
    [['%', 'percent', 'pct', '%rh', 'rh%', 'rh'], times(1)],
    [['share', 'fraction', '0..1', '1'], times(100)],
    [['tenths', 'tenth'], times(10)],
    [['okta', 'oktas', 'eighths'], times(12.5)],
  ]),
  speed: named([
    [['m/s', 'ms', 'mps', 'ms1', 'metrespersecond', 'meterspersecond'], times(1)],
    [['km/h', 'kmh', 'kph', 'kmh1'], times(1 / 3.6)],
    [['mph', 'mp/h', 'mi/h', 'milesperhour'], times(0.44704)],
    [['kn', 'kt', 'kts', 'knot', 'knots'], times(1852 / 3600)],
  ]),
  angle: named([[['', 'deg', 'degree', 'degrees', 'degree(angle)', '°'], times(1)]]),
  depth: named([
    [['mm', 'l/m2', 'kg/m2', 'kgm2'], times(1)],
    [['cm'], times(10)],
    [['m'], times(1000)],
    [['in', 'inch', 'inches', '"'], times(25.4)],
  ]),
  power: named([[['w/m2', 'wm2', 'wh/m2'], times(1)]]),
}

function named(
  rows: readonly (readonly [readonly string[], UnitStep])[],
): Readonly<Record<string, UnitStep>> {
  return Object.fromEntries(rows.flatMap(([names, step]) => names.map((name) => [name, step])))
}

/** Units as a person may choose them, the column's own first. */
export const unitChoices: Readonly<Record<Quantity, readonly string[]>> = {
  temperature: ['°C', '°F', 'K'],
  share: ['%', '0..1'],
  speed: ['m/s', 'km/h', 'mph', 'kn'],
  angle: ['°'],
  depth: ['mm', 'in'],
  power: ['W/m²'],
}

/** How a unit goes over into that of the column; undefined when it is none of this quantity. */
export function unitStep(quantity: Quantity, written: string): UnitStep | undefined {
  const plain = written
    .toLowerCase()
    .replace(/^(?:wmounit|nwsunit|unit):/, '')
    .replace(/²/g, '2')
    .replace(/[\s_^-]|(?<=.)°|°(?=.)/g, '')
  const table = units[quantity]
  return Object.hasOwn(table, plain) ? table[plain] : undefined
}
