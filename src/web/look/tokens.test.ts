import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const css = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8')

type Tokens = Readonly<Record<string, string>>

/** Declarations of the first block that stands after `head`. */
function blockAfter(head: string): Tokens {
  const from = css.indexOf('{', css.indexOf(head) + head.length - 1)
  const body = css.slice(from + 1, css.indexOf('}', from))
  return Object.fromEntries(
    [...body.matchAll(/--([a-z0-9-]+): ([^;]+);/g)].map(([, name, value]) => [String(name), String(value)]),
  )
}

const day = blockAfter(':root {')
const nightOnly = blockAfter(':root[data-theme="night"] {')
const night = { ...day, ...nightOnly }

type Rgb = readonly [number, number, number]

const rgb = (hex: string): Rgb =>
  [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) as never as Rgb

/** Relative luminance. SOURCE: WCAG 2.2, definition of relative luminance. */
const luminance = (colour: Rgb): number => {
  const [r, g, b] = colour.map((value) => {
    const share = value / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  }) as never as Rgb
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

const ratio = (one: Rgb, other: Rgb): number => {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number]
  return (light + 0.05) / (dark + 0.05)
}

const over = (top: Rgb, under: Rgb, share: number): Rgb =>
  top.map((value, at) => value * share + (under[at] ?? 0) * (1 - share)) as never as Rgb

const surfaces = ['board', 'paper', 'raised', 'inset', 'stick', 'shade', 'sel']
const sheetSurfaces = ['paper', 'raised', 'inset']

const colour = (tokens: Tokens, name: string): Rgb => {
  const hex = tokens[name]
  if (hex === undefined || !/^#[0-9a-f]{6}$/.test(hex)) throw new Error(`token: ${name} is ${hex}`)
  return rgb(hex)
}

/** The least contrast of a token on several surfaces, rounded down to a tenth as the docs name it. */
const least = (tokens: Tokens, name: string, on: readonly string[]): number =>
  Math.floor(Math.min(...on.map((surface) => ratio(colour(tokens, name), colour(tokens, surface)))) * 10) / 10

type Pair = readonly [name: string, on: readonly string[], inDay: number, atNight: number, needed: number]

const pairs: readonly Pair[] = [
  ['ink', surfaces, 12.1, 11.0, 7],
  ['ink2', surfaces, 5.9, 6.5, 4.5],
  ['hair', surfaces, 3.5, 3.8, 3],
  ['onink', ['ink'], 15.6, 14.6, 7],
  ['act', sheetSurfaces, 8.4, 7.1, 7],
  ['go', sheetSurfaces, 3.0, 3.8, 3],
  ['fault', sheetSurfaces, 3.4, 3.4, 3],
  ['water', sheetSurfaces, 4.5, 5.7, 3],
  ['skin', sheetSurfaces, 4.8, 4.3, 3],
  ['mark', ['go'], 6.1, 6.1, 4.5],
  ['mark', ['fault'], 5.4, 5.4, 4.5],
  ['danger-on', ['danger'], 7.5, 7.5, 7],
  ['warning-on', ['warning'], 8.4, 8.4, 7],
  ['caution-on', ['caution'], 14.3, 14.3, 7],
  ['notice-on', ['notice'], 8.9, 8.9, 7],
]

describe('contrast', () => {
  it.each(pairs)('of %s on %s is what the docs name, and enough', (name, on, inDay, atNight, needed) => {
    expect(least(day, name, on)).toBe(inDay)
    expect(least(night, name, on)).toBe(atNight)
    expect(Math.min(inDay, atNight)).toBeGreaterThanOrEqual(needed)
  })

  it.each([
    ['day', day, 7],
    ['night', night, 3],
  ] as const)('of the hatch of risky hours on its tint is enough by %s', (_, tokens, needed) => {
    const tints = sheetSurfaces.map((name) => over(colour(tokens, 'risky'), colour(tokens, name), 0.32))
    const found = tints.map((tint) => ratio(colour(tokens, 'risky-hatch'), tint))
    expect(Math.min(...found)).toBeGreaterThanOrEqual(needed)
  })

  it('of text in the colour for links is enough on the board and on a tape too', () => {
    for (const tokens of [day, night])
      expect(least(tokens, 'act', ['board', 'stick'])).toBeGreaterThanOrEqual(4.5)
  })
})

describe('the tokens', () => {
  it('of a system that is dark are those of night', () => {
    expect(blockAfter('@media (prefers-color-scheme: dark) {\n  :root:not([data-theme]) {')).toEqual(
      nightOnly,
    )
  })

  it('of a system that forces its colours are all given', () => {
    const forced = blockAfter(':root[data-theme],\n  :root:not([data-theme]) {')
    expect(Object.keys(forced).sort()).toEqual(Object.keys(day).sort())
  })

  it('that styles use all exist', () => {
    const web = fileURLToPath(new URL('..', import.meta.url))
    const sources = readdirSync(web, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(css|tsx?)$/.test(file) && !file.endsWith('.test.ts'))
      .map((file) => readFileSync(join(web, file), 'utf8'))
    const found = (pattern: RegExp) => sources.flatMap((text) => [...text.matchAll(pattern)].map((m) => m[1]))
    const given = new Set([...found(/(--[a-z0-9-]+):/g), ...found(/setProperty\('(--[a-z0-9-]+)'/g)])
    expect(found(/var\((--[a-z0-9-]+)/g).filter((name) => !given.has(name))).toEqual([])
  })
})
