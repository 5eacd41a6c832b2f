// Files that pretend to be scans, at any size: what a reader must turn down soon and without taking much memory.

/** @param {string} text */
const bytesOf = (text) => new TextEncoder().encode(text)

/**
 * @param {Uint8Array} head
 * @param {number} size
 * @param {(at: number) => number} fill
 */
function filled(head, size, fill) {
  const bytes = new Uint8Array(size)
  for (let at = 0; at < size; at += 1) bytes[at] = fill(at)
  bytes.set(head)
  return bytes
}

/** A cheap run of bytes that repeats nowhere near. @param {number} at */
const noise = (at) => Math.imul(at ^ (at >>> 11), 0x9e3779b1) >>> 24

/**
 * @param {Uint8Array} head
 * @param {number} size
 * @param {string} line
 */
function repeated(head, size, line) {
  const unit = bytesOf(line)
  return filled(head, size, (at) => unit[at % unit.length] ?? 0)
}

const plyHead = (/** @type {string} */ form, /** @type {string} */ rest) =>
  bytesOf(`ply\nformat ${form} 1.0\n${rest}end_header\n`)
const points = 'property float x\nproperty float y\nproperty float z\n'
const faces = 'property list uchar int vertex_indices\n'

/** @param {number} size */
function glbHead(size) {
  const head = new Uint8Array(new Uint32Array([0x46546c67, 2, size, size - 20, 0x4e4f534a]).buffer)
  return head
}

/** @param {number} size */
function stlHead(size) {
  const head = new Uint8Array(84)
  new DataView(head.buffer).setUint32(80, Math.floor((size - 84) / 50), true)
  return head
}

/**
 * Names of the kinds of garbage with what makes each in a number of bytes.
 *
 * @type {Readonly<Record<string, (size: number) => Uint8Array>>}
 */
export const garbage = {
  zeros: (size) => new Uint8Array(size),
  noise: (size) => filled(new Uint8Array(0), size, noise),
  lineEnds: (size) => filled(new Uint8Array(0), size, () => 10),
  blanks: (size) => filled(bytesOf('v 0 0 0\n'), size, () => 32),
  backslashes: (size) => repeated(bytesOf('v 0 0 0\n'), size, '\\\n'),
  letters: (size) => repeated(new Uint8Array(0), size, 'lorem ipsum\n'),
  stlNoise: (size) =>
    filled(stlHead(84 + 50 * Math.floor((size - 84) / 50)), 84 + 50 * Math.floor((size - 84) / 50), noise),
  stlTextNoise: (size) => filled(bytesOf('solid x\nfacet '), size, (at) => 97 + (noise(at) % 26)),
  stlTextCorners: (size) => repeated(bytesOf('solid x\nfacet 0\n'), size, 'vertex 0 0 0\n'),
  stlTextBlank: (size) => filled(bytesOf('solid x\nfacet '), size, () => 10),
  objPoints: (size) => repeated(new Uint8Array(0), size, 'v 0 0 0\n'),
  objLongNumber: (size) => filled(bytesOf('v '), size, () => 49),
  objFaces: (size) => repeated(bytesOf('v 0 0 0\n'), size, 'f 1 1 2\n'),
  objOneFace: (size) => repeated(bytesOf('v 0 0 0\nf 1'), size, ' 1'),
  plyNoise: (size) =>
    filled(
      plyHead('binary_little_endian', `element vertex 9\n${points}element face 400000\n${faces}`),
      size,
      noise,
    ),
  plyHeader: (size) => repeated(bytesOf('ply\n'), size, 'comment comment\n'),
  plyLongLine: (size) => filled(bytesOf('ply\ncomment '), size, () => 97),
  plyEmptyFaces: (size) =>
    filled(
      plyHead('binary_big_endian', `element vertex 1\n${points}element face ${size - 300}\n${faces}`),
      size,
      () => 0,
    ),
  plyTextPoints: (size) =>
    repeated(plyHead('ascii', `element vertex ${Math.floor(size / 3) - 300}\n${points}`), size, '0 '),
  plyTextLists: (size) =>
    repeated(
      plyHead('ascii', `element vertex 1\n${points}element face ${Math.floor(size / 2) - 300}\n${faces}`),
      size,
      '0\n',
    ),
  plyManyElements: (size) => repeated(bytesOf('ply\nformat ascii 1.0\n'), size, 'element a 9\n'),
  plyOneFace: (size) =>
    filled(
      plyHead(
        'binary_little_endian',
        `element vertex 1\n${points}element face 1\nproperty list uint char vertex_index\n`,
      ),
      size,
      () => 0x7f,
    ),
  glbNoise: (size) => filled(glbHead(size), size, noise),
  glbDeep: (size) => filled(glbHead(size), size, () => 91),
  glbString: (size) => filled(new Uint8Array([...glbHead(size), 34]), size, () => 97),
  zip: (size) => filled(bytesOf('PK\x03\x04'), size, noise),
}
