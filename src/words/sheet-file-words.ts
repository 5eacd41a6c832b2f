/** Sentences about files of product sheets. */
export const sheetFileWords: Readonly<Record<string, string>> = {
  'cli.sheetUnknown': 'The job has no product with the id {found}. `hardstand sheets JOB` lists them.',
  'sheetfiles.taken':
    '{count, plural, one {One product is} other {# products are}} taken from the file. Undo takes {count, plural, one {it} other {them}} out again.',
  'sheetpart.usual': 'Usual: {figure}{isSeen, select, true {; {least} to {most} seen} other {}}.',
  'intake.sheetsTooLarge':
    'The file holds {sizeBytes} bytes; at most {mostBytes} are read. Pass on fewer sheets at a time.',
  'intake.sheetsBinary': 'This is not a text file. Save the sheets as JSON, or as CSV in UTF-8.',
  'intake.sheetsNone': 'There is no product sheet in this file. A sheet has at least a name.',
  'intake.sheetsJson': 'The JSON breaks off or has a fault in its form. Save the file again.',
  'intake.sheetsQuotes': 'A quotation mark is not closed here, so it is not clear where the cell ends.',
  'intake.sheetsHead':
    'The first line must name the columns; `name` is one of them. Save a sheet of your own to see the others.',
  'intake.sheetsRows': 'There are more than {most, number} rows. Pass on fewer sheets at a time.',
  'intake.sheetsSection':
    'A row of “{found}” is left out: a file of sheets holds sheets, windows and thinners.',
  'intake.sheetsColumn':
    'The column “{found}” is not known and left out.{isLike, select, true { Perhaps {like} is meant.} other {}}',
  'intake.sheetsCell': 'The cell {key} holds no text that can be read and is left out.',
  'intake.sheetsMore': '{count, plural, one {One more thing is} other {# more things are}} not told.',
}
