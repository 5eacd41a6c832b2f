// How long a typical year takes to read, as a ratio to a fixed loop of arithmetic and to plain decoding in the same run;
// and how soon, and in how much memory, files are turned down that only pretend to be weather.
//
//     npm run build && node bench/weather.mjs [--gate] [--json] [--rounds N]

import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { readWeather } from '#intake'
import { madeEpw } from '../test/support/made-epw.mjs'
import { garbage } from '../test/support/weather-garbage.mjs'
import { measurePair, table } from './harness.mjs'

/**
 * Most that a year may take in calibration loops: a loop is about 3 ms where a year takes 55 ms. Refusals: what is
 * over the limit of size is not looked at; what is just under it is read to the end at most.
 */
const most = { loops: 30, seconds: { over: 0.1, under: 2 }, peakBytes: { over: 400e6, under: 400e6 } }
const sizes = { over: 200_000_000, under: 19_999_000 }

const gate = process.argv.includes('--gate')
const roundsAt = process.argv.indexOf('--rounds')
const rounds = roundsAt === -1 ? 15 : Number(process.argv[roundsAt + 1])

const bytes = new TextEncoder().encode(madeEpw())
const read = () => {
  const result = readWeather(bytes)
  if (!result.ok || result.series.hours !== 8760) throw new Error('bench: the year was not read')
  return result
}
const year = await measurePair(
  {
    name: 'typical year',
    a: { label: 'readWeather', run: read },
    b: {
      label: 'decode and split',
      run: () =>
        new TextDecoder()
          .decode(bytes)
          .split('\n')
          .map((row) => row.split(',')),
    },
  },
  { rounds },
)

const refusals = Object.entries(sizes).flatMap(([size, count]) =>
  Object.keys(garbage).map((kind) => {
    const { stdout, status, stderr } = spawnSync(
      process.execPath,
      [join(import.meta.dirname, 'weather-refusal.mjs'), kind, String(count)],
      { encoding: 'utf8' },
    )
    if (status !== 0)
      throw new Error(`bench: ${kind} of ${count} bytes was not refused: ${stderr.slice(-500)}`)
    return { size, ...JSON.parse(stdout) }
  }),
)

const faults = [
  ...(year.a.calibrations > most.loops
    ? [`a typical year took ${year.a.calibrations.toFixed(1)} loops`]
    : []),
  ...refusals
    .filter(
      ({ size, code, seconds, peakBytes }) =>
        code === 'read' ||
        seconds > most.seconds[/** @type {'over' | 'under'} */ (size)] ||
        peakBytes > most.peakBytes[/** @type {'over' | 'under'} */ (size)],
    )
    .map(
      ({ size, kind, code, seconds, peakBytes }) =>
        `${kind}, ${size}: ${seconds} s, ${peakBytes} bytes, ${code}`,
    ),
]
if (process.argv.includes('--json')) console.log(JSON.stringify({ year, refusals }, null, 2))
else {
  console.log(table([year]))
  for (const { size, kind, code, seconds, peakBytes } of refusals)
    console.log(
      `${kind.padEnd(14)} ${(sizes[/** @type {'over' | 'under'} */ (size)] / 1e6).toFixed(0).padStart(4)} MB  ${seconds.toFixed(3)} s  ${(peakBytes / 1e6).toFixed(0).padStart(5)} MB  ${code}`,
    )
}
for (const fault of faults) console.error(`bench: ${fault}`)
if (gate && faults.length > 0) process.exitCode = 1
