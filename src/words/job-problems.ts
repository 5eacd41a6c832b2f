/** Sentences about job documents: what is wrong in the file, in a cell or between cells, and what would be right. */

/** The cell it is about, where the data names one. */
const field = '{field, select, none {} other {{field}: }}'
const perhaps = '{nearest, select, none {} other { Did you mean “{nearest}”?}}'
const like = 'Write it like {accepted}.'

export const jobProblems: Readonly<Record<string, string>> = {
  'job.tooLarge':
    'The file holds {bytes} bytes; at most {most} are read. A job document is a text of a few hundred lines.',
  'job.binary': 'This is not a text file. A job document is YAML or JSON in UTF-8.',
  'job.notUtf8': 'The text is not in UTF-8. Save it again in UTF-8.',
  'job.empty': 'The file is empty. Start one with the command new.',
  'job.notAJob':
    'This is not a job document: it has none of hardstand, work, money and log at its top. Start one with the command new.',
  'job.truncated':
    'The file ends in the middle of something: a quotation mark or bracket is still open. Close it, or fetch the file again.',
  'job.json':
    'The character “{found}” cannot stand here in JSON. Look for a missing comma or quotation mark just before it.',
  'job.yaml': `The YAML breaks off at “{found}”. {reason, select,
    BLOCK_AS_IMPLICIT_KEY {A text that holds a colon needs quotation marks, for example "2:1".}
    BAD_INDENT {The line does not stand as far in as those it belongs with.}
    MULTILINE_IMPLICIT_KEY {A colon is missing after a name, or a text that goes over two lines needs quotation marks.}
    TAB_AS_INDENT {Use spaces, not tabs, at the start of a line.}
    BAD_SCALAR_START {A text that begins with such a character needs quotation marks.}
    MISSING_CHAR {A bracket, comma, colon or quotation mark is missing.}
    BAD_ALIAS {The name after the star is not known.}
    other {Look for a missing colon, bracket or quotation mark just before it.}}`,
  'job.duplicateKey':
    '“{found}” stands here a second time. Keep one of them, or give the other its own name.',
  'job.keyNotText':
    'A name must be a plain text, not a list or a map. Take out the question mark or bracket.',
  'job.tag': 'The tag {found} cannot be used here. Take it out; every cell is a text anyway.',
  'job.alias': 'Nothing is named “{found}” before this place. Write the cells out instead.',
  'job.manyDocuments':
    'A second document begins here. Keep one job in a file and take the line with --- out.',
  'job.tooDeep': 'More than {most} maps or lists stand inside each other here. A job document needs four.',
  'job.tooManyAliases': 'There are more than {most} anchors and aliases. Write the cells out instead.',
  'job.tooManyPieces':
    'There is too much in the file: more than {most} words and marks. Save it as JSON, or take out what does not belong.',
  'job.tooManyCells': 'There are more than {most} cells. Take out what does not belong to the job.',
  'job.tooManyItems':
    'There are {count} items; at most {most} are read. Take out what does not belong to the job.',
  'job.shape': `{found, select,
    list {A list stands} map {A map stands} other {A text stands}} where {accepted, select,
    map {a map of names and cells belongs. Give every item a name of its own.}
    other {one text belongs. Put it on one line.}}`,
  'job.unknownKey': `“{found}” is not known here.${perhaps} Known are {accepted}.`,
  'job.unknownKept':
    'Something in {section} is not known to this version of the program. It is kept as it is.',
  'job.missing':
    'No {field} is given in {section}, and it is needed. Add a line that begins with {field}: and say it there.',
  'job.missingBox':
    'The box {field} is empty, and {many, select, yes {this entry of {section} is left out of the plan until something stands in it} other {{section} cannot be planned without it}}.{sheet, select, none {} other { Fill it in on the sheet {sheet}.}}',
  'job.missingSection': 'This section is missing. Add it with at least {keys}.',
  'job.emptyCell': 'The cell {field} is empty and counts as left out.',
  'job.notText': `${field}A text belongs here, not something else ({found}). Write it again.`,
  'job.tooLong': `${field}The text is {length} characters long; at most {most} are kept. Shorten it.`,
  'job.badId':
    'The name “{found}” cannot be used for an item. Use lower-case letters, digits and hyphens, 64 at most, for example side-deck-2.',
  'job.order':
    'The order “{found}” cannot be sorted by, so the item comes last. Use letters and digits only.',
  'job.choice': `${field}“{found}” is none of the choices.${perhaps} Choose one of {accepted}.`,
  'job.count': `${field}“{found}” must be a whole number from {least} to {most}. Write it without a unit.`,
  'job.yesNo': `${field}“{found}” is neither yes nor no. Write one of them.`,
  'job.date': `${field}“{found}” is no date of the calendar. Write year, month and day like {accepted}.`,
  'job.instant': `${field}“{found}” is no date and time with its offset. ${like}`,
  'job.weekdays': `${field}“{found}” does not name days of the week. ${like}`,
  'job.weekdaysHours': `${field}“{found}” names hours. Write only the days here, like weekdays or Sat, Sun; the hours of the day have cells of their own.`,
  'job.noCurrency': `${field}“{found}” is no currency that is known. Write its code of three letters, like {accepted}, or its sign.`,
  'job.currencies': `${field}“{found}” may be {accepted}. Write the code that is meant.`,
  'job.ratioOdd': `${field}“{found}” is taken as {base, number} of base to {hardener, number} of hardener. If the hardener is the small part, write {hardener, number}:{base, number}.`,
  'job.pattern': `${field}“{found}” is not in the form that belongs here. ${like}`,
  'job.refs': `${field}“{found}” names nothing. Write one or more names with commas between them.`,
  'job.ref': `${field}There is no “{found}” in {to}, or it could not be read.${perhaps}`,
  'job.clockTable': `${field}“{found}” is no temperature with its time. Write the table like {accepted}.`,
  'job.clockTwice': `${field}The temperature {airC} stands in “{found}” twice. Keep one time for it.`,
  'job.clockOdd': `${field}In “{found}” a warmer temperature takes longer. It is taken as written; check it against the sheet.`,
  'job.currency': `${field}“{found}” is not in {accepted}, the currency of the terms. Give all prices in one currency, or change that of the terms.`,
  'job.launchBeforeStart': 'The launch on {found} comes before the start on {from}. Change one of the two.',
  'job.shiftEnds':
    'The shift ends at {found} but begins at {from}. The end must be later on the same day; a shift over midnight is written as two.',
  'job.windowEnds':
    'The window shuts {found} after the coat but opens only {from} after it. The row is left out until one of the two is changed.',
  'job.thinnerRange':
    'The most of a thinner, {found}, is less than its least, {from}. The row is left out until one of the two is changed.',
  'job.thinnerAir':
    'The thinner is for air up to {found} but only from {from} on. The row is left out until one of the two is changed.',
  'job.closureEnds': 'The last day {found} comes before the first day {from}. Change one of the two.',
  'job.stationCount':
    'There are {count, plural, one {# usable station} other {# usable stations}}; a hull needs {least} to {most}. The sizes of the boat are used until there are enough.',
  'job.stationPoints': 'The station has no point, so it is left out. Add its points, keel to sheer.',
  'job.stationTwice': 'The station lies at {found}, where {other} already is. Correct one of the two.',
  'job.noVersion': 'The version is missing. Add the line hardstand: {accepted} at the top.',
  'job.version': 'The version “{found}” is no whole number. Write hardstand: {accepted}.',
  'job.newerVersion':
    'The document has version {found} and was written by a newer version of the program. It can be looked at but not changed here; bring the program up to date.',
}
