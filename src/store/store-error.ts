/** The error of the store: what was asked of it cannot be kept or read. */

/**
 * What was given: `store.badName` `kind`, `length`, `mostLength`; `store.badBytes` `kind`; `store.badCells` `job`,
 * `id`; `store.badCursor` `text`; `store.tooManyEntries` `count`, `mostCount`; `store.updateTooLarge` `document` and
 * `store.weatherTooLarge` `hash`, both with `megabytes`, `mostMegabytes`; `store.documentTooLarge` `document`,
 * `megabytes`, `mostMegabytes`; `store.entryTooLarge` `job`, `id`, `kilobytes`, `mostKilobytes`;
 * `store.weatherDiffers` `hash`; `store.badValue` `kind`; `store.mergeFailed` `document`, `text`.
 *
 * The file: `store.badPath`; `store.folderMissing` `file`, `folder`; `store.isFolder` `store.notADatabase` `store.otherProgram` `store.forbidden`
 * `store.locked` `store.backupExists` `file`; `store.newerVersion` `file`, `version`, `knownVersion`;
 * `store.notDurable` `file`, `text`.
 *
 * The disk: `store.diskFull` `file`; `store.diskFailed` `store.damaged` `store.failed` `file`, `text`;
 * `store.entryDamaged` `job`, `id`, `sequence`; `store.nameDamaged` `kind`, `name`. The hour: `store.closed`.
 */
export type StoreErrorData = Readonly<Record<string, string | number>>

export type StoreErrorCode =
  | 'store.badName'
  | 'store.badBytes'
  | 'store.badCells'
  | 'store.badCursor'
  | 'store.badValue'
  | 'store.tooManyEntries'
  | 'store.updateTooLarge'
  | 'store.weatherTooLarge'
  | 'store.documentTooLarge'
  | 'store.entryTooLarge'
  | 'store.weatherDiffers'
  | 'store.mergeFailed'
  | 'store.badPath'
  | 'store.folderMissing'
  | 'store.isFolder'
  | 'store.notADatabase'
  | 'store.otherProgram'
  | 'store.newerVersion'
  | 'store.forbidden'
  | 'store.locked'
  | 'store.backupExists'
  | 'store.notDurable'
  | 'store.diskFull'
  | 'store.diskFailed'
  | 'store.damaged'
  | 'store.failed'
  | 'store.entryDamaged'
  | 'store.nameDamaged'
  | 'store.closed'

export class StoreError extends Error {
  readonly code: StoreErrorCode
  readonly data: StoreErrorData

  /** `message` reads `noun: problem, got VALUE, expected ...`; `cause` is what the library said, if it spoke. */
  constructor(code: StoreErrorCode, data: StoreErrorData, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause })
    this.name = 'StoreError'
    this.code = code
    this.data = data
  }
}
