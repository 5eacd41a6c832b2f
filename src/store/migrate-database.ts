/** Brings a database file to the newest version, or refuses it: another program's, or of a newer version. */
import type Database from 'libsql'
import { StoreError } from './store-error.ts'

/** `Hstd`: tells a file of ours from any other SQLite database. Stands in the header, together with the version. */
const ours = 0x48737464

type Steps = { readonly file: string; readonly migrations: readonly string[] }

/** Version of the file, once it is known to be ours and not newer than what is known here. */
export function checkVersion(library: Database.Database, { file, migrations }: Steps): number {
  const version = versionOf(library, file)
  if (version <= migrations.length) return version
  throw new StoreError(
    'store.newerVersion',
    { file, version, knownVersion: migrations.length },
    `database: of a newer version, got ${version}, expected at most ${migrations.length}`,
  )
}

/** Takes the steps that the file has not been through, each in a transaction of its own. */
export function migrateDatabase(library: Database.Database, steps: Steps): void {
  const version = checkVersion(library, steps)
  for (const [at, step] of steps.migrations.entries())
    if (at >= version) take(library, { step, version: at + 1 })
}

/** 0 for a file with nothing in it yet. */
function versionOf(library: Database.Database, file: string): number {
  const owner = headerNumber(library, 'application_id')
  const version = headerNumber(library, 'user_version')
  if (owner === ours) return version
  const [row] = library.prepare('SELECT count(*) AS many FROM sqlite_schema').all([])
  if (owner === 0 && version === 0 && Number(Object(row).many) === 0) return 0
  throw new StoreError('store.otherProgram', { file }, `database: of another program, got ${file}`)
}

const headerNumber = (library: Database.Database, name: 'application_id' | 'user_version'): number => {
  const [row] = library.prepare(`PRAGMA ${name}`).all([])
  return Number(Object(row)[name])
}

function take(
  library: Database.Database,
  { step, version }: { readonly step: string; readonly version: number },
): void {
  library.exec('BEGIN IMMEDIATE')
  try {
    library.exec(step)
    library.exec(`PRAGMA application_id = ${ours}; PRAGMA user_version = ${version}`)
    library.exec('COMMIT')
  } catch (error) {
    if (library.inTransaction) library.exec('ROLLBACK')
    throw error
  }
}
