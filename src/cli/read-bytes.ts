/** Bytes of a file or of standard input, at most so many: what is larger is refused before it fills the memory. */
import { open } from 'node:fs/promises'
import { CliFault } from './fault.ts'
import { plainWords } from './plain-words.ts'

/** A little over what any reader takes, so that the reader itself says what is too large. */
const MOST_BYTES = 64 * 1024 * 1024

export async function readBytes(path: string): Promise<Uint8Array> {
  if (path === '-') return readAll(process.stdin, 'standard input')
  try {
    const file = await open(path, 'r')
    try {
      const { size } = await file.stat()
      if (size > MOST_BYTES) throw tooLarge(path)
      return new Uint8Array(await file.readFile())
    } finally {
      await file.close()
    }
  } catch (error) {
    throw asFault(error, path)
  }
}

async function readAll(stream: AsyncIterable<unknown>, name: string): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  let size = 0
  for await (const chunk of stream) {
    const bytes = Buffer.isBuffer(chunk) ? chunk : Buffer.from(String(chunk))
    size += bytes.length
    if (size > MOST_BYTES) throw tooLarge(name)
    chunks.push(bytes)
  }
  return new Uint8Array(Buffer.concat(chunks))
}

const tooLarge = (file: string): CliFault =>
  new CliFault([plainWords.sentence('cli.fileTooLarge', { file, mostMegabytes: MOST_BYTES / 1024 / 1024 })])

const codes: Readonly<Record<string, string>> = {
  ENOENT: 'cli.fileMissing',
  EISDIR: 'cli.fileIsFolder',
  EACCES: 'cli.fileForbidden',
  ENOSPC: 'cli.diskFull',
  EROFS: 'cli.fileForbidden',
  EEXIST: 'cli.fileExists',
  ENOTDIR: 'cli.notAFolder',
}

/** Errors of the file system as sentences; anything else is ours and passes on. */
export function asFault(error: unknown, file: string): unknown {
  const code = error instanceof Error && 'code' in error ? codes[String(error.code)] : undefined
  return code ? new CliFault([plainWords.sentence(code, { file })]) : error
}
