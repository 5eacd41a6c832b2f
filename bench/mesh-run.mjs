// One scan from file to figures, in a process of its own: read, points joined, edges matched, cut at a height, measured.
// Prints JSON: seconds of each stage, the figures, and the most memory that the process held.
//
//     node bench/mesh-run.mjs FILE [HEIGHT]

import { readFileSync } from 'node:fs'
import { levelPlane, planeSection, repairMesh, splitByPlane } from '#core/geometry'
import { readMesh } from '#intake'

const [file = '', height = '0'] = process.argv.slice(2)
const started = performance.now()
/** Of the clock, and of the processor: on a busy machine the latter tells more. */
/** @type {Record<string, number>} */
const seconds = {}
/** @type {Record<string, number>} */
const cpuSeconds = {}
let before = started
let cpuBefore = process.cpuUsage()

/** @param {string} stage */
function lap(stage) {
  const now = performance.now()
  seconds[stage] = (now - before) / 1000
  before = now
  const { user, system } = process.cpuUsage(cpuBefore)
  cpuSeconds[stage] = (user + system) / 1e6
  cpuBefore = process.cpuUsage()
}

const bytes = readFileSync(file)
lap('load')
const read = readMesh(bytes)
if (!read.ok) throw new Error(JSON.stringify(read.problems))
lap('read')
const { mesh, parts, found } = repairMesh(read.mesh, { tolerance: 0, distinct: read.distinct })
lap('connect')
const plane = levelPlane(Number(height))
const lines = planeSection(mesh, plane)
lap('section')
const { below, above } = splitByPlane(mesh, plane)
lap('measure')
seconds.whole = (before - started) / 1000
console.log(
  JSON.stringify({
    seconds,
    cpuSeconds,
    peakBytes: process.resourceUsage().maxRSS * 1024,
    triangles: mesh.triangles.length / 3,
    points: mesh.positions.length / 3,
    parts: parts.length,
    found,
    waterline: lines.map(({ length }) => length),
    below,
    above,
  }),
)
