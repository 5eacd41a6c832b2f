/** Sentences of the command line: files, arguments, and what a command has done. */

const files: Readonly<Record<string, string>> = {
  'cli.fileMissing': 'There is no file {file}. Check the name and the folder.',
  'cli.fileIsFolder': '{file} is a folder. Name a file in it.',
  'cli.fileForbidden': '{file} may not be read or written here. Check whose it is.',
  'cli.fileExists': '{file} is there already and is not overwritten. Choose another name or move it away.',
  'cli.passphraseFileEmpty': 'The first line of {file} is empty. Write the passphrase there.',
  'cli.passphraseFileLong': '{file} is too long for a passphrase. Name the file that holds one.',
  'cli.passphraseFileOpen':
    'Others on this computer may read {file}. Make it yours alone first, with chmod 600.',
  'cli.fileTooLarge': '{file} is larger than {mostMegabytes} MB. Cut it down to what the job needs.',
  'cli.diskFull': 'The disk is full, so {file} was not written. Make room and try again.',
  'cli.notAFolder': '{file} is not a folder. Name a folder, or move the file of that name away.',
  'cli.weatherChanged':
    'The weather in {file} is not the one the job was planned with: its fingerprint is {found}, the job holds {wanted}. Name the file with {flag} to plan with it.',
  'cli.typicalDated':
    '{file} is no typical year but weather with dates, so it cannot go on where the weather ends. Give a whole typical year, as an EPW file holds it.',
  'cli.typicalTwice':
    '{file} is a typical year itself, so another has nothing to do. Give a forecast as the weather, or leave the other away.',
}

const weather: Readonly<Record<string, string>> = {
  'cli.weatherGap': '{file}: nothing is known for {hours} from {fromAtMs}, universal time.',
  'cli.weatherGaps':
    '{file}: {count, plural, one {one gap} other {# gaps}} in the weather. Fill {count, plural, one {it} other {them}}, or plan with --gaps: coats then keep out of those hours as far as they can.',
}

const argumentWords: Readonly<Record<string, string>> = {
  'cli.badDates':
    '“{text}” is no order of a date. Say dmy for day before month, mdy for month before day, or ymd.',
  'cli.badColumn':
    '“{text}” does not say what a column is. Write its name, an equals sign, what it is and its unit, as in Temp = airC °F.',
  'cli.badMoment': '“{text}” is not a moment. Write it like 2027-04-10T08:00, with an offset if you like.',
  'cli.answersMissing': 'To start a job, {flags} must be given. Add them; see --help for what each means.',
  'cli.badSeed': '“{text}” is not a seed. Give a whole number of up to nine digits.',
  'cli.badPage': '“{text}” is not a size of paper. Use A4 or Letter.',
  'cli.badDate': '“{text}” is not a date. Write it like 2027-04-12.',
  'cli.badUnits': '“{text}” is not a system of units. Use metric or us.',
}

const outcomes: Readonly<Record<string, string>> = {
  'cli.checked':
    '{file}: {errors, plural, =0 {no errors} one {one error} other {# errors}}, {notes, plural, =0 {no notes} one {one note} other {# notes}}.',
  'cli.created': '{file} is written. Fill in what you know, then check it.',
  'cli.sound': '{file} is sound.',
  'cli.unsound': '{file} has faults:',
  'cli.doctorScope': 'Documents and their weather were read again. Photos are not kept by the program yet.',
  'cli.nothingToShow': 'There is nothing to show here for this job.',
  'cli.serving': 'Hardstand is at {url} and keeps its jobs in {folder}. Stop it with Ctrl+C.',
  'cli.servingOthers':
    'Others on the network reach it by the name or address of this computer. What is sent is not encrypted: use it on a network you trust.',
  'cli.served': 'Stopped. Everything is on the disk.',
  'cli.badPort': '“{text}” is not a port. Give a whole number from 0 to 65535; 0 takes any that is free.',
  'cli.folderInUse':
    'The data in {folder} is in use by another process. Stop that one, or name another folder with --data.',
  'cli.noData': 'There are no jobs kept in {folder}. Check the folder, or start with hardstand serve.',
  'cli.dataRead':
    '{folder}: {documents, plural, one {# document} other {# documents}}, {entries, plural, one {# entry} other {# entries}} of the log and {series, plural, one {# weather file} other {# weather files}} were read.',
  'cli.weatherRead':
    '{file}: {hours, plural, one {# hour} other {# hours}} of weather from {fromAtMs} to {toAtMs}, universal time.',
  'cli.ownFault': 'The program made a mistake of its own, and your files are untouched. Please report this:',
}

export const cliWords: Readonly<Record<string, string>> = {
  ...files,
  ...weather,
  ...argumentWords,
  ...outcomes,
}
