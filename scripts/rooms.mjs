// The rooms of src/ and what each may import: the table that the layer checker holds the sources against.
// `values` may be imported whole; of `types` only the types. Node's modules and packages are ruled at the end.

/**
 * @typedef {object} Room
 * @property {string} name folder under src/
 * @property {readonly string[]} values rooms it may import
 * @property {readonly string[]} types rooms it may import types of
 */

/** The rooms under core/ that other rooms mean when they may import "core". */
const CORE = [
  'core/geometry',
  'core/boat',
  'core/marking',
  'core/repair',
  'core/cure',
  'core/coating',
  'core/climate',
  'core/schedule',
  'core/stores',
  'core/money',
  'core/safety',
  'core/record',
]

/** Types of a note only: any room of core may name it, so that notes of all rooms are one type. */
const NOTE = 'core/note'

/**
 * @param {string} name
 * @param {readonly string[]} [values]
 * @returns {Room}
 */
function coreRoom(name, values = []) {
  return { name: `core/${name}`, values: values.map((room) => `core/${room}`), types: [NOTE] }
}

const DESK = ['plan', 'papers', 'store', 'feeds', 'job', 'replica', 'units', 'words', 'intake']

/** @type {readonly Room[]} */
export const rooms = [
  { name: 'units', values: [], types: [] },
  { name: 'words', values: ['units'], types: [NOTE] },
  { name: NOTE, values: [], types: [] },
  coreRoom('geometry'),
  coreRoom('boat', ['geometry']),
  coreRoom('marking', ['geometry', 'boat']),
  coreRoom('repair', ['geometry']),
  coreRoom('cure'),
  coreRoom('coating', ['cure']),
  coreRoom('climate'),
  coreRoom('schedule', ['cure']),
  coreRoom('stores', ['geometry']),
  coreRoom('money'),
  coreRoom('safety'),
  coreRoom('record'),
  { name: 'intake', values: ['core/climate'], types: ['core/geometry', 'job'] },
  { name: 'job', values: ['units'], types: [] },
  { name: 'replica', values: ['job'], types: [] },
  { name: 'catalogue', values: [], types: ['job'] },
  { name: 'plan', values: ['job', 'catalogue', ...CORE], types: [NOTE] },
  { name: 'sums', values: ['units', 'catalogue', ...CORE], types: [NOTE] },
  { name: 'papers', values: ['units', 'words', 'plan'], types: [NOTE] },
  { name: 'store', values: ['job'], types: [] },
  { name: 'feeds', values: ['intake'], types: [] },
  { name: 'server', values: DESK, types: [] },
  { name: 'cli', values: [...DESK, 'sums', 'server', 'catalogue'], types: [] },
  {
    name: 'web',
    values: ['plan', 'papers', 'job', 'replica', 'units', 'words', 'intake', 'sums', 'catalogue'],
    types: [NOTE],
  },
]

/** Packages that core may use, each with the reason why it is pure and the better hand. */
export const corePackages = {
  suncalc: 'position of the sun from a time and a place; checked against a national laboratory’s algorithm',
  'pure-rand': 'seeded random numbers: the generator is a value that is passed along',
  'clipper2-ts': 'polygon offsets and unions, exact to a few millionths',
}

/** The rooms that may reach the network. */
export const networkRooms = ['feeds', 'server', 'web']
