// The error of a checkout that cannot be made ready; `sentence` is all that the person is shown.

/**
 * @param {string} sentence what happened, and what to do next
 * @returns {Error & { sentence: string }}
 */
export function notReady(sentence) {
  return Object.assign(new Error(sentence), { sentence })
}

/**
 * @param {unknown} error
 * @returns {string} the system's code of an error (`ENOENT`), or an empty string
 */
export function errorCode(error) {
  return error instanceof Error && 'code' in error ? String(error.code) : ''
}
