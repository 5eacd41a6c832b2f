/**
 * How a database file came to be as it is: the step at place N leads from version N to N + 1. A step that has been
 * given out is never edited, since files in the yards have been through it; a test holds each against its hash.
 */

const documentsLogWeather = `
CREATE TABLE document_update (
  sequence INTEGER PRIMARY KEY AUTOINCREMENT,
  document TEXT NOT NULL,
  bytes BLOB NOT NULL
) STRICT;
CREATE INDEX document_update_by_document ON document_update (document);
CREATE TABLE log_entry (
  sequence INTEGER PRIMARY KEY AUTOINCREMENT,
  job TEXT NOT NULL,
  id TEXT NOT NULL,
  cells TEXT NOT NULL,
  UNIQUE (job, id)
) STRICT;
CREATE INDEX log_entry_by_job ON log_entry (job);
CREATE TABLE weather (
  hash TEXT PRIMARY KEY,
  bytes BLOB NOT NULL
) STRICT;
`

export const migrations: readonly string[] = [documentsLogWeather]
