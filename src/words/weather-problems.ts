/** Sentences about weather files, shelters and the limits of a paintable hour. */
export const weatherProblems: Readonly<Record<string, string>> = {
  'intake.fileTooLarge':
    'The file holds {sizeBytes} bytes; at most {mostBytes} are read. Cut it to the weeks you need.',
  'intake.notUtf8':
    'The text is not in UTF-8{found, select, utf16 { but in UTF-16} other {}}. Save it again as CSV in UTF-8.',
  'intake.binary': 'This is not a text file. Save the weather as CSV in UTF-8.',
  'intake.empty': 'The file is empty. Choose a CSV file with a header and one line for every hour.',
  'intake.noHeader':
    'There is no header. The first line after the remarks must name the columns, for example time,airC,humidityPct.',
  'intake.noRows': 'There is a header but no line with weather under it. Add one line for every hour.',
  'intake.columnUnknownNear':
    'The column “{name}” is not known; the nearest is {nearest}. Rename it or take it out. Known are {known}.',
  'intake.columnUnknown': 'The column “{name}” is not known. Rename it or take it out. Known are {known}.',
  'intake.columnTwice': 'The column {name} stands there twice. Take one of them out.',
  'intake.columnMissing': 'The column {name} is missing. Add it to the header and to every line.',
  'intake.columnEmpty': 'The column {name} holds no figure at all. Without it no hour can be judged.',
  'intake.airInFahrenheit':
    'Half of the air temperatures in {name} are over {median}. They look like degrees Fahrenheit; give degrees Celsius.',
  'intake.shareNotPercent':
    'No figure in {name} is over {greatest}. It looks like a share from 0 to 1; give per cent from 0 to 100.',
  'intake.lineTooLong':
    'The line is {length} characters long; at most {most} are read. In a table of hours no line is that long.',
  'intake.quotesOpen': 'A quotation mark in the line is not closed. Close it or take it out.',
  'intake.fieldCount':
    'The line has {found, plural, one {# field} other {# fields}} where the header has {expected}. Leave a field empty when its figure is not known.',
  'intake.endsMidRow':
    'The file ends in the middle of a line, after {found, plural, one {# field} other {# fields}} of {expected}. Fetch it again or take the last line out.',
  'intake.tooManyRows': 'The file has more than {most} lines. Cut it to the weeks you need.',
  'intake.timeWithoutOffset':
    'The time “{found}” does not say how far it is from UTC. Write 2027-04-01T06:00+02:00, or 2027-04-01T04:00Z.',
  'intake.timeNotRead': '“{found}” is not a time. Write 2027-04-01T06:00+02:00, or 2027-04-01T04:00Z.',
  'intake.numberNotRead':
    '“{found}” in {name} is not a number. Leave the field empty when the figure is not known.',
  'intake.decimalComma': '“{found}” in {name} has a decimal comma. Write a decimal point.',
  'intake.outOfRange':
    'The figure {found} in {name} cannot be right: it must be from {least} to {most}. Leave the field empty when it is not known.',
  'intake.notHourly':
    'The time {foundAtMs} is {offMinutes} off the hours of the first line. Only weather hour by hour is read.',
  'intake.hourTwice':
    'The hour {foundAtMs} stands there twice with different figures, first in line {firstLine}. Take one of them out; where clocks go back, check the offsets.',
  'intake.spanTooLong':
    'From the first hour ({fromAtMs}) to the last ({toAtMs}) is longer than {mostHours}. Check the years.',
  'intake.moreErrors':
    '{count, plural, one {There is # more error} other {There are # more errors}} like these.',
  'intake.moreNotes':
    '{count, plural, one {There is # more note} other {There are # more notes}} like these.',
  'intake.rowsSorted':
    '{count, plural, one {# line stood} other {# lines stood}} before an earlier hour; the lines were put in order.',
  'intake.hourRepeated':
    'The hour {foundAtMs} repeats line {firstLine} with the same figures; it was taken once.',
  'intake.gap':
    'There is no weather from {fromAtMs} to {toAtMs}. These hours are unknown, and no coat is planned in them.',
  'intake.figuresUnknown':
    '{count, plural, one {# line of {rows} has} other {# lines of {rows} have}} no figure in {name}. They count as unknown.',
  'climate.shelterAssumed':
    'What the shelter does is assumed ({shelter}): wind at the hull {windShare} of the wind outside, air inside {airLagHours} and skin {surfaceLagHours} behind, skin up to {nightDropK} under the air on a clear night. A surface thermometer firms it up.',
  'climate.heatingLeftOut':
    'The heater is not worked in yet: the shed is taken as unheated, which errs to the cold side.',
  'climate.limitAirLeast': 'The air is too cold: {hadC}, at least {neededC} is needed.',
  'climate.limitAirLeastUnknown': 'The air temperature is not known; at least {neededC} is needed.',
  'climate.limitAirMost': 'The air is too warm: {hadC}, at most {neededC} is allowed.',
  'climate.limitHumidity': 'The air is too humid: {hadShare}, at most {neededShare} is allowed.',
  'climate.limitHumidityUnknown': 'The humidity is not known; at most {neededShare} is allowed.',
  'climate.limitDewMargin':
    '{inHours, plural, =0 {The surface is} one {In # hour, with the film still fresh, the surface is} other {In # hours, with the film still fresh, the surface is}} too close to the dew point: {hadK} over it, {neededK} is needed.',
  'climate.limitDewMarginUnknown':
    '{inHours, plural, =0 {Nobody knows} one {For # hour on, with the film still fresh, nobody knows} other {For # hours on, with the film still fresh, nobody knows}} how far the surface is over the dew point; {neededK} is needed.',
  'climate.limitWetSince':
    'The surface {effect, select, risky {may have been} other {was}} wet and has been drying for {hadHours}; it takes {neededHours}.',
  'climate.limitWind':
    'The wind at the hull is {hadMps}; over {neededMps} {effect, select, no {no coat goes on} other {dust and lap marks are a risk}}.',
  'climate.limitWindUnknown': 'The wind is not known; up to {neededMps} all is well.',
  'climate.limitRain':
    '{inHours, plural, =0 {It rains} one {It rains in # hour, on a fresh film} other {It rains in # hours, on a fresh film}}: {hadMm}.',
  'climate.limitRainUnknown':
    '{inHours, plural, =0 {Nobody knows whether it rains} one {Nobody knows whether it rains in # hour, on a fresh film} other {Nobody knows whether it rains in # hours, on a fresh film}}.',
  'climate.limitRainChance':
    '{inHours, plural, =0 {The chance of rain is {hadShare}} one {In # hour, on a fresh film, the chance of rain is {hadShare}} other {In # hours, on a fresh film, the chance of rain is {hadShare}}}; from {neededShare} {effect, select, no {the hour is lost} other {it is a risk}}.',
}
