/** Sentences about figures that could not be read as they were written. */

const like = 'Write it like {accepted}.'
/** Which input it is, where the data names one. */
const field = '{field, select, none {} other {{field}: }}'

export const unitsWords: Readonly<Record<string, string>> = {
  'units.empty': `${field}Nothing is written where a figure belongs. ${like}`,
  'units.tooLong': `${field}“{text}” is too long for a figure. ${like}`,
  'units.notANumber': `${field}“{got}” in “{text}” is not a number. ${like}`,
  'units.notWhole': `${field}“{text}” must be a whole number. Write it without decimals.`,
  'units.unknownUnit': `${field}The unit “{got}” in “{text}” is not known{nearest, select, none {} other {; {nearest} is}}. ${like}`,
  'units.wrongDimension': `${field}“{text}” has a unit of another kind. ${like}`,
  'units.ambiguous': `${field}It is not clear what “{text}” means: it can be read as {readings}. Write it so that only one is left.`,
  'units.negative': `${field}“{text}” is below zero, which cannot be here. ${like}`,
  'units.missingUnit': `${field}“{text}” has no unit, so it could mean several things. ${like}`,
  'units.outOfRange': `${field}“{text}” is out of range{atLeast, select, none {} other {, at least {atLeast}}}{atMost, select, none {} other {, at most {atMost}}}. Check the figure and its unit.`,
  'units.tooFine': `${field}“{text}” is finer than the smallest coin. Round it to whole coins.`,
  'units.leftOver': `${field}“{got}” in “{text}” is left over after the figure. ${like}`,
}
