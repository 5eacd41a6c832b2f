import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { beforeAll, describe, expect, it } from 'vitest'

const web = fileURLToPath(new URL('..', import.meta.url))

type Emitted = { readonly name: string; readonly bytes: Uint8Array }

/** The look alone, built as the page builds it. */
async function emitted(): Promise<readonly Emitted[]> {
  const built = await build({
    root: web,
    configFile: false,
    publicDir: false,
    logLevel: 'silent',
    build: { write: false, assetsInlineLimit: 0, rollupOptions: { input: join(web, 'look/index.css') } },
  })
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((one) =>
    'output' in one ? one.output : [],
  )
  return outputs.flatMap((file) =>
    file.type === 'asset' ? [{ name: file.fileName, bytes: Buffer.from(file.source) }] : [],
  )
}

let files: readonly Emitted[] = []
beforeAll(async () => {
  files = await emitted()
})

const sheet = (): string =>
  files
    .filter(({ name }) => name.endsWith('.css'))
    .map(({ bytes }) => Buffer.from(bytes).toString('utf8'))
    .join('\n')

type Face = {
  readonly family: string
  readonly file: string
  readonly range: string
  readonly weight: string
}

const faces = (): readonly Face[] =>
  [...sheet().matchAll(/@font-face\s*{([^}]*)}/g)].map(([, body = '']) => {
    const of = (pattern: RegExp): string => pattern.exec(body)?.[1] ?? ''
    return {
      family: of(/font-family:\s*"?([^";}]+)/),
      file: of(/url\(["']?([^"')]+)/),
      range: of(/unicode-range:\s*([^;}]+)/),
      weight: of(/font-weight:\s*([^;}]+)/),
    }
  })

const latin = (): readonly Face[] => faces().filter(({ range }) => /U\+0{0,4}-?(?:00)?FF/i.test(range))
const weighing = ({ file }: Face): number =>
  files.find(({ name }) => name.endsWith(file.split('/').at(-1) ?? '?'))?.bytes.length ?? Number.NaN

describe('the faces', () => {
  it('that every page loads weigh under 60 kB together', () => {
    expect(latin().map(({ family }) => family)).toEqual(['Text', 'Lettering'])
    const sum = latin().reduce((bytes, face) => bytes + weighing(face), 0)
    expect(sum).toBeGreaterThan(10_000)
    expect(sum).toBeLessThan(60_000)
  })

  it('are all emitted with the page, as woff2, and nothing of them is put into the style sheet', () => {
    expect(faces().length).toBeGreaterThanOrEqual(4)
    for (const face of faces()) expect([face.file, weighing(face) > 0]).toEqual([face.file, true])
    for (const { file } of faces()) expect(file).toMatch(/\.woff2$/)
    expect(sheet()).not.toContain('data:')
  })

  it('hold every weight that a style asks of them', () => {
    const asked = sources(/\.css$/).flatMap(({ text }) =>
      [...text.matchAll(/font(?:-weight)?:\s*(\d{3})\b/g)].map((found) => Number(found[1])),
    )
    const [from = 0, to = 0] = (faces()[0]?.weight ?? '').split(' ').map(Number)
    expect(asked.length).toBeGreaterThan(10)
    expect(asked.filter((weight) => weight < from || weight > to)).toEqual([])
  })
})

/** Styles and pages as they stand, without the tests beside them. */
function sources(kind: RegExp) {
  return readdirSync(web, { recursive: true, encoding: 'utf8' })
    .filter((file) => kind.test(file) && !file.includes('.test.'))
    .map((file) => ({ file, text: readFileSync(join(web, file), 'utf8') }))
}

describe('the page', () => {
  it('asks no other server for a style, a face, a script or a picture', () => {
    const outside = /(?:url\(|@import|\bsrc=|\bhref=)\s*["'{`]*\s*(?:https?:)?\/\/[a-z0-9]/i
    const asking = sources(/\.(?:css|html|svg|tsx?)$/).filter(({ text }) => outside.test(text))
    expect(outside.test('@import "//other.example/x.css"')).toBe(true)
    expect(asking.map(({ file }) => file)).toEqual([])
    expect(outside.test(sheet())).toBe(false)
  })
})
