/** A reading of the log in words: what was read, and what dew makes of it. */
import type { RawCells } from '#job'
import type { JobView } from './job-view.ts'
import { airKeys, readAir } from './read-air.ts'

const codes = {
  air: 'todayscreen.readAir',
  humidity: 'todayscreen.readHumidity',
  skin: 'todayscreen.readSkin',
} as const

/** `air 14 °C, humidity 65 %, skin 12 °C, dew 7.6 °C, margin 4.4 K`; empty where nothing was read. */
export function sayReading({ words, system }: Pick<JobView, 'words' | 'system'>, cells: RawCells): string {
  const written = (key: string): string => String(cells[key] ?? '').trim()
  const texts = { air: written('air'), humidity: written('humidity'), skin: written('skin') }
  const { dewC, marginK } = readAir(texts, { system })
  return [
    ...airKeys.flatMap((key) =>
      texts[key] === '' ? [] : [words.sentence(codes[key], { text: texts[key] })],
    ),
    ...(dewC === undefined ? [] : [words.sentence('todayscreen.readDew', { dewC })]),
    ...(marginK === undefined ? [] : [words.sentence('todayscreen.readMargin', { marginK })]),
  ].join(', ')
}
