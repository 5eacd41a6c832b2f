/** Files far larger than any weather, and garbage as large as is read at all: the program holds its memory and says why. */
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { closeSync, ftruncateSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { mostWeatherBytes } from '#intake'
import { garbage } from '../../test/support/weather-garbage.mjs'

const main = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'hardstand-flood-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const mebi = 1024 * 1024
const flood = 200 * mebi
/** The program itself holds 120 MiB, of a flood it takes 64 MiB, and a reader its text and rows: measured 175 to 225 MiB. */
const mostUnreadBytes = 180 * mebi
const mostReadBytes = 300 * mebi

/** Tells on a channel of its own how much memory the process ever held. */
const watch = `data:text/javascript,${encodeURIComponent(
  'import fs from "node:fs"; process.on("exit", () => fs.writeSync(3, String(process.resourceUsage().maxRSS)))',
)}`

/** `hardstand weather`, with a small heap; resolves with its exit code, what it says, and the most memory it held. */
async function weather(argument: string, input?: Iterable<Uint8Array>) {
  const child = spawn(
    process.execPath,
    ['--max-old-space-size=256', '--import', watch, main, 'weather', argument],
    { stdio: ['pipe', 'ignore', 'pipe', 'pipe'] },
  )
  const said: Record<'err' | 'peak', string> = { err: '', peak: '' }
  child.stdio[2]!.on('data', (chunk: Buffer) => {
    said.err += chunk
  })
  child.stdio[3]!.on('data', (chunk: Buffer) => {
    said.peak += chunk
  })
  // It goes away in the middle of a flood.
  child.stdin!.on('error', () => undefined)
  Readable.from(input ?? []).pipe(child.stdin!)
  const [code] = (await once(child, 'close')) as [number | null]
  return { code, err: said.err, peakBytes: Number(said.peak) * 1024 }
}

/** One megabyte again and again, made once. */
function* floodOf(piece: Uint8Array): Generator<Uint8Array> {
  for (let sent = 0; sent < flood; sent += piece.length) yield piece
}

/** Of a flood nothing is read, so two kinds say it all; one kind a reader: our own form, JSON, EPW, and other tables. */
const floods = ['noise', 'table rows']
const read = ['letters', 'brackets', 'station rows', 'table rows', 'logger rows']

describe('a flood of 200 MB', () => {
  it.each(floods)(
    'of %s is refused before it fills the memory',
    async (kind) => {
      const { code, err, peakBytes } = await weather('-', floodOf(garbage[kind]!(mebi)))
      expect(err).toMatch(/^standard input .*64.MB/)
      expect(code).toBe(1)
      expect(peakBytes).toBeLessThan(mostReadBytes)
    },
    60_000,
  )

  it('in a file is refused unread', async () => {
    const path = join(folder, 'flood.csv')
    const file = openSync(path, 'w')
    writeSync(file, 'time,airC,humidityPct\n2027-04-01T00:00Z,5,80\n')
    // Nothing is written for the rest.
    ftruncateSync(file, flood)
    closeSync(file)
    const { code, err, peakBytes } = await weather(path)
    expect(err).toMatch(/flood\.csv .*64.MB/)
    expect(code).toBe(1)
    expect(peakBytes).toBeLessThan(mostUnreadBytes)
  }, 60_000)
})

it.each(read)(
  '%s as large as the largest weather is refused by the reader it is for',
  async (kind) => {
    const { code, err, peakBytes } = await weather('-', [garbage[kind]!(mostWeatherBytes)])
    expect(code).toBe(1)
    expect(err).toMatch(/^-/)
    expect(err).not.toMatch(/\n\s+at |heap/)
    expect(peakBytes).toBeLessThan(mostReadBytes)
  },
  60_000,
)
