/** Sentences that stand on papers. */
export const paperWords: Readonly<Record<string, string>> = {
  'paper.planHeadline':
    '{boat}: {work} of work on {count, plural, one {one day} other {# days}}, {fromDate} to {untilDate}.',
  'paper.nothingPlanned': '{boat}: nothing is planned yet.',
  'paper.giveWork': 'Give zones, findings and layers, and who works when; then the days are set.',
  'paper.stepsUnplaced':
    '{count, plural, one {One step finds} other {# steps find}} no place in the calendar, so no date can be given for the launch. The notes say why.',
  'paper.slingsFrom': 'The boat can go in the slings from {slingsDate}.',
  'paper.slingsInTime':
    'The boat can go in the slings from {slingsDate}: {count, plural, =0 {on the day of} one {one day before} other {# days before}} the launch wanted on {launchDate}.',
  'paper.slingsLate':
    'The boat can go in the slings from {slingsDate}: {count, plural, one {one day after} other {# days after}} the launch wanted on {launchDate}.',
  'paper.dayHeadline':
    '{dayDate}: {from} to {until}, {work} for {count, plural, one {one person} other {# people}}.',
  'paper.dayFree': '{dayDate}: nothing is planned.',
  'paper.paintOn': '{layer} goes on {zones}.',
  'paper.noReadings':
    'No weather covers this day, so its hours are not judged. Take readings of air, humidity and surface before any paint is mixed.',
  'paper.morePeople': '{count, plural, one {One more person} other {# more people}}: see the plan.',
  'paper.moreSteps': '{count, plural, one {One more step} other {# more steps}}: see the plan.',
  'paper.morePours': '{count, plural, one {One more pour} other {# more pours}}: see the plan.',
  'paper.moreCautions':
    '{count, plural, one {One more caution} other {# more cautions}}: read them in the plan before you start.',
  'paper.quoteHeadline': '{boat}: {totalCoins} with tax, for {work} of work.',
  'paper.quoteValid': 'This offer holds until {untilDate}.',
  'paper.quoteSigned':
    'The owner signed for {signedCoins}{date, select, none {} other { on {date}}}. The sums below are those of the plan today; what differs takes a change order.',
  'paper.quoteDraft':
    'Draft, not an offer yet: prices are missing, so the sums are too low. The notes of the plan say which.',
  'paper.judgedFrom': 'The finish is judged from {inspectionDistanceM} away, in daylight.',
  'paper.refitted': 'Taken off, bedded and refitted: {names}.',
  'paper.removed': 'Taken off for good: {names}.',
  'paper.leftAlone': 'Masked and left alone: {names}.',
  'paper.hiddenDamage':
    'What cannot be seen before the work is opened up is charged at these prices, after a change order is signed.',
  'paper.quoteAccept': 'The owner orders the work above for {totalCoins}.',
  'paper.quoteAcceptDeposit':
    'The owner orders the work above for {totalCoins}; {depositCoins} is due with the signature.',
  'paper.changeHeadline': '{name}: {totalCoins} with tax, {work} more.',
  'paper.changeDays':
    '{count, plural, =0 {It does not move the end of the work.} =1 {It moves the end of the work by one working day.} other {It moves the end of the work by # working days.}}',
  'paper.changeAccept':
    'The owner orders this change for {totalCoins} on top of the quote{count, plural, =0 {} =1 { and agrees to one more working day} other { and agrees to # more working days}}. Work on it starts when this is signed.',
  'paper.inZone': 'Where: {zone}.',
}
