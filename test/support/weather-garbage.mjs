// Files that only pretend to be weather, as large as asked for.

/** @param {string} piece */
const filled =
  (piece) =>
  (/** @type {number} */ size, head = '') => {
    const bytes = Buffer.alloc(size, piece)
    bytes.write(head)
    return new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.length)
  }

/** @type {Readonly<Record<string, (size: number) => Uint8Array>>} */
export const garbage = {
  zeros: (size) => new Uint8Array(size),
  letters: filled('A'),
  noise: (size) => {
    const bytes = new Uint8Array(size)
    let state = 1
    for (let at = 0; at < size; at++) {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0
      bytes[at] = state >>> 24
    }
    return bytes
  },
  'line ends': filled('\n'),
  commas: filled(','),
  brackets: filled('['),
  'maps in maps': filled('{"a":'),
  'station rows': (size) =>
    filled('2001,1,1,1,0,x,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1\n')(size, 'LOCATION,A,-,X,M,0,1,1,1,1\n'),
  'table rows': (size) => filled('2027-04-01T00:00Z,5,80\n')(size, 'time,airC,humidityPct\n'),
  'logger rows': (size) => filled('1,01/04/2027 10:00,5,80\n')(size, 'No,Date,Temperature,Humidity\n'),
}
