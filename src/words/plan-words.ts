/** Sentences about the plan: surfaces, marks, repairs, build-ups, quantities, steps, hours, days and pours. */

const surfaces: Readonly<Record<string, string>> = {
  'surfaces.noHull':
    'No hull can be drawn: there are neither stations nor length, beam and freeboard at the stem. Give those three sizes.',
  'surfaces.zoneWithoutArea':
    'The area of {name} is not known, so nothing is planned for it. Give its area, or its length and width.',
  'surfaces.girthsTooFew':
    'The girths are not used yet: a side needs {needed, number} complete ones at different places, and {complete, number} measure it. Fill in every part of the girth.',
  'surfaces.areaFromShare':
    'The area of {name} is taken as {areaM2}, a share of the area inside the sheer. Measure its length and width.',
  'surfaces.areaAssumed': 'The area of {name} is a guess of {areaM2}. Measure it before you buy.',
  'marks.noHull':
    '{name}: without a hull there is nothing to strike it on. Give length, beam and freeboard at the stem.',
  'marks.line': 'Tape on both sides {tapeM}; the upper edge of {zone}.',
  'surfaces.stripeMissing':
    '{name} should end at the boot stripe, and none is struck. Give its heights under Marks, or strike a tape line for {name}.',
  'marks.overFloor': '{name} over the {over, select, laser {laser plane} other {floor}}, as she stands:',
  'marks.panelWithoutSize': '{name}: the size of the field is missing. Give its length and width.',
  'repairs.byHand':
    'Recipes are not worked out yet: hours and material of {count, plural, one {one finding} other {# findings}} are taken as they were given.',
  'repairs.mayBeStructural':
    '{name} may go deeper than the skin. Open it up and look; if it reaches core, stringer or both skins, stop and call a surveyor.',
  'repairs.fittingHoursAssumed':
    'The hours for {count, number} of {of, number} kinds of hardware are guesses. Time the first ones and write the hours down.',
}

const buildUps: Readonly<Record<string, string>> = {
  'buildup.figuresAssumed':
    'For {name}, {count, plural, one {one figure is} other {# figures are}} taken from the generic sheet: {figures}. Copy them from the can or its data sheet.',
  'buildup.noSpread':
    'How far {name} spreads is not known, so no amount can be worked out. Give its coverage, or its solids and dry film.',
  'buildup.sheetContradicts':
    'The sheet of {name} contradicts itself: {dryFilmUm} dry from its solids goes {theoreticalM2PerL}, yet it promises {spreadM2PerL}, which leaves {reachedUm}. Look at the label again; the plan buys by its coverage.',
  'buildup.thinnerOver':
    '{name} is thinned by {thinnerShare}, more than the {mostShare} {grade, select, undefined {its sheet allows} other {of “{grade}” its sheet allows}}. Film and gloss suffer and it may run; thin less.',
  'buildup.thinnerUnder':
    '{name} is thinned by {thinnerShare}; {grade, select, undefined {its thinner} other {“{grade}”}} wants at least {leastShare} of it. It may drag and show the brush.',
  'buildup.thinnerNone':
    'The sheet of {name} lists no thinner for {method} at {airC}. The share of the layer is taken; add the grade, or choose another way of putting it on.',
  'sanding.rung': '{grit} over {areaM2}, {workHours} of work.',
  'buildup.dryingUnknown':
    'How long {name} dries is not known, so the plan gives it no time. Enter family and role of the product, or its waits.',
  'buildup.scratchesUnderDark':
    'Under {name}, which is dark, the scratches of {grit} show. Go on to {finer} before it.',
  'buildup.scratchesShow':
    'The scratches of {grit} show through {name}: all its coats together are {filmUm} dry. Go on to {finer} before it, or lay more.',
  'buildup.solventOver':
    '{name} as put on holds {vocKgPerM3} of solvent; {rules} allows {limitKgPerM3} in a coating of its kind ({vocWhat}). {isOverUnthinned, select, true {It is over that without any thinner.} other {Thin it by no more than {thinnerMostShare}.}} Which limit holds for you is for local law to say.',
  'buildup.windowsOverlap':
    'Two recoat windows of {name} at {airC} lie over each other: one opens {fromH} after the coat, the one before is still open then. The shortest and longest wait of the sheet count until this is mended.',
  'buildup.windowsUneven':
    'The recoat windows of {name} at {airC} are not those at {otherC}: each temperature needs the same stretches, sanded alike. The shortest and longest wait of the sheet count until this is mended.',
  'buildup.windowsSanded':
    '{name} has a recoat window without sanding after one that asks for it, at {airC}. The shortest and longest wait of the sheet count until this is mended.',
  'buildup.windowsOdd':
    'A recoat window of {name} comes later at {airC} than at {colderC}, though it is warmer. It is taken as written; check it against the sheet.',
  'buildup.sheetNeverOpen':
    'The longest wait of {name} is over before its shortest at {airC}: no coat can go on unsanded there. Look at the sheet again; sanding is planned.',
  'buildup.ratioByWeightAlone':
    '{name} is mixed {byWeight} by weight, and its densities are missing, so parts by volume cannot be worked out. Add both densities, or the ratio by volume.',
  'buildup.ratiosDisagree':
    'The sheet of {name} contradicts itself: {mix} by volume is not {byWeight} by weight with its densities, which would be 1 to {worked, number} by volume. The ratio by volume counts; look at the label again.',
  'quantities.repairsWithoutMaterial':
    '{count, plural, one {One repair has} other {# repairs have}} no filler or amount given, so none is bought for {count, plural, one {it} other {them}}. Add product and volume to the findings.',
}

const steps: Readonly<Record<string, string>> = {
  'steps.ring':
    'The step {step} waits for itself through others, so it can never start. Check the order of the layers.',
  'steps.secondHand':
    '{name}: the nut is {reach}, which takes one hand inside and one outside, and two are never at the boat together. It is planned for one; borrow a second hand for it.',
  'steps.coatAgain':
    'By the log {step} was lost and {wiped, select, true {wiped off wet} other {has to be sanded off}}. It is planned again, with paint for one more coat; look at what is left in the cans.',
}

const hours: Readonly<Record<string, string>> = {
  'conditions.noWeather':
    'No weather is given, so paintable hours are not judged and every clock runs at {airC}. Add an hourly weather file to the job.',
  'conditions.weatherGap':
    'The weather has a gap of {hours} from {fromAtMs}. Those hours count as unknown; use a file without gaps.',
  'conditions.typicalYear':
    'The weather is a typical year{source, select, none {} other { ({source})}} and no forecast: it tells what the season is like, not what a day will be. Fetch a forecast when the first coat is near.',
  'conditions.beyondForecast':
    'The forecast reaches to {endAtMs}. After that the hours are those of a typical year{source, select, none {} other { ({source})}}, joined to it over {fadeDays}: what the season is like, not what a day will be. Each hour is told with how many of the 21 days about its date would be good for it. Fetch a newer forecast before a coat that stands there.',
  'conditions.forecastPast':
    'The forecast ended on {endAtMs}, before the first day of work, so the hours are those of a typical year{source, select, none {} other { ({source})}}. Fetch a newer forecast.',
  'conditions.typicalTwice':
    'The weather of the job is a typical year itself, so the other typical year has nothing to do. Give a forecast as the weather, and the typical year for the time after it.',
  'conditions.typicalDated':
    'What is given as the typical year{source, select, none {} other { ({source})}} is weather with dates, so nothing goes on where the weather ends. Give a whole typical year, as an EPW file holds it.',
  'conditions.typicalElsewhere':
    'The typical year{source, select, none {} other { ({source})}} is of a place {distanceKm, number} km ({distanceMiles, number} miles) away: its season may be another. Take one of a station near the boat.',
  'conditions.openSkin':
    'Each side of the boat has a skin of its own, worked from sky, wind and {light, select, measured {the sun and sky that the weather tells} parted {the sunlight that the weather tells} cloud {a sun seen through the cloud that the weather tells} clear {a sun in a clear sky, as the weather tells neither light nor cloud} other {no sun, as nobody knows where the boat stands}}. Assumed: a light colour that takes in {absorbedShare} of the sun, {thicknessMm} of laminate on the sides, ground that throws back {groundShare} of the light, no shadow of neighbours. A darker product is judged against heat and sun in its own colour. A thermometer on the skin firms it up.',
  'conditions.bowUnknown':
    'Nobody said which way the bow points, so no sun warms the sides: they count as colder than they are. Add the bearing.',
  'conditions.printThrough':
    '{name}, {colour}: in the sun of the weather at hand ({hottestAtMs}) the skin gets to {hottestC}, {verdict, select, over {far past} other {past}} where polyester laminates begin to soften, {softensC}. The weave and the edges of repairs may print through the gloss. {remedy, select, colour {A colour that takes in at most {coolShare} of the sun stays under it; else let} other {Let}} repairs cure warm and for long before the last block, and ask the maker of the resin what it stands.',
  'conditions.placeUnknown':
    'Latitude and longitude of the place are missing, so neither sun nor dark is reckoned with. Add them.',
  'conditions.readingTaken':
    'Read at the boat at {readAtMs}{air, select, none {} other {, air {airK} off the forecast}}{dew, select, none {} other {, dew point {dewK} off}}{skin, select, none {} other {, skin of the boat {skinK} off}}: the hours after it are shifted by as much, less from hour to hour, until {fadedAtMs}. How long a reading holds is assumed; read again later.',
  'conditions.readingFar':
    'At {readAtMs} the {what, select, skin {skin} other {air}} was read as {readC}, where the forecast has {expectedC}: left out{looks, select, fahrenheit {, as it looks like degrees Fahrenheit called Celsius} other {}}. Read again, with the unit.',
  'conditions.readingDry':
    'At {readAtMs} the humidity was read as {readShare}, where the forecast has {expectedShare}: left out, as it looks like a share from 0 to 1 called per cent. Read again, in per cent.',
  'conditions.lampsAssumed':
    'Nobody said whether lamps light the work: {lamps, select, yes {taken as lit, so paint may go on in the dark} other {taken as unlit, so no paint goes on between civil dusk and dawn}}. Say it at the place.',
  'conditions.stopAssumed':
    'No evening stop is set: in the open the last {stopHours} before sunset are a risk, as is common practice, since the skin cools fast under a clear evening sky. Set the time at the place.',
  'conditions.skinFromAir':
    '{names}: no limits for the surface itself are given, so colder or warmer than the air may be it is a risk, and from {allowanceK} further on no coat goes on. The sheet may tell both.',
  'calendar.nobodyWorks':
    'No shift is given, so nobody works and nothing can be planned. Add who works when.',
  'calendar.unknownTimeZone':
    'The time zone {timeZone} is not known, so times are shown in universal time. Write it like Europe/Paris.',
}

const days: Readonly<Record<string, string>> = {
  'days.unplaced': `The step {step} finds no place in the calendar: {reason, select,
    needs {a step it waits for has none either}
    clock {its waiting time never ends at the temperatures to come}
    people {nobody who may do it works enough hours}
    together {it takes more hands than are ever there at the same time}
    horizon {no run of suitable hours is long enough}
    other {no reason is known}}. {reason, select,
    needs {Place that one first.}
    clock {Warm the shed or choose a product for colder air.}
    people {Add people or longer shifts.}
    together {Let shifts overlap, or choose a way that one can do.}
    horizon {Add shelter, people or longer shifts, or choose a later season.}
    other {Look at what it waits for.}}`.replaceAll(/\s+/g, ' '),
  'days.windowShut':
    'Before {step} the time in which {after} can be coated without sanding runs out ({shutAtMs}). The plan adds a sanding; bring the coats closer together to save it.',
  'days.riskyHours':
    '{count, number} of {of, number} coats fall in hours that are risky for them. Look at the hours of each before you mix, and keep a day in hand.',
  'days.beyondWeather':
    '{count, number} of {of, number} coats fall in hours without weather, so nobody knows whether they can be done then. Plan again with a newer weather file.',
  'days.beyondForecast':
    '{count, number} of {of, number} coats stand on hours behind the forecast, as a typical year has them. The least sure is {step}: one of its hours would be good on {goCount, number} of {likeCount, number} such days. Plan again with each newer forecast.',
  'days.late':
    'The boat cannot be afloat on {wantedDate}; {possibleDate} is the first day possible. Add people or shelter, or agree on the later day.',
}

/** What would do instead, from the largest run that cannot be laid: each by itself. */
const runRemedies =
  'What would do, each by itself: {pairPours, plural, =0 {} one {a helper, two lay it in {pairMinutes} from one pour; } other {a helper, two lay it in {pairMinutes} from # pours chained; }}{pieces, plural, =0 {} =1 {} other {runs of at most {pieceM2}, # of them, each ending where a lap hides; }}'
const potRemedies =
  '{cooler, select, some {an hour at {coolerC} or less; } other {no hour the product may be used in is cool enough; }}a slower grade whose pot life at {airC} is at least {neededHours}.'

const pours: Readonly<Record<string, string>> = {
  'pours.potTooShort': `At {airC} the pot life is {potHours}, too short to mix, stand and lay pours into each other over {areaM2}. ${runRemedies}${potRemedies}`,
  'pours.thinnerNone':
    'No thinner on the sheet of {name} is for the {airC} of that hour. Lay it in another hour, or ask the maker for a grade that is.',
  'pours.mixedAlone':
    'One person lays {count, number} pours into each other and has to stop {mixMinutes} for each while the edge dries. Measure the parts of every pour into lidded cups before the first, and mix at the end of a section; better, have somebody mix.',
  'pours.runTooWideAlone': `One person alone cannot keep a wet edge over {areaM2}; {mostM2} is about the most. ${runRemedies}with neither, it will show a lap.`,
  'pours.runTooLongAlone': `One person alone has to mix in the middle of {areaM2}, and a wet edge at {airC} does not wait the {mixMinutes} that takes, but about {edgeMinutes}. ${runRemedies}${potRemedies}`,
  'pours.sectionTooSlow':
    'A section {widthM} wide takes {sectionMinutes} at this pace, and the edge beside it stays wet for about {edgeMinutes} at {airC}. Take sections of at most {narrowerM}, add hands, or lay it in a cooler hour.',
}

const whole: Readonly<Record<string, string>> = {
  'plan.headline':
    '{name}: {hours} of work on {count, plural, one {one day} other {# days}}, from {startDate} to {endDate}; the slings may come on {launchDate}.',
  'plan.headlineNoLaunch':
    '{name}: {hours} of work on {count, plural, one {one day} other {# days}}, from {startDate} to {endDate}.',
  'plan.headlineOpen':
    '{name}: {hours} of work are placed, but {count, plural, =0 {there are no days to work on} one {one step finds no place} other {# steps find no place}}. See the notes below.',
  'plan.stamp':
    'Planned {madeAtMs} with version {app} from job {work}, weather {weather}, catalogue {catalogue}.',
  'hours.horizon':
    'The forecast reaches to {untilAtMs}. After that the hours go over into a typical year, and from {fromAtMs} on they are that year alone. Beside each run stands on how many of the 21 days about its date its least sure and its surest hour would be good.',
  'hours.summary':
    '{hours, number} of {ofHours, plural, one {# hour is} other {# hours are}} good for a coat; dew and rain must stay off for {leastHours} to {mostHours} after it, as the film dries in the air it gets.',
}

export const planWords: Readonly<Record<string, string>> = {
  ...surfaces,
  ...buildUps,
  ...steps,
  ...hours,
  ...days,
  ...pours,
  ...whole,
}
