/** On which sheet of the app the cells of a section are set. */
const rooms: Readonly<Record<string, string>> = {
  boat: 'boat',
  zones: 'boat',
  corners: 'boat',
  offsets: 'boat',
  findings: 'survey',
  fittings: 'survey',
  sheets: 'build-up',
  layers: 'build-up',
  marks: 'marks',
  place: 'days',
  shed: 'days',
  people: 'days',
  shifts: 'days',
  closures: 'days',
  packs: 'stores',
  changes: 'money',
  terms: 'money',
  rates: 'money',
  prices: 'money',
  consumablePrices: 'money',
  costs: 'money',
}

/** The room's id, whose name is the label `room.<id>`; undefined for what has no boxes. */
export const roomOfSection = (section: string): string | undefined =>
  Object.hasOwn(rooms, section) ? rooms[section] : undefined
