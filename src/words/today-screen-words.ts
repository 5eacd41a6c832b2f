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
  'todayscreen.ownSheet':
    'What was read folds to a line that opens in full; the product’s own safety sheet decides.',
  'todayscreen.silent':
    'Nothing was ticked since {sinceDate}, so the plan begins again with all that is not done.',
  'todayscreen.nothingBehind':
    'By the plan of {sinceDate} nothing was to be over by now that is not ticked already.',
  'todayscreen.notPlanned': 'The plan of that day could not be made. Tick the steps one by one.',
  'todayscreen.upTo':
    '{count, number} of {of, plural, one {one step} other {# steps}} that were to be over by now {count, plural, one {is} other {are}} written as done, each at its planned end; the last one {untilAtMs}.',
  'todayscreen.ahead': 'That is still to come.',
  'todayscreen.readingWrong': 'Write it like 18 °C or 64 °F.',
  'todayscreen.humidityWrong': 'Write it like 65 %.',
  'todayscreen.readingShifts':
    'What you keep shifts the hours after it on Days, less from hour to hour, until nothing is left after {fadeHours}: air and humidity the air and its dew point, the skin the side it was read on.',
  'todayscreen.dewAsks':
    'Air and humidity give the dew point; the skin must lie at least {limitK} over it before anything is put on.',
  'todayscreen.dewNoSkin':
    'Measure the skin too: it must be {leastSkinC} or warmer, at least {limitK} over the dew point.',
  'todayscreen.dewEnough':
    'Far enough over dew: at least {limitK} is needed. The product’s own sheet decides on all else.',
  'todayscreen.dewClose':
    'Do not coat: the skin is too close to the dew point, at least {limitK} is needed. Wait until it is {leastSkinC}.',
  'todayscreen.dewWet':
    'Do not coat: the skin is at or under the dew point, so it is wet or about to be. Wait until it is dry and {leastSkinC}.',
}

/** Shorter than a sentence. */
export const todayScreenPhrases: Readonly<Record<string, string>> = {
  'todayscreen.who': '{names}, {minutes}',
  'todayscreen.part': 'part {part, number} of {parts, number}',
  'todayscreen.pours': '{count, plural, one {# pour} other {# pours}}, {volumeM3} in all',
  'todayscreen.pourOf': 'Pour {nr, number} of {of, number}',
  'todayscreen.pourFor':
    '{times, plural, =1 {} other {# × }}{ready}{cover, select, none {} other { for {areaM2}}}',
  'todayscreen.fromTo': '{fromClock} to {untilClock}',
  'todayscreen.needs': 'Margin, needs {leastK}',
  'todayscreen.writeDone': 'Write {count, plural, one {one} other {#}} as done',
  'todayscreen.tick': 'Done: {name}',
  'todayscreen.readAir': 'air {text}',
  'todayscreen.readHumidity': 'humidity {text}',
  'todayscreen.readSkin': 'skin {text}',
  'todayscreen.readDew': 'dew {dewC}',
  'todayscreen.readMargin': 'margin {marginK}',
  'todayscreen.readLine': '{count, plural, one {} other {#: }}{first}',
  'todayscreen.allRead': '{count, plural, one {Read it} other {Read all #}}',
}
