/** A copy of the whole database in a new file, whole or not at all, while the store goes on working. */
import { link, open, rename, rm } from 'node:fs/promises'
import { dirname } from 'node:path'
import type Database from 'libsql'
import { checkedNewFile } from './check-file.ts'
import { sqliteFault, telling } from './sqlite-fault.ts'

/**
 * Writes beside the wanted name first and gives the name last, so that a copy that was cut short never bears it. What
 * a killed process left unfinished is replaced.
 */
export async function backUp(library: Database.Database, path: string): Promise<void> {
  const file = await checkedNewFile(path)
  const unfinished = `${file}-unfinished`
  try {
    await rm(unfinished, { force: true })
    telling(file, () => library.prepare('VACUUM INTO ?').run([unfinished]))
    await toDisk(unfinished)
    await giveName(unfinished, file)
    await namesToDisk(dirname(file))
  } catch (error) {
    throw sqliteFault(file, error)
  } finally {
    await rm(unfinished, { force: true }).catch(leftBehind)
  }
}

/** The next backup of that name replaces it; what went wrong before is what counts. */
const leftBehind = (): undefined => undefined

/** A second name never takes the place of a file that turned up meanwhile; sticks and cards know no second names. */
async function giveName(unfinished: string, file: string): Promise<void> {
  try {
    await link(unfinished, file)
  } catch {
    await rename(unfinished, await checkedNewFile(file))
  }
}

async function toDisk(path: string): Promise<void> {
  const handle = await open(path)
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}

/** Some systems do not let a folder be opened; they write names by themselves. */
async function namesToDisk(folder: string): Promise<void> {
  try {
    await toDisk(folder)
  } catch (error) {
    if (process.platform !== 'win32') throw error
  }
}
