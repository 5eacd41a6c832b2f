/** Bodies of requests, counted while they stream in: what a header promises is believed only when it is too much. */
import { refuse } from './refusal.ts'

const type = 'application/json'

/** The bytes of a JSON body. Other types are refused, which keeps forms of other origins out: a form cannot send it. */
async function readBody(request: Request, mostBytes: number): Promise<Uint8Array> {
  const { headers } = request
  const given = (headers.get('content-type') ?? '').split(';')[0]?.trim().toLowerCase()
  const encoding = headers.get('content-encoding') ?? 'identity'
  if (given !== type || encoding !== 'identity') refuse(415, 'server.typeNotTaken', { type })
  if (Number(headers.get('content-length') ?? 0) > mostBytes) tooLarge(mostBytes)
  const chunks: Uint8Array[] = []
  let bytes = 0
  if (request.body) {
    for await (const chunk of request.body as unknown as AsyncIterable<Uint8Array>) {
      bytes += chunk.length
      if (bytes > mostBytes) tooLarge(mostBytes)
      chunks.push(chunk)
    }
  }
  return new Uint8Array(Buffer.concat(chunks))
}

const tooLarge = (mostBytes: number): never =>
  refuse(413, 'server.bodyTooLarge', { mostKilobytes: Math.floor(mostBytes / 1024) }, { Connection: 'close' })

/** A JSON body; whatever it is, it is data. */
export async function readJson(request: Request, mostBytes: number): Promise<unknown> {
  const bytes = await readBody(request, mostBytes)
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return refuse(400, 'server.jsonNotRead')
  }
}

/** A map, as against a list, a text or nothing. */
export const isMap = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
