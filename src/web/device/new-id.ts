/** Random ids for items, entries and jobs: 60 bits, so that two devices apart never make the same one. */
const signs = 'abcdefghijkmnpqrstuvwxyz23456789'

export const newId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => signs[byte % signs.length]).join('')
