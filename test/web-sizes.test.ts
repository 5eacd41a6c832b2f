// What a phone has to fetch: the first screen, the worker that plans, the typefaces, and all that is kept for the shed.
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'

const web = fileURLToPath(new URL('../dist/web/', import.meta.url))
const kB = 1000

/** Emitted, and not kept for use without a signal; each with its reason. */
const notKept: readonly { readonly file: RegExp; readonly reason: string }[] = [
  { file: /^sw\.js$/, reason: 'the browser keeps the worker itself' },
  { file: /^workbox-[\w-]+\.js$/, reason: 'part of the worker, which the browser keeps' },
  { file: /^assets\/sRGB[\w-]+\.icc$/, reason: 'a colour profile that no paper of ours asks for' },
]

const emitted: readonly string[] = readdirSync(web, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(web.length))

const read = (file: string): Buffer => readFileSync(join(web, file))
const gzipped = (files: readonly string[]): number =>
  files.reduce((sum, file) => sum + gzipSync(read(file)).length, 0)

/** The files of `index.html`, and all that they import before anything is drawn. */
function firstScreen(): readonly string[] {
  const html = read('index.html').toString()
  const named = [...html.matchAll(/(?:src|href)="\/(assets\/[^"]+\.(?:js|css))"/g)].map((match) => match[1]!)
  const found = new Set<string>()
  const follow = (file: string): void => {
    if (found.has(file)) return
    found.add(file)
    if (file.endsWith('.js')) for (const next of importsOf(file)) follow(next)
  }
  for (const file of named) follow(file)
  return [...found]
}

/** Static imports only: `from"./x.js"` and `import"./x.js"`, not `import("./x.js")`. */
const importsOf = (file: string): readonly string[] =>
  [
    ...read(file)
      .toString()
      .matchAll(/(?:from|import)\s*["'`]\.\/([\w-]+\.js)["'`]/g),
  ].map((match) => `assets/${match[1]}`)

const precached = (): ReadonlySet<string> =>
  new Set(
    [
      ...read('sw.js')
        .toString()
        .matchAll(/\{\s*"?url"?:\s*"([^"]+)"/g),
    ].map((match) => match[1]!),
  )

describe('the built web app', () => {
  it('shows its first screen for no more than 300 kB', () => {
    const files = firstScreen()
    expect(files.filter((file) => !existsSync(join(web, file)))).toEqual([])
    expect(files.length).toBeGreaterThan(2)
    expect(gzipped(files)).toBeLessThanOrEqual(300 * kB)
  })

  it('plans with a worker of no more than 200 kB', () => {
    const workers = emitted.filter((file) => /^assets\/plan-worker-[\w-]+\.js$/.test(file))
    expect(workers).toHaveLength(1)
    expect(gzipped(workers)).toBeLessThanOrEqual(200 * kB)
  })

  it('carries no text of the reference page', () => {
    const scripts = emitted.filter((file) => file.endsWith('.js')).map((file) => read(file).toString())
    const page = readFileSync(new URL('../docs/job-document.md', import.meta.url), 'utf8')
    for (const doc of ['File beside the job document.', 'What the place is called.']) {
      expect(page).toContain(doc)
      expect(scripts.filter((script) => script.includes(doc))).toEqual([])
    }
  })

  it('sets latin text with no more than 60 kB of typefaces', () => {
    const fonts = emitted.filter((file) => /-latin-(?!ext)[\w-]+\.woff2$/.test(file))
    expect(fonts.length).toBeGreaterThan(0)
    expect(fonts.reduce((sum, file) => sum + read(file).length, 0)).toBeLessThanOrEqual(60 * kB)
  })

  it('keeps no more than 5 MB for use without a signal', () => {
    const files = [...precached()]
    expect(files.length).toBeGreaterThan(10)
    expect(files.reduce((sum, file) => sum + read(file).length, 0)).toBeLessThanOrEqual(5000 * kB)
  })

  it('keeps every file that was emitted but for those with a reason', () => {
    const kept = precached()
    const left = emitted.filter((file) => !kept.has(file))
    expect(left.filter((file) => !notKept.some((one) => one.file.test(file)))).toEqual([])
    expect(notKept.filter(({ file }) => !left.some((name) => file.test(name)))).toEqual([])
    expect([...kept].filter((file) => !emitted.includes(file))).toEqual([])
  })
})
