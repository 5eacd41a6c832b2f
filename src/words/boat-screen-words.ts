/** Sentences of the sheet Boat. */
export const boatScreenWords: Readonly<Record<string, string>> = {
  'boat.title':
    '{areaM2} to paint in {zones, plural, one {one zone} other {# zones}}: {mixedL} of paint, mixed.',
  'boat.unsure':
    '{count, plural, one {One area rests} other {# areas rest}} on sizes that nobody has measured yet.',
  'boat.firmUpArea': 'Measure {name} and give its area, or its length and width, or more sizes of the boat.',
}
