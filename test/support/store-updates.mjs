// Updates that carry a number and show when a byte of them is missing or wrong.

/**
 * The number, the length, and as many bytes as the length says, all made from the number.
 *
 * @param {number} number
 * @returns {Uint8Array}
 */
export function numbered(number) {
  const length = (number * 997) % 6000
  const bytes = Buffer.alloc(8 + length, number % 251)
  bytes.writeUInt32BE(number, 0)
  bytes.writeUInt32BE(length, 4)
  return Uint8Array.from(bytes)
}

/**
 * @param {readonly Uint8Array[]} updates
 * @returns {Uint8Array}
 */
export const joined = (updates) => Uint8Array.from(Buffer.concat(updates))

/**
 * The numbers in updates, whether they are joined or not; throws where a byte is not as it was written.
 *
 * @param {readonly Uint8Array[]} updates
 * @returns {number[]}
 */
export function numbersIn(updates) {
  const bytes = Buffer.concat(updates)
  const numbers = []
  for (let at = 0; at < bytes.length; ) {
    const number = bytes.readUInt32BE(at)
    const expected = numbered(number)
    if (Buffer.compare(bytes.subarray(at, at + expected.length), expected) !== 0)
      throw new Error(`update ${number}: torn, at byte ${at}`)
    numbers.push(number)
    at += expected.length
  }
  return numbers
}
