/** Sentences about tables of hours against temperature. */
export const cureWords: Readonly<Record<string, string>> = {
  'cure.tableEmpty': 'The table of times is empty. Give at least one time with its temperature.',
  'cure.hoursNotPositive':
    'The time {hours} at {airC} cannot be used. Give a time above zero, as on the product sheet.',
  'cure.airNotFinite': 'A temperature in the table of times is not a number. Write it with its unit.',
  'cure.airTwice': 'The table of times has {airC} twice. Keep one time for each temperature.',
}
