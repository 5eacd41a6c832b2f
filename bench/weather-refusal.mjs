// One file that only pretends to be weather, read in a process of its own. Prints JSON: how long it worked on the answer,
// which it was, and the most memory that the process held, the file itself counted.
//
//     node bench/weather-refusal.mjs KIND BYTES

import { readWeather } from '#intake'
import { garbage } from '../test/support/weather-garbage.mjs'

const [kind = '', size = '0'] = process.argv.slice(2)
const bytes = garbage[kind]?.(Number(size)) ?? new Uint8Array(0)
const before = process.cpuUsage()
const read = readWeather(bytes)
const { user, system } = process.cpuUsage(before)
const seconds = (user + system) / 1e6
const code = read.ok ? 'read' : read.problems[0]?.code
console.log(JSON.stringify({ kind, code, seconds, peakBytes: process.resourceUsage().maxRSS * 1024 }))
