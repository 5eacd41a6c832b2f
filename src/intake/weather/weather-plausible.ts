/** Whether figures can be what their column says: range by range, and whole columns in the wrong unit. */
import { dewPoint } from '#core/climate'
import type { Problem, ProblemList } from '../problem.ts'
import { addProblem, problemList } from '../problem.ts'
import type { WeatherColumn } from './weather-columns.ts'
import type { WeatherHeader } from './weather-header.ts'
import type { WeatherRow, WeatherRows } from './weather-rows.ts'

/** One column, in the unit of its file. */
export type Figures = Float64Array | readonly number[]

/** No place on earth is warmer than this in half of its hours, °C. */
const warmestMedianC = 45

/**
 * Columns in the wrong unit: air in °F, humidity or another share written 0 to 1 instead of 0 to 100.
 * A column that holds no figure at all is an error when it is required.
 */
export function wrongColumns(header: WeatherHeader, { rows, problems }: WeatherRows): readonly Problem[] {
  const pair = pairOf(header, rows)
  const place = { severity: 'error', column: (pair?.at ?? 0) + 1 } as const
  const crossed = pair && swapped(pair)
  if (crossed !== undefined) return [{ ...crossed, ...place }]
  const single = header.columns.flatMap(({ column, at }, index) => {
    const figures = rows.map((row) => row.figures[index]!).filter((figure) => !Number.isNaN(figure))
    const wrong = wrongColumn(column, figures)
    // Where fields could not be read, the column is not empty, and the fields are told.
    const unread = wrong?.code === 'intake.columnEmpty' && problems.count > 0
    return wrong === undefined || unread ? [] : [{ ...wrong, severity: 'error' as const, column: at + 1 }]
  })
  const damp = pair && tooDamp(pair)
  return single.length > 0 || damp === undefined ? single : [{ ...damp, ...place }]
}

/** Air and humidity of the rows, and the field of the air. */
function pairOf(
  header: WeatherHeader,
  rows: readonly WeatherRow[],
): (Pair & { readonly at: number }) | undefined {
  const indexOf = (key: string) => header.columns.findIndex(({ column }) => column.key === key)
  const [air, humidity] = [indexOf('airC'), indexOf('humidityShare')]
  if (air < 0 || humidity < 0) return undefined
  const figures = (index: number) => rows.map((row) => row.figures[index]!)
  return { airC: figures(air), humidityPct: figures(humidity), at: header.columns[air]!.at }
}

export function wrongColumn(
  column: WeatherColumn,
  figures: Figures,
): Pick<Problem, 'code' | 'data'> | undefined {
  const { name } = column
  if (figures.length === 0)
    return column.required ? { code: 'intake.columnEmpty', data: { name } } : undefined
  if (column.key === 'airC' && median(figures) > warmestMedianC)
    return { code: 'intake.airInFahrenheit', data: { name, median: median(figures) } }
  if (column.perUnit === 100 && inShares(column, figures))
    return { code: 'intake.shareNotPercent', data: { name, greatest: greatest(figures) } }
  return undefined
}

/**
 * Humidity is never 1 % throughout. Cloud and rain may well be 0 or next to nothing through a clear week: what is a share
 * shows a fraction, and something in more than a third of the hours.
 */
function inShares(column: WeatherColumn, figures: Figures): boolean {
  if (greatest(figures) > 1) return false
  if (column.required) return true
  let some = 0
  let fraction = false
  for (const figure of figures) {
    if (figure > 0) some++
    if (figure > 0 && figure < 1) fraction = true
  }
  return fraction && 3 * some > figures.length
}

function greatest(figures: Figures): number {
  let most = Number.NEGATIVE_INFINITY
  for (const figure of figures) most = Math.max(most, figure)
  return most
}

function median(figures: Figures): number {
  return Float64Array.from(figures).sort()[Math.floor(figures.length / 2)]!
}

/** Highest dew point that is taken for real, °C; the highest on record is 35 °C (from memory). */
const dampestDewC = 33
/** A share of the hours that a broken reading or two does not reach. */
const fewHours = 0.02

type Pair = {
  readonly airC: Figures
  /** Per cent, of the same hours. */
  readonly humidityPct: Figures
}

/** Air and humidity under each other's name. */
export function swapped(pair: Pair): Pick<Problem, 'code' | 'data'> | undefined {
  const airC = known(pair.airC)
  const humidityPct = known(pair.humidityPct)
  const bothThere = airC.length > 0 && humidityPct.length > 0
  if (!bothThere || !areSwapped(airC, humidityPct)) return undefined
  return { code: 'intake.columnsSwapped', data: { name: 'airC', other: 'humidityPct' } }
}

/** Air that holds more water than any does must be in degrees Fahrenheit. */
export function tooDamp({ airC, humidityPct }: Pair): Pick<Problem, 'code' | 'data'> | undefined {
  let [count, hours] = [0, 0]
  for (let hour = 0; hour < airC.length; hour++) {
    const air = { airC: airC[hour]!, humidityShare: humidityPct[hour]! / 100 }
    if (!(air.airC <= 60 && air.humidityShare > 0 && air.humidityShare <= 1)) continue
    hours++
    if (dewPoint(air) > dampestDewC) count++
  }
  if (count === 0 || count <= fewHours * hours) return undefined
  return { code: 'intake.airTooDamp', data: { name: 'airC', count, dewC: dampestDewC } }
}

/** What stands under air runs through the range of humidity, and what stands under humidity is a temperature. */
function areSwapped(airC: Figures, humidityPct: Figures): boolean {
  const likeHumidity = least(airC) >= 0 && greatest(airC) <= 100.5 && median(airC) > 40
  const likeAir = greatest(humidityPct) <= warmestMedianC && least(humidityPct) >= -60
  if (!likeHumidity || !likeAir) return false
  // In °F with dry air both would be likely; frost under humidity, a saturated hour under air, or no drier desert decide.
  return least(humidityPct) < 0 || greatest(airC) >= 90 || median(humidityPct) < 15
}

const known = (figures: Figures): Float64Array =>
  Float64Array.from(figures).filter((figure) => !Number.isNaN(figure))

function least(figures: Figures): number {
  let found = Number.POSITIVE_INFINITY
  for (const figure of figures) found = Math.min(found, figure)
  return found
}

/** Every figure out of its plausible range, columns apart that are wrong as a whole. */
export function outOfRange(
  header: WeatherHeader,
  rows: readonly WeatherRow[],
  wrong: readonly Problem[],
): ProblemList {
  const problems = problemList()
  if (wrong.some(({ code }) => code === 'intake.columnsSwapped')) return problems
  const wholly = new Set(wrong.map((problem) => problem.column))
  for (const { line, figures } of rows) {
    header.columns.forEach(({ column, at }, index) => {
      const found = figures[index]!
      const { name, least, most } = column
      if (wholly.has(at + 1) || !(found < least || found > most)) return
      const data = { name, found, least, most }
      addProblem(problems, { code: 'intake.outOfRange', severity: 'error', line, column: at + 1, data })
    })
  }
  return problems
}
