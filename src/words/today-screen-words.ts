/** Sentences of the sheet Today. */
export const todayScreenWords: Readonly<Record<string, string>> = {
  'todayscreen.otherDay': 'Planned for {planDate}: the pot is started on the day.',
  'todayscreen.takesUntil': '{zone} can take paint until {untilClock}.',
  'todayscreen.takesFrom': '{zone} can take paint from {fromClock} to {untilClock}.',
  'todayscreen.takesNot': 'No good hour is left for paint on {zone}.',
  'todayscreen.work':
    '{hours} of work for {people, plural, one {one person} other {# people}}, from {fromClock} to {untilClock}.',
  'todayscreen.allDone': 'Everything of this day is done: {hours} of work.',
  'todayscreen.none': 'No work on {date}.',
  'todayscreen.next':
    'The next working day is {date}: {hours} of work from {fromClock}, beginning with {first}.',
  'todayscreen.nextNone': 'Nothing is planned after it.',
  'todayscreen.noPlan': 'The day’s hours stand here once the plan is made.',
  'todayscreen.noWeather':
    'No weather reaches this day, so skin and dew are not known. Measure them before you mix.',
  'todayscreen.at':
    'Worked out from the weather for {atClock}. Measure before you mix; the product’s own sheet decides.',
  'todayscreen.read': 'Read at {atClock}: {text}.',
  'todayscreen.ownSheet': 'What to do stands below in full; the product’s own safety sheet decides.',
  'todayscreen.readingWrong': 'Write it like 18 °C or 64 °F.',
  'todayscreen.humidityWrong': 'Write it like 65 %.',
}

/** Shorter than a sentence. */
export const todayScreenPhrases: Readonly<Record<string, string>> = {
  'todayscreen.who': '{names}, {minutes}',
  'todayscreen.part': 'part {part, number} of {parts, number}',
  'todayscreen.pours': '{count, plural, one {# pour} other {# pours}}, {volumeM3} in all',
  'todayscreen.pourOf': 'Pour {nr, number} of {of, number}',
  'todayscreen.pourFor': '{readyM3} for {areaM2}',
  'todayscreen.fromTo': '{fromClock} to {untilClock}',
  'todayscreen.needs': 'Margin, needs {leastK}',
  'todayscreen.tick': 'Done: {name}',
  'todayscreen.moreCautions': '{count, plural, one {The caution in full} other {All # cautions in full}}',
}
