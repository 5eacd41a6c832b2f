/** Class names joined, those that do not apply left out. */
export const classes = (...names: readonly (string | false | undefined)[]): string =>
  names.filter((name) => typeof name === 'string' && name !== '').join(' ')
