/**
 * What stands where the database shall be. The library does not say why it cannot open a file, so this is looked up
 * before. The file itself is never opened here: closing it again would drop the lock that this process may hold.
 */
import { constants, type Stats } from 'node:fs'
import { access, stat } from 'node:fs/promises'
import { dirname, resolve } from 'node:path'
import { StoreError } from './store-error.ts'

/** The full path, so that no name is taken for an address or for a database in memory. */
function fullPath(path: string): string {
  if (path !== '' && !path.includes('\0')) return resolve(path)
  throw new StoreError('store.badPath', {}, 'file: no name, expected a path')
}

/** A place where nothing stands yet, in a folder that may be written. */
export async function checkedNewFile(path: string): Promise<string> {
  const file = fullPath(path)
  if (await look(file))
    throw new StoreError('store.backupExists', { file }, `file: is there already, got ${file}`)
  await checkFolder(file)
  return file
}

/** A database file, or a place where one can be made. */
export async function checkedFile(path: string): Promise<string> {
  const file = fullPath(path)
  const found = await look(file)
  if (!found) {
    await checkFolder(file)
    return file
  }
  if (found.isDirectory()) throw new StoreError('store.isFolder', { file }, `file: is a folder, got ${file}`)
  if (!found.isFile() || cutShort(found))
    throw new StoreError('store.notADatabase', { file }, `file: no database, got ${file}`)
  await mayWrite(file, file)
  await mayWrite(dirname(file), file)
  return file
}

/** SQLite takes a file of one byte for an empty one and would write over it. No database is smaller than a page. */
const cutShort = (found: Stats): boolean => found.size > 0 && found.size < 512

async function checkFolder(file: string): Promise<void> {
  const folder = dirname(file)
  const found = await look(folder)
  if (!found?.isDirectory())
    throw new StoreError('store.folderMissing', { file, folder }, `file: no such folder, got ${folder}`)
  await mayWrite(folder, file)
}

/** Nothing when there is nothing; a place that may not even be looked at is refused. */
async function look(path: string): Promise<Stats | undefined> {
  try {
    return await stat(path)
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : ''
    if (code === 'ENOENT' || code === 'ENOTDIR') return undefined
    throw forbidden(path, error)
  }
}

async function mayWrite(path: string, file: string): Promise<void> {
  try {
    await access(path, constants.R_OK | constants.W_OK)
  } catch (error) {
    throw forbidden(file, error)
  }
}

const forbidden = (file: string, error: unknown): StoreError =>
  new StoreError('store.forbidden', { file }, `file: may not be read and written, got ${file}`, error)
