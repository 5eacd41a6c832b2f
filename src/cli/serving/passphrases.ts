/** Passphrases of a server, from files that nobody else may read, else from the environment. */
import { open } from 'node:fs/promises'
import type { Passphrases } from '#server'
import { CliFault } from '../fault.ts'
import { plainWords } from '../plain-words.ts'
import { asFault } from '../read-bytes.ts'

/** A passphrase is a line; a file of another kind was named by mistake. */
const mostBytes = 1024

export type PassphraseFiles = {
  readonly all: string | undefined
  readonly work: string | undefined
}

/** An empty variable is none: it is how a set one is taken back. */
export async function passphrases(
  { all: allFile, work: workFile }: PassphraseFiles,
  environment: NodeJS.ProcessEnv,
): Promise<Passphrases> {
  const all = allFile === undefined ? environment.HARDSTAND_PASSPHRASE : await fromFile(allFile)
  const work = workFile === undefined ? environment.HARDSTAND_PASSPHRASE_WORK : await fromFile(workFile)
  return { ...(all ? { all } : {}), ...(work ? { work } : {}) }
}

/** The first line of a file that is its owner's alone. */
async function fromFile(path: string): Promise<string> {
  const handle = await open(path).catch((error: unknown) => {
    throw asFault(error, path)
  })
  try {
    const { mode, size } = await handle.stat()
    // Of the open file, so that it cannot be another one by the time it is read. There are no such bits on Windows.
    if (process.platform !== 'win32' && (mode & 0o077) !== 0) throw fault('cli.passphraseFileOpen', path)
    if (size > mostBytes) throw fault('cli.passphraseFileLong', path)
    const [line = ''] = (await handle.readFile('utf8')).split(/\r?\n/)
    if (line === '') throw fault('cli.passphraseFileEmpty', path)
    return line
  } finally {
    await handle.close()
  }
}

const fault = (code: string, file: string): CliFault => new CliFault([plainWords.sentence(code, { file })])
