/** Writes a series as the CSV that `readWeatherCsv` reads. */
import { type HourlySeries, hourMs } from '#core/climate'
import { oneLine } from '../problem.ts'
import { columnsOf, timeColumn } from './weather-columns.ts'
import { mostRemark } from './weather-header.ts'
import { writeTime } from './weather-time.ts'

/** Figures are kept to a millionth of the unit written: finer than any instrument, and a round trip keeps them. */
const perUnitKept = 1e6

/**
 * Writes source, licence, a header and one line an hour; hours in a gap have no line, unknown figures are empty.
 * @param series written as it stands. @param offsetMinutes east of UTC, in which times are written: 0 writes `Z`.
 * @returns text with line feeds; read again it gives the same series.
 */
export function writeWeatherCsv(series: HourlySeries, offsetMinutes = 0): string {
  const columns = columnsOf(series)
  const inGap = gapHours(series)
  const lines = [
    ...remark('source', series.source),
    ...remark('licence', series.licence),
    ...(series.typicalYear ? ['# typical year: yes'] : []),
    ...placeRemark(series),
    [timeColumn, ...columns.map((column) => column.name)].join(','),
  ]
  for (let hour = 0; hour < series.hours; hour++) {
    if (inGap.has(hour)) continue
    const figures = columns.map(({ key, perUnit }) => writeFigure(series[key]![hour]! * perUnit))
    lines.push([writeTime(series.startMs + hour * hourMs, offsetMinutes), ...figures].join(','))
  }
  return `${lines.join('\n')}\n`
}

function remark(key: 'source' | 'licence', text: string): readonly string[] {
  const line = oneLine(text, mostRemark)
  return line === '' ? [] : [`# ${key}: ${line}`]
}

/** Degrees north and east. */
function placeRemark({ spot }: HourlySeries): readonly string[] {
  if (spot === undefined) return []
  const degrees = (angle: number) => writeFigure((angle * 180) / Math.PI)
  return [`# place: ${degrees(spot.latitude)}, ${degrees(spot.longitude)}`]
}

function gapHours(series: HourlySeries): ReadonlySet<number> {
  return new Set(
    series.gaps.flatMap(({ fromHour, hours }) => Array.from({ length: hours }, (_, i) => fromHour + i)),
  )
}

/** Shortest decimal; `-0` is 0, and what is no number is empty. */
function writeFigure(value: number): string {
  return Number.isFinite(value) ? String(Math.round(value * perUnitKept) / perUnitKept + 0) : ''
}
