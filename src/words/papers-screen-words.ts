/** Sentences of the sheets Build-up, Papers and Open. */
export const papersScreenWords: Readonly<Record<string, string>> = {
  'buildup.title':
    '{name}{more, plural, =0 {} one { and one more zone} other { and # more zones}}: {layers, plural, one {one layer} other {# layers}}, {coats, plural, one {one coat} other {# coats}}, {mixedL}{isPriced, select, true {, {costCoins} of paint} other {}}.',
  'buildup.none': 'No layer is planned for any zone yet.',
  'papers.title': '{count, plural, one {One paper} other {# papers}} can be made of this plan.',
  'papers.say': 'They are made here on this device, and need no signal.',
  'papers.failed': 'The paper could not be made: {text}.',
  'papers.show': 'Show {file}.',
  'papers.aboutDay': 'One page for the wall: who does what, when it may be painted, what to mix.',
  'papers.aboutSummary': 'The whole plan: areas, layers, days, stores and cautions.',
  'papers.aboutQuote': 'For the owner: what is done to which standard, and what it costs.',
  'papers.aboutChange': 'Work found after the quote, with a line to sign.',
  'papers.aboutShopping': 'Packs and consumables as a table for the shop.',
  'papers.aboutDocument': 'Everything of this job in one file, to keep or to plan on the command line.',
  'open.moves': '{name}: guessed too low or too high, it moves {moved}.',
  'open.none': 'Nothing that the plan rests on is a guess of the kind that can be tried out.',
  'open.title': '{assumed, number} assumed, {missing, number} missing.',
  'open.say': 'Each is named with what would make it surer. A measured size beats a guess.',
}
