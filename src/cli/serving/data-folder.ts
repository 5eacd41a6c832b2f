/** The folder in which a server keeps everything: the database, and the key that signs the cookies. */
import { randomBytes } from 'node:crypto'
import { access, mkdir, readFile, writeFile } from 'node:fs/promises'
import { homedir } from 'node:os'
import { join, resolve } from 'node:path'
import { openSqliteStore, type SqliteStore, StoreError } from '#store'
import { CliFault } from '../fault.ts'
import { plainWords } from '../plain-words.ts'
import { asFault } from '../read-bytes.ts'

const databaseFile = 'hardstand.db'
const keyFile = 'session.key'
const keyBytes = 32

/** Where programs keep a person's data, by the XDG base directory specification. */
export function dataFolder(named: string | undefined): string {
  if (named !== undefined) return resolve(named)
  const base = process.env.XDG_DATA_HOME
  return join(base?.startsWith('/') ? base : join(homedir(), '.local', 'share'), 'hardstand')
}

export async function openData(folder: string): Promise<SqliteStore> {
  try {
    await mkdir(folder, { recursive: true, mode: 0o700 })
  } catch (error) {
    throw asFault(error, folder)
  }
  return openFile(folder)
}

/** Undefined when nothing was ever kept there. */
export async function openKeptData(folder: string): Promise<SqliteStore | undefined> {
  const there = await access(join(folder, databaseFile)).then(
    () => true,
    () => false,
  )
  return there ? openFile(folder) : undefined
}

async function openFile(folder: string): Promise<SqliteStore> {
  try {
    return await openSqliteStore({ path: join(folder, databaseFile) })
  } catch (error) {
    throw storeFault(error, folder)
  }
}

/** A fault of the store as a sentence; every other is handed on. */
export function storeFault(error: unknown, folder: string): unknown {
  if (!(error instanceof StoreError)) return error
  if (error.code === 'store.locked') return new CliFault([plainWords.sentence('cli.folderInUse', { folder })])
  return new CliFault([plainWords.sentence(error.code, error.data)])
}

/** Made once, so that those who signed in stay so when the server starts again. */
export async function sessionKey(folder: string): Promise<Uint8Array> {
  const path = join(folder, keyFile)
  try {
    await writeFile(path, randomBytes(keyBytes), { flag: 'wx', mode: 0o600 })
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw asFault(error, path)
  }
  return readFile(path)
}
