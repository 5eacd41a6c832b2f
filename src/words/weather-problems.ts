/** Sentences about weather files, shelters and the limits of a paintable hour. */
export const weatherProblems: Readonly<Record<string, string>> = {
  'intake.fileTooLarge':
    'The file holds {sizeBytes} bytes; at most {mostBytes} are read. Cut it to the weeks you need.',
  'intake.binary':
    'This is not a text file. Choose EPW, the JSON of a forecast service, or save the weather as CSV in UTF-8.',
  'intake.empty': 'The file is empty. Choose a file with weather hour by hour.',
  'intake.jsonBroken': 'The JSON breaks off or has a fault in its form. Fetch the file again.',
  'intake.jsonUnknown':
    'This JSON is none of the forecasts that are read: those of Open-Meteo and MET Norway, and grid points and hourly forecast of the National Weather Service.',
  'intake.jsonNumber': '“{found}” at {at} is not a figure that can be read. Fetch the file again.',
  'intake.jsonTime': '“{found}” at {at} is not a time on the hour. Fetch the file again.',
  'intake.jsonOffset':
    'The file does not say how far its clock is from UTC ({at}). Fetch it again with a time zone.',
  'intake.jsonLengths':
    'The list {name} has {found, plural, one {# figure} other {# figures}} for {expected, plural, one {# hour} other {# hours}}. Fetch the file again.',
  'intake.unitUnknown': 'The unit “{found}” of {name} is not known. Fetch the file in metric units.',
  'intake.epwHead':
    'The first line does not say how far the clock of the station is from UTC. It must begin with LOCATION and have nine fields after it.',
  'intake.epwMinutes':
    'The row is for minute {found}; only whole hours are read. Take the file with one row an hour.',
  'intake.epwPartYear':
    'The file holds {rows} rows of years that do not join. A whole typical year has {yearRows}: fetch the file again.',
  'intake.typicalYear':
    'This is a typical year{count, plural, one { made of one year, {firstYear, number, ::group-off}} other { put together from # years, {firstYear, number, ::group-off} to {lastYear, number, ::group-off}}}: good for which season, no forecast of any day. It is laid over the dates of the job.',
  'intake.leapDayLeftOut':
    '{count, plural, one {# row} other {# rows}} of 29 February left out: a typical year has 365 days.',
  'intake.rainSeenOnly':
    'In {count, plural, one {# hour} other {# hours}} rain was seen and not measured; it counts as {rainMm}, which is assumed.',
  'intake.forecastThins':
    'From {fromAtMs} on the forecast speaks only every {stepHours}. The hours between are unknown; their rain is spread evenly.',
  'intake.humidityFromDew':
    'In {count, plural, one {# hour} other {# hours}} the humidity was worked out from air and dew point.',
  'intake.columnsSwapped':
    'Humidity stands in {name} and the temperature of the air in {other}, by their figures: the two columns are swapped.',
  'intake.airTooDamp':
    'With {name} in degrees Celsius the dew point would be over {dewC} in {count, plural, one {# hour} other {# hours}}, as it is nowhere on earth. They look like degrees Fahrenheit.',
  'intake.zoneAsked':
    'The times do not say how far their clock is from UTC. Name the time zone, for example Europe/Paris, or the offset of the clock, for example +01:00.',
  'intake.zoneUnknown': 'No time zone is called “{found}”. Write it like Europe/Paris or like +01:00.',
  'intake.datesAsked': 'In “{found}” either the day or the month may stand first. Say which.',
  'intake.unitAsked': 'The column “{name}” does not say its unit. Say in which unit it is.',
  'intake.unitNotOfColumn':
    'The unit “{found}” of the column “{name}” does not go with {as}. Say in which unit it is.',
  'intake.columnAsked':
    'No column is known to be {as, select, airC {the temperature of the air} humidityPct {the humidity} other {the time}}. Say which one it is.',
  'intake.dateNotRead': '“{found}” is not a date with a time of day like those of the other lines.',
  'intake.commasClash':
    'The line has {found, plural, one {# field} other {# fields}} where the head has {expected}: a comma parts the fields and stands in the figures too. Save the table with semicolons.',
  'intake.clockSkips':
    'The clock of {zone} skips {found}, and yet a line has that time: the logger was not put forward. Give the offset of its clock, for example +01:00, instead of the zone.',
  'intake.readingTwice':
    'The moment {foundAtMs} stands there twice with different figures, first in line {firstLine}. Take one of them out; where clocks go back, give the offset of the clock.',
  'intake.columnsTaken':
    'Taken as: {found}{zone, select, none {} other {; clock of {zone}}}{dates, select, none {} dmy {; day before month} mdy {; month before day} other {; year first}}.',
  'intake.columnsIgnored': 'Left out: {found}.',
  'intake.totalsBefore':
    'Rain and sun are taken to be of the time before their reading, as loggers count them.',
  'intake.thinned':
    '{count, plural, one {# reading} other {# readings}} in {hours, plural, one {# hour} other {# hours}}: the one nearest to each full hour counts.',
  'intake.hourOutOfRange':
    'The figure {found} in {name} at {foundAtMs} cannot be right: it must be from {least} to {most}.',
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
  'intake.jsonTwice':
    'The hour {foundAtMs} stands there twice with different figures, the second time at {at}. Fetch the file again.',
  'intake.jsonRepeated':
    'The hour {foundAtMs} stands there again with the same figures, at {at}; it was taken once.',
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
    'What the shelter does is assumed ({shelter}): wind at the hull {windShare} of the wind outside, air inside {airLagHours} and that in the boat {boatLagHours} behind. The skin is worked from what the roof or cloth lets through of the light and from how warm it is itself, by sun and night sky, its colour taken as light. A surface thermometer firms it up.',
  'climate.shelterFitted':
    'The air under the shelter ({shelter}) is fitted from {fittedHours} of the logger: it lags {airLagHours} behind, a clear noon makes it up to {fullSunK} warmer, and it holds {addedGPerM3} of water above the air outside. So worked, it is off the logger by {rmsK} and {rmsShare} humidity (root mean square). Assumed is still: wind at the hull {windShare} of the wind outside, air in the boat {boatLagHours} behind, the colour of the roof light.',
  'climate.loggerInOpen':
    'The boat stands in the open, where the air is that of the weather: the logger is not used.',
  'climate.loggerTypicalYear':
    'The weather is a typical year and not that of the days the logger hung there: the shelter stays assumed. Give weather that covers the days of the logger.',
  'climate.loggerTooShort':
    'Logger and weather have {hadHours} in common that both know; {neededHours} are needed to fit the shelter, past the first half day of the weather. It stays assumed. Give weather that covers the days of the logger, or look at the dates and the clock of its file.',
  'climate.loggerPoor':
    'No shelter of this kind gives what the logger read: the best is off by {rmsK} and {rmsShare} humidity. It stays assumed. See that it hangs in the shade where the boat is, and that its clock runs by the time of the place.',
  'climate.loggerWorse':
    'Fitted to the logger, the shelter would be off by {rmsK} and {rmsShare} humidity over the last third of its hours; as assumed it is off by {assumedRmsK} and {assumedRmsShare}. It stays assumed. A longer run of the logger may help.',
  'climate.shedRoom':
    'The shed is worked as {lengthM} by {widthM} and {heightM} high{size, select, told {} partly {, of which you told a part and the rest is assumed} other {, assumed from the size of the boat}}, walls and roof {walls, select, insulated {insulated} other {of plain sheet}}; its air is changed once an hour with the door shut and {open} times while it stands open, assumed.',
  'climate.shedHeated':
    'The shed is kept at {heatC}{heat, select, assumed {, assumed,} other {}} with {heater, select, electric {electric heat} vented {a heater that has a flue} unknown {dry heat, since nobody said what heats it} other {an open flame}}: up to {powerKw} in the weather at hand, as long as the heater can give it.',
  'climate.heaterSmall':
    'The heater is too small in {shortHours, plural, one {# hour} other {# hours}} of the weather at hand: with {mostKw} it is {coldestC} inside on {coldestAtMs}, where {heldC} is wanted. The hours are judged by what it reaches.',
  'climate.flameWater':
    'The open flame puts up to {waterL} of water an hour into the air of the shed and lifts the dew point by as much as {riseK}. Heat whose flame and flue are outside, or electric heat, adds none. No flame where solvent, styrene or uncured resin is in the air; the rules of the yard and the product’s safety sheet decide.',
  'climate.floorWater':
    '{waterL} dries off the floor in {dryHours} each day, assumed even, and lifts the dew point of the shed by up to {riseK}.',
  'climate.shedUnused': 'What is told of the shed is not used: the boat does not stand in one.',
  'climate.heaterNone': 'The shed counts as heated, but no heater is in it: it is worked as unheated.',
  'climate.heaterIdle':
    'A heater is told, but the shed is not one that is kept warm: it is worked as unheated. Make it a heated shed to have its heat counted.',
  'climate.doorHalf': 'Of the hours that the door stands open only one end is told: it is worked as shut.',
  'climate.heatHalf':
    'Of the hours that the shed is kept warm only one end is told: it is kept so all day and night.',
  'climate.limitAirLeast': 'The air is too cold: {hadC}, at least {neededC} is needed.',
  'climate.limitAirLeastUnknown': 'The air temperature is not known; at least {neededC} is needed.',
  'climate.limitAirMost': 'The air is too warm: {hadC}, at most {neededC} is allowed.',
  'climate.limitSkinLeast':
    'The surface itself is {hadC}; under {neededC} {effect, select, no {the film sets too slowly} other {it is a risk, as the sheet allows no colder air}}.',
  'climate.limitSkinMost':
    'The surface itself is {hadC}; over {neededC} {effect, select, no {solvent boils out and the film sets before it levels} other {it is a risk, as the sheet allows no warmer air}}.',
  'climate.limitHotSun':
    'The sun stands on this side and has warmed it {hadK} over the air; from {neededK} on it is a risk. Follow the shade round the boat.',
  'climate.limitDark': 'It is dark, {hadHours} from daylight, and no lamps are told of.',
  'climate.limitEvening':
    'The hour ends {hadHours} past the evening stop{effect, select, no {} other {, as it is taken where nobody set one}}.',
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
