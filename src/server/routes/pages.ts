/** The bundled pages: files of one folder and nothing beside it, with their types and how long a browser keeps them. */
import { createHash } from 'node:crypto'
import { readFile, realpath } from 'node:fs/promises'
import { extname, join, sep } from 'node:path'
import { refuse } from '../http/refusal.ts'

export type Pages = { readonly give: (request: Request) => Promise<Response> }

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.yaml': 'text/yaml; charset=utf-8',
}

/** The bundler writes a hash of the content into these names. */
const hashed = /^\/assets\/.*-[\w-]{8,}\.[a-z0-9]+$/

const start = '/index.html'

/** An address without a dot is a screen of the one page; every other is a file. */
export const createPages = (folder: string): Pages => ({
  give: async (request) => {
    const path = pathOf(new URL(request.url).pathname)
    const isScreen = !path.slice(path.lastIndexOf('/')).includes('.')
    const file = isScreen ? start : path
    const bytes = await read(folder, file)
    if (bytes === undefined) return refuse(404, file === start ? 'server.pagesMissing' : 'server.notFound')
    const tag = `"${createHash('sha256').update(bytes).digest('base64url')}"`
    const headers = {
      'Content-Type': types[extname(file)] ?? 'application/octet-stream',
      'Cache-Control': hashed.test(file) ? 'public, max-age=31536000, immutable' : 'no-cache',
      ETag: tag,
    }
    if (request.headers.get('if-none-match') === tag) return new Response(null, { status: 304, headers })
    return new Response(bytes, { headers })
  },
})

/** Every step of a path is a plain name: none is hidden, leads up, or means something else to a file system. */
function pathOf(path: string): string {
  if (path === '/') return start
  const steps = path.slice(1).replace(/\/$/, '').split('/')
  const plain = steps.every((step) => /^[\w@][\w@.+~-]*$/.test(step) && step.length <= 200)
  return plain ? `/${steps.join('/')}` : refuse(404, 'server.notFound')
}

async function read(folder: string, file: string): Promise<Buffer<ArrayBuffer> | undefined> {
  try {
    const root = await realpath(folder)
    const target = await realpath(join(root, file))
    // A link in the folder does not lead out of it.
    return target.startsWith(root + sep) ? await readFile(target) : undefined
  } catch {
    return undefined
  }
}
