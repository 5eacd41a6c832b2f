/** Words of the sheet Boat. */
export const boatScreenLabels: Readonly<Record<string, string>> = {
  'boat.drawing': 'The boat in lines: from the side, from above, and its sections',
  'boat.bodyPlan': 'Body plan: aft | forward',
  'finding.mark': 'No.',
  'finding.where': 'Where',
  'finding.somewhere': 'somewhere in its zone',
  'boat.paint': 'Paint',
  'boat.sizes': 'Sizes',
  'boat.moreSizes': 'More sizes, and what she is made of',
  'boat.editZones': 'Zones, to change',
  'boat.newZone': 'New zone',
  'boat.addZone': 'Add a zone',
  'boat.rule': 'Rule of thumb',
  'boat.ruleArea': 'By the rule',
  'boat.workedArea': 'Worked out',
}
