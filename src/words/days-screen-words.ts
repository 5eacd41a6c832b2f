/** Sentences of the sheet Days. */
export const daysScreenWords: Readonly<Record<string, string>> = {
  'daysscreen.titleWish':
    'Done {endDate}, afloat from {launchDate}: {spare, plural, =0 {on the day of the launch} one {one day before the launch} other {# days before the launch}}.',
  'daysscreen.titleLate':
    'Done {endDate}, afloat from {launchDate}: {late, plural, one {one day} other {# days}} later than wanted.',
  'daysscreen.title': 'Done {endDate}, afloat from {launchDate}.',
  'daysscreen.titleEnd': 'Done {endDate}. When slings may touch is not known.',
  'daysscreen.titleOpen':
    '{count, plural, =0 {Nothing is planned yet} one {One step finds no place} other {# steps find no place}}, so there is no last day.',
  'daysscreen.say':
    '{hours} of work on {days, plural, one {one day} other {# days}}, {coats, plural, one {one coat} other {# coats}} among it; with opening and closing up each day, {withSessionsPersonHours}.',
  'daysscreen.none': 'No work stands on these days.',
  'daysscreen.weatherNone': 'No weather is given: hours are not judged, and every clock runs at 20 °C.',
  'daysscreen.horizon':
    'The forecast reaches to {untilAtMs}. Behind it the hours go over into a typical year, which stands alone from {fromAtMs}: what the season is like, not what a day will be. The bands hold eight of ten of the days about each date.',
  'daysscreen.typicalOnly':
    'All hours are of a typical year: what the season is like, not what a day will be. The bands hold eight of ten of the days about each date.',
  'daysscreen.likeBar':
    'It stands behind the forecast: its least sure hour would be good on {least, number} of {of, number} such days, ten to each side of its date in the typical year.',
  'daysscreen.likeHour':
    'It lies behind the forecast: this hour would be good on {count, number} of {of, number} such days, ten to each side of its date in the typical year.',
  'daysscreen.weatherThen':
    '{name}, from {fromDate} to {toDate}; then {typical}, a typical year, to {lastDate}.',
  'daysscreen.loggerIs': 'The readings of the logger are from {name}.',
  'daysscreen.loggerSay':
    'Hang a logger for temperature and humidity beside the boat, in the shade, for three days or more. From its table and the weather of the same days the program learns how the shelter follows the air outside.',
  'daysscreen.weatherIs': '{name}, from {fromDate} to {toDate}.',
  'daysscreen.next': '{names}: {fromAtMs} to {untilClock} can take a coat.',
  'daysscreen.nextDew':
    '{names}: {fromAtMs} to {untilClock}; the dew margin closes {closesThen, select, sameDay {at} other {on}} {closes}.',
  'daysscreen.nextThen': '{names}: {fromAtMs} to {untilClock}. For a coat after that: {why}.',
  'make.under':
    'Under {shelter, select, shed {a roof with walls} other {a cover}} there would be hours from {fromAtMs} on.',
  'make.grade':
    '{grade, select, colder {A product or hardener that goes on at {hadC}, not from {neededC} up,} other {A slower grade that goes on at {hadC}, not up to {neededC} alone,}} could be laid on {fromAtMs}.',
  'make.heat':
    'A tent of {lengthM} by {widthM}, {heightM} high, held {riseK} over the air outside with about {powerKw} of electric or vented heat could take it from {fromAtMs} on, until the film is past dew.',
  'make.rise':
    'Air held {riseK} warmer with electric or vented heat could take it from {fromAtMs} on, until the film is past dew. Say how long and wide she is, and the power for a tent is worked out.',
  'make.heatCaution':
    'Warm air comes in from a heater outside the tent. No flame, no glowing wire and no unvented burner where solvent, styrene or uncured resin is in the air; the rules of the yard and the product’s safety sheet decide.',
  'make.nothing': 'Neither a cover, a roof, heat nor one other limit would make one in these days.',
  'daysscreen.nextNone': '{names}: no hour of these days can take a coat. Choose an hour to see why.',
  'daysscreen.tableSay':
    'The first rows stand under the name of each column. Say what it is and in which unit: what its name tells is put in already. Time, temperature of the air, and humidity or dew point are needed.',
  'daysscreen.heatNone': '{when}: no weather reaches this hour.',
  'daysscreen.heatAlike': '{when}: the skin is {skinC} all round, the air {airC}.',
  'daysscreen.heatApart':
    '{when}: warmest {warmest}, {warmestC}; coldest {coldest}, {coldestC}; the air {airC}.',
  'daysscreen.weatherSay':
    'A forecast as JSON from Open-Meteo, MET Norway or the National Weather Service, or a table as CSV with a line of heads and a line an hour. A typical year as EPW goes on where the forecast ends.',
  'daysscreen.quiet': 'Nothing on these days: {names}.',
  'daysscreen.noWeather':
    'No weather reaches these days: clocks run at the air of the last week that is known.',
  'daysscreen.unplaced': `{step}: {reason, select,
    needs {a step it waits for has no place either}
    clock {its waiting time never ends at the temperatures to come}
    people {nobody who may do it works enough hours}
    together {it takes more hands than are ever there at the same time}
    horizon {no run of suitable hours is long enough}
    other {no reason is known}}.`.replaceAll(/\s+/g, ' '),
  'daysscreen.waiting':
    '{count, plural, one {One step waits} other {# steps wait}} for what finds no place: {steps}.',
  'daysscreen.anyHour': 'Any hour of a shift will do for it: no paint is open.',
  'daysscreen.waitsFor': '{name} holds it back until {untilAtMs}.',
  'daysscreen.free': 'Nothing holds it back but the hours of the crew.',
  'daysscreen.keyed': 'The time to coat without sanding has run out, so the surface is keyed first.',
  'daysscreen.whyFault': 'Why these hours were judged so cannot be looked up now.',
  'daysscreen.noCoat': 'No coat is planned on {zone}, so no product says which hours it can take.',
  'daysscreen.barUnknown':
    'No weather reaches these hours, so nobody knows whether they can take paint. Measure before you mix, or give a weather file.',
  'daysscreen.hourUnknown': 'No weather reaches this hour.',
  'daysscreen.forSheet': 'Judged for {name}, the next coat there.',
  'daysscreen.rainAhead': 'That is still to come: only rain that has begun is told.',
  'daysscreen.rainWrong': 'Write it with its unit, such as 3 mm or 1/8 in.',
  'daysscreen.rainHelp': 'If it still rains, put in when you expect it to stop.',
  'daysscreen.rainOpen': 'The boat stands open: what got wet dries before anything is coated.',
  'daysscreen.rainRoof':
    'What stands over the boat keeps rain off in the plan, so only a coat that it reached all the same moves anything.',
  'daysscreen.rainNoWeather':
    'No weather belongs to this job, so the plan knows no wet hours: it is kept in the log.',
  'daysscreen.rainStill': 'The rain stands in the log. No work moves because of it.',
  'daysscreen.noMove': 'Nothing has moved since the job was opened on this device.',
  'daysscreen.doneAlready': 'It is done, by the log.',
}

/** Shorter than a sentence. */
export const daysScreenPhrases: Readonly<Record<string, string>> = {
  'daysscreen.bar':
    '{name}, {fromAtMs} to {untilClock}, {names}{certainty, select, none {} other {, {certainty}}}',
  'daysscreen.coatShort': 'C{coat, number}',
  'daysscreen.strip': '{zone}: {hours} of hours that can take paint',
  'daysscreen.handsDay': '{hours}',
  'daysscreen.tableTitle': 'What is what in {file}?',
  'daysscreen.tableColumnOf':
    '{name, select, none {Column {at, number}} other {{name}, column {at, number}}}{first, select, none {} other {, from {first} on}}',
  'daysscreen.tableColumn': 'Column {at, number}',
  'daysscreen.tableRow': '{row, select, none {{text}} other {Line {row}: {text}}}',
  'daysscreen.heatTable': 'Skin of each side, {when}',
  'daysscreen.reach':
    '{fromAtMs} to {untilAtMs}, {count, plural, one {one hour} other {# hours}}{typical, select, yes {, a typical year laid on these dates} other {}}',
  'daysscreen.gap': '{fromAtMs} to {untilAtMs}',
  'daysscreen.moreGaps': '{count, plural, one {one more} other {# more}}',
  'daysscreen.sun': 'Sun and sky on the level, at most {mostWPerM2}',
  'daysscreen.dewAt': 'Skin over dew, least at {atClock}',
  'daysscreen.skinOf': 'skin of {zone}',
  'daysscreen.chart':
    'Air {airLeastC} to {airMostC}, dew {dewLeastC} to {dewMostC}, skin {skinLeastC} to {skinMostC}',
  'daysscreen.rain':
    'Rain in {count, plural, =0 {no hour} one {one hour, {rainMm}} other {# hours, {rainMm} in all}}{chances, plural, =0 {} one {; in one hour it may} other {; in # hours it may}}{unknown, plural, =0 {} one {; one hour is not known} other {; # hours are not known}}',
  'daysscreen.rainChance': '{chanceShare} chance',
  'daysscreen.windChart':
    '{known, plural, =0 {Wind is not known} other {Wind {leastMps} to {mostMps}{unknown, plural, =0 {} one {; one hour is not known} other {; # hours are not known}}}}',
  'daysscreen.wind': '{windMps}, {knots, number} kn{from, select, none {} other { from {from}}}',
  'daysscreen.knotsKey': '{knots, number} kn',
  'daysscreen.whyBar': '{name}, {fromAtMs} to {untilClock}',
  'daysscreen.whyHour': '{zone}, {fromAtMs}: {verdict}',
  'daysscreen.zoneWork': '{zone}{count, plural, =0 {: nothing on these days} other { ({count, number})}}',
  'daysscreen.rainHad':
    '{kind, select, fell {falls {atMs}} chance {{chanceShare} chance, {atMs}} unknown {not known from {atMs}} other {none}}',
  'daysscreen.rainNeeded': 'none until {untilAtMs}',
  'daysscreen.movedBy':
    '{by, select, edit {by an edit} elsewhere {by an edit on another device} log {by the log} other {by other weather}}, {atClock}',
  'daysscreen.overDew': '{leastK} over dew',
  'daysscreen.between': '{leastC} to {mostC}',
  'daysscreen.windHad': '{hadMps}',
  'daysscreen.windNeeded': 'at most {neededMps}',
  'daysscreen.wetSinceHad': '{hadHours}',
  'daysscreen.wetSinceNeeded': 'at least {neededHours}',
  'daysscreen.hotSunHad': '{hadK} over air',
  'daysscreen.hotSunNeeded': 'at most {neededK} over air',
  'daysscreen.darkHad': '{hadHours} from daylight',
  'daysscreen.darkNeeded': 'daylight or lamps',
  'daysscreen.eveningHad': '{hadHours} past it',
  'daysscreen.eveningNeeded': 'done by then',
  'daysscreen.atMost': 'at most {mostShare}',
  'daysscreen.atLeast': 'at least {leastK}',
  'daysscreen.until': 'until {untilAtMs}',
  'daysscreen.from': 'from {fromAtMs}',
  'daysscreen.begins': 'begins {fromAtMs}',
  'daysscreen.weeks': '{fromDate} to {toDate}',
  'daysscreen.shift': '{name}, {days} {from} to {until}',
  'daysscreen.dayHours': '{people, plural, one {one person} other {# people}}, {hours}',
}
