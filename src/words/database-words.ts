/** Sentences about what is kept: what the database refuses, and what is found when it is re-read. */

const mostMegabytes = 'it is {megabytes, number} MB, and at most {mostMegabytes, number} MB are taken.'

export const databaseWords: Readonly<Record<string, string>> = {
  'store.badName':
    'The name of {kind, select, document {a document} job {a job} entry {a log entry} other {a weather file}} cannot be kept. Use 1 to {mostLength} whole characters.',
  'store.badBytes': 'What was to be kept holds no bytes ({kind}). Nothing was changed.',
  'store.badCells': 'The log entry {id} of job {job} holds something else than texts. It was not taken.',
  'store.badCursor':
    'The log cannot be read from there ({text}). Ask from 0 or from an entry that was read before.',
  'store.badValue': 'A value cannot be kept ({kind}). Nothing was changed.',
  'store.tooManyEntries':
    'These are {count, plural, one {# log entry} other {# log entries}} at once, and at most {mostCount} are taken. Send them in parts.',
  'store.updateTooLarge': `The change to {document} is too large to be kept: ${mostMegabytes}`,
  'store.weatherTooLarge': `The weather is too large to be kept: ${mostMegabytes}`,
  'store.documentTooLarge': `The document {document} has become too large to be tidied: ${mostMegabytes}`,
  'store.entryTooLarge':
    'The log entry {id} of job {job} is too large: it is {kilobytes, number} kB, and at most {mostKilobytes, number} kB are taken. Shorten its text.',
  'store.weatherDiffers':
    'Other weather is kept already under the name {hash}. It is left as it is, since plans were made with it.',
  'store.mergeFailed':
    'The changes to {document} could not be put together ({text}). They are kept one by one.',
  'store.badPath': 'No name was given for the database file. Name one.',
  'store.folderMissing': 'There is no folder {folder} for the database file. Make the folder first.',
  'store.isFolder': '{file} is a folder, not a database file. Name a file in it.',
  'store.notADatabase': '{file} is not a database. Nothing in it was changed; name another file.',
  'store.otherProgram':
    '{file} is the database of another program. Nothing in it was changed; name another file.',
  'store.newerVersion':
    '{file} was written by a newer version of Hardstand (database version {version}, known here up to {knownVersion}). Start the newer version.',
  'store.forbidden':
    '{file} may not be read and written here. Check the permissions of the file and of its folder.',
  'store.locked': '{file} is in use by another process. Only one can have it: stop the other one first.',
  'store.backupExists': 'There is a file {file} already. A backup is never written over one; name another.',
  'store.notDurable':
    '{file} lies where writes cannot be made safe ({text}). Put the database on a disk of this machine.',
  'store.diskFull':
    'The disk that holds {file} is full. The last change was not kept; make room and try again.',
  'store.diskFailed':
    'The disk that holds {file} failed ({text}). The last change was not kept; check the disk and make a backup.',
  'store.damaged':
    'The database {file} is damaged ({text}). Keep a copy of it as it is, and go back to the last backup.',
  'store.failed': 'The database {file} refused ({text}). The last change was not kept.',
  'store.entryDamaged':
    'The log entry {id} of job {job}, in place {sequence}, cannot be read any more. The last backup may still hold it.',
  'store.nameDamaged':
    'The name {name} of {kind, select, document {a document} job {a job} other {a weather file}} is damaged, so the list that it stands in cannot be read. Keep a copy of the database as it is, and go back to the last backup.',
  'store.closed': 'The database is being closed, so nothing more is taken.',
  'store.documentDamaged':
    'The document {document} cannot be read any more ({text}). The last backup may still hold it.',
  'store.weatherDamaged': 'The weather {hash} cannot be read any more ({text}). Read its file in again.',
  'store.fileDamaged':
    'The database says about its file: {text}. Keep a copy of it as it is, and go back to the last backup.',
}
