// How long a scan of two million triangles takes from file to figures, against a tool in C that reads, connects and
// measures the same file; and how soon files are turned down that only pretend to be scans. Whole processes, one after
// the other in rounds; figures kept are ratios. Without the tool its lines are left out, by name.
//
//     npm run build && node bench/mesh.mjs [--gate] [--json] [--rounds N] [--triangles N] [--garbage]

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parabolicHull, stlBinary } from '../test/support/hull-meshes.mjs'
import { garbage } from '../test/support/mesh-garbage.mjs'
import { hullOfScan, measuredScan } from '../test/support/noisy-hull.mjs'
import { median } from './statistics.mjs'

/** The yardstick, as Debian packages it, and what it is asked for: volume too, and everything it does unasked. */
const tool = 'admesh'
const yardsticks = { measure: ['--exact', '--normal-directions', '--normal-values'], all: [] }
/** Ratio to the tool's `measure`, seconds, bytes; seconds and bytes of one file of garbage. */
const most = { ratio: 1.5, seconds: 3, peakBytes: 1.5e9, garbageSeconds: 2, garbageBytes: 2e9 }
/** Scans, and how far off their area and waterline may be. */
const full = { along: 1000, up: 60, upAbove: 40, seed: 20270412 }
const noises = [
  { name: '3 mm', scan: { ...full, deviation: 0.003, scaleError: 0 }, area: 0.01, waterline: 0.002 },
  {
    name: '10 mm, 1 %',
    scan: { ...full, deviation: 0.01, scaleError: 0.01 },
    area: 0.02,
    waterline: Infinity,
  },
]
const garbageSize = 200_000_000

const percent = (/** @type {number} */ share) => `${(100 * share).toFixed(3)} %`

/** @param {string} name @param {number} otherwise */
function option(name, otherwise) {
  const at = process.argv.indexOf(name)
  return at === -1 ? otherwise : Number(process.argv[at + 1])
}

/** @param {string} command @param {readonly string[]} args */
function timed(command, args) {
  const start = performance.now()
  const { status, stdout, error } = spawnSync(command, args, { encoding: 'utf8', maxBuffer: 1 << 26 })
  const seconds = (performance.now() - start) / 1000
  if (error !== undefined || status !== 0)
    throw new Error(`bench: ${command} did not run, got ${error ?? status}`)
  return { seconds, stdout }
}

const hasTool = spawnSync(tool, ['--version']).status === 0
const folder = mkdtempSync(join(tmpdir(), 'hardstand-mesh-'))
try {
  process.exitCode = run() ? 0 : 1
} finally {
  rmSync(folder, { recursive: true })
}

function run() {
  const result = {
    scan: scan(),
    garbage: process.argv.includes('--garbage') ? refusals() : [],
    noise: process.argv.includes('--noise') ? noisyScans() : [],
  }
  console.log(process.argv.includes('--json') ? JSON.stringify(result, null, 2) : lines(result).join('\n'))
  const faults = faultsOf(result)
  for (const fault of faults) console.error(`bench: ${fault}`)
  return !process.argv.includes('--gate') || faults.length === 0
}

function scan() {
  const file = join(folder, 'hull.stl')
  const wide = Math.round(Math.sqrt(option('--triangles', 2_000_000) / 2))
  const steps = { along: wide, up: Math.round(wide * 0.25), upAbove: Math.round(wide * 0.25) }
  writeFileSync(file, stlBinary(parabolicHull({ length: 7.5, topsides: 0.5, joined: true, ...steps })))
  /** @type {Record<string, number[]>} */
  const seconds = {
    ours: [],
    ...Object.fromEntries(Object.keys(hasTool ? yardsticks : {}).map((name) => [name, []])),
  }
  let figures = { peakBytes: 0 }
  for (let round = 0; round < option('--rounds', 7); round += 1) {
    const ours = timed(process.execPath, [join(import.meta.dirname, 'mesh-run.mjs'), file])
    figures = JSON.parse(ours.stdout)
    seconds.ours?.push(ours.seconds)
    for (const [name, flags] of Object.entries(hasTool ? yardsticks : {}))
      seconds[name]?.push(timed(tool, [...flags, file]).seconds)
  }
  const ratioTo = (/** @type {string} */ name) =>
    median((seconds[name] ?? []).map((value, round) => (seconds.ours?.[round] ?? 0) / value))
  return {
    ...figures,
    medianSeconds: Object.fromEntries(
      Object.entries(seconds).map(([name, values]) => [name, median(values)]),
    ),
    ratios: hasTool
      ? Object.fromEntries(Object.keys(yardsticks).map((name) => [name, ratioTo(name)]))
      : undefined,
  }
}

function noisyScans() {
  return noises.map(({ name, scan: given, ...allowed }) => {
    const start = performance.now()
    const measured = measuredScan(given)
    const seconds = (performance.now() - start) / 1000
    return { name, ...measured, hull: hullOfScan(given), seconds, allowed }
  })
}

function refusals() {
  return Object.keys(garbage).map((kind) => {
    const { stdout } = timed(process.execPath, [
      join(import.meta.dirname, 'mesh-refusal.mjs'),
      kind,
      String(garbageSize),
    ])
    return JSON.parse(stdout)
  })
}

/** @param {ReturnType<typeof scan>} scanned */
function scanLines({ medianSeconds, ratios, peakBytes, ...rest }) {
  const { seconds } = /** @type {{ seconds?: Record<string, number> }} */ (rest)
  return [
    `from file to figures   ${medianSeconds.ours?.toFixed(2)} s, at most ${(peakBytes / 1e6).toFixed(0)} MB held`,
    `stages of the last run ${JSON.stringify(seconds)}`,
    ...(ratios === undefined
      ? [`${tool} is not installed: left out`]
      : Object.entries(ratios).map(
          ([name, ratio]) =>
            `${`to ${tool}, ${name}`.padEnd(22)} ${ratio.toFixed(2)} (${medianSeconds[name]?.toFixed(2)} s)`,
        )),
  ]
}

/** @typedef {{ scan: ReturnType<typeof scan>, garbage: any[], noise: ReturnType<typeof noisyScans> }} Result */

/** @param {Result} result */
function lines({ scan: scanned, garbage: refused, noise }) {
  return [
    ...scanLines(scanned),
    ...noise.map(
      ({ name, triangles, rounds, takenOffShare, areaError, waterlineError, hull, seconds }) =>
        `noise of ${name}: ${triangles} triangles, ${rounds} rounds, ${percent(takenOffShare)} of the area taken off, ` +
        `area ${percent(areaError)}, waterline ${percent(waterlineError)} off, ${seconds.toFixed(1)} s; ` +
        `hull through its stations: area ${percent(hull.areaError)}, waterline ${percent(hull.waterlineError)} off`,
    ),
    ...refused.map(
      ({ kind, code, seconds, peakBytes }) =>
        `${kind.padEnd(16)} ${seconds.toFixed(2)} s  ${(peakBytes / 1e6).toFixed(0).padStart(5)} MB  ${code}`,
    ),
  ]
}

/** @param {Result} result */
function faultsOf({ scan: { medianSeconds, ratios, peakBytes }, garbage: refused, noise }) {
  const ours = medianSeconds.ours ?? 0
  return [
    ...(ratios !== undefined && (ratios.measure ?? 0) > most.ratio
      ? [`${ratios.measure} times ${tool}`]
      : []),
    ...(ours > most.seconds ? [`${ours} s from file to figures`] : []),
    ...(peakBytes > most.peakBytes ? [`${peakBytes} bytes held`] : []),
    ...noise
      .filter(
        ({ areaError, waterlineError, allowed }) =>
          Math.abs(areaError) > allowed.area || Math.abs(waterlineError) > allowed.waterline,
      )
      .map(({ name, areaError, waterlineError }) => `noise of ${name}: ${areaError}, ${waterlineError} off`),
    ...noise
      .filter(
        ({ hull, allowed }) =>
          Math.abs(hull.areaError) > allowed.area || Math.abs(hull.waterlineError) > allowed.waterline,
      )
      .map(({ name, hull }) => `hull from noise of ${name}: ${hull.areaError}, ${hull.waterlineError} off`),
    ...refused
      .filter(
        (one) =>
          one.seconds > most.garbageSeconds || one.peakBytes > most.garbageBytes || one.code === 'read',
      )
      .map((one) => `${one.kind} took ${one.seconds} s and ${one.peakBytes} bytes: ${one.code}`),
  ]
}
