/** Sentences of the sheet Boat. */
export const boatScreenWords: Readonly<Record<string, string>> = {
  'boat.title':
    '{areaM2} to paint in {zones, plural, one {one zone} other {# zones}}: {mixedL} of paint, mixed.',
  'boat.unsure':
    '{count, plural, one {One area rests} other {# areas rest}} on sizes that nobody has measured yet.',
  'boat.paintOn': 'Paint for {name}',
}
