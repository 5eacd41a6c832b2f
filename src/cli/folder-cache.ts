/** Answers of weather services kept in a folder, so that the next run does not ask again. */
import { createHash, randomUUID } from 'node:crypto'
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises'
import { homedir } from 'node:os'
import { join } from 'node:path'
import type { AnswerCache, KeptAnswer } from '#feeds'

/** Where programs keep what can be had again, by the XDG base directory specification. */
export function cacheFolder(): string {
  const base = process.env.XDG_CACHE_HOME
  return join(base?.startsWith('/') ? base : join(homedir(), '.cache'), 'hardstand', 'weather')
}

const MOST_KEPT = 50

/** A cache that cannot be read or written is as good as none: it never stands in the way of an answer. */
export function folderCache(folder: string): AnswerCache {
  const fileOf = (url: string) => join(folder, `${createHash('sha256').update(url).digest('hex')}.json`)
  return {
    get: async (url) => {
      try {
        return answerIn(await readFile(fileOf(url), 'utf8'))
      } catch {
        return undefined
      }
    },
    put: async (url, { bytes, ...rest }) => {
      const file = fileOf(url)
      const part = `${file}.${randomUUID()}`
      try {
        await mkdir(folder, { recursive: true, mode: 0o700 })
        await writeFile(part, JSON.stringify({ ...rest, base64: Buffer.from(bytes).toString('base64') }))
        await rename(part, file)
        await dropOldest(folder)
      } catch {
        await rm(part, { force: true }).catch(() => undefined)
      }
    },
  }
}

/** Whatever stands in a file of the folder, it is an answer or nothing. */
function answerIn(text: string): KeptAnswer | undefined {
  const { base64, freshUntilMs, fetchedAtMs, lastModified } = JSON.parse(text) as Readonly<
    Record<string, unknown>
  >
  if (typeof base64 !== 'string' || typeof freshUntilMs !== 'number' || typeof fetchedAtMs !== 'number')
    return undefined
  return {
    bytes: new Uint8Array(Buffer.from(base64, 'base64')),
    freshUntilMs,
    fetchedAtMs,
    ...(typeof lastModified === 'string' ? { lastModified } : {}),
  }
}

async function dropOldest(folder: string): Promise<void> {
  const files = (await readdir(folder))
    .filter((name) => name.endsWith('.json'))
    .map((name) => join(folder, name))
  if (files.length <= MOST_KEPT) return
  const dated = await Promise.all(files.map(async (file) => ({ file, atMs: (await stat(file)).mtimeMs })))
  dated.sort((a, b) => b.atMs - a.atMs)
  await Promise.all(dated.slice(MOST_KEPT).map(({ file }) => rm(file, { force: true })))
}
