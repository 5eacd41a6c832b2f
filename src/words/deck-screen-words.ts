/** Words of the deck plan on the sheet Boat. */
export const deckScreenLabels: Readonly<Record<string, string>> = {
  'deckplan.plan': 'Deck plan',
  'deckplan.drawing': 'The deck from above, with the zones that are drawn, their areas and openings',
  'deckplan.shown': 'What the deck plan shows',
  'deckplan.whole': 'Whole deck',
  'deckplan.zoneAlone': 'This zone',
  'deckplan.which': 'Zone to draw or change',
  'deckplan.draw': 'Draw it by corners',
  'deckplan.byOffsets': 'Measure it by offsets',
  'deckplan.addOpening': 'Add an opening',
  'deckplan.addOffset': 'Add an offset',
  'deckplan.more': 'Camber, slope, upstand and openings',
}

export const deckScreenWords: Readonly<Record<string, string>> = {
  'deckplan.help':
    'Choose a zone, then drag its corners; the arrow keys move a corner by 10 mm or half an inch, with Alt by 1 mm or a sixteenth. What is dragged counts as a guess until its figures are typed in.',
  'deckplan.cornerAt':
    '{corner}: {xM} from the stern, {side, select, port {{offM} to port} starboard {{offM} to starboard} other {on the centreline}}.',
  'deckplan.standsUp':
    '{name}: what stands up is no more than a line from above. Measure how long and how high it is.',
  'deckplan.notDrawn':
    '{name} is not drawn yet. Begin with a likely shape and drag its corners, or write its half widths every so far along.',
}

export const deckScreenPhrases: Readonly<Record<string, string>> = {
  'deckplan.addAfter': 'Add a corner after {corner}',
  'deckplan.takeCorner': 'Take corner {corner} away',
  'deckplan.takeOffset': 'Take offset {offset, number} away',
  'deckplan.corner': '{opening, plural, =0 {Corner {corner}} other {Opening #, corner {corner}}}',
  'deckplan.offset': 'Offset {offset, number}',
  'deckplan.cornersOf': 'Corners of {name}',
  'deckplan.offsetsOf': 'Offsets of {name}',
}
