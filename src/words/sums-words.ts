/** Sentences about the quick sums: the way to each figure, what to mind, and inputs that cannot be used. */

const inputs: Readonly<Record<string, string>> = {
  'sums.unknownSum': 'There is no quick sum called “{text}”. There are {known}.',
  'sums.unknownInput': '“{field}” is not an input of this sum. It takes {known}.',
  'sums.missing': '{field} is missing. Give a value for it.',
  'sums.notText': '{field} must be text. Write it as in the example.',
  'sums.notANumber': '{field} is not a number. Write it with its unit.',
  'sums.tooLong': '{field} has {length, number} characters; {atMost, number} are the most. Shorten it.',
  'sums.outOfRange':
    '{field} is {value}, which is out of range{over, select, none {} other {: it must be over {over}}}{atLeast, select, none {} other {, at least {atLeast}}}{atMost, select, none {} other {, at most {atMost}}}. Check the figure and its unit.',
  'sums.tooManyParts':
    '{field}: “{text}” has {parts, number} parts, and this sum takes two. Write it like 2:1.',
  'sums.badMoment':
    '{field}: “{text}” is not a date and time with its offset from UTC. Write it like 2027-06-21T14:00-04:00.',
  'sums.badPlace':
    '{field}: “{text}” is not a place on the globe. Give degrees up to {atMost, number} with {plus} or {minus}, such as {field, select, longitude {73.2 W} other {44.5 N}}.',
  'sums.badBearing':
    '{field}: “{text}” is not a bearing. Give degrees from true north, or a point such as SE.',
  'sums.badTable': '{field}: “{part}” is not a row of a table of times. Write rows like 15C:10h, 25C:6h.',
  'sums.badSense':
    '{field}: “{text}” is neither least nor most. Use least for a wait that must have passed, most for a limit.',
  'sums.unknownSolvent': 'The solvent “{text}” is not in the table. There are {known}.',
}

const dew: Readonly<Record<string, string>> = {
  'sums.dewMagnus':
    'Air of {airC} at {humidityShare} humidity drops its water at {dewPointC}, the dew point.',
  'sums.dewMargin':
    'The surface at {surfaceC} is {marginK} over the dew point of {dewPointC}; {limitK} is needed.',
  'sums.dewHumid':
    'The humidity of {humidityShare} is over {limitShare}, more than most products stand. Look at the data sheet before you go on.',
  'sums.dewFrost':
    'The dew point lies below freezing, so water settles as frost, from {frostPointC} down. Wait for warmer weather.',
  'sums.dewNoSurface':
    'Without the surface temperature there is no verdict. Measure the surface itself; it must be {leastSurfaceC} or warmer.',
  'sums.dewSurfaceWet':
    'The surface is at or under the dew point, so it is wet or about to be. Do not coat; wait until it is {leastSurfaceC} and dry.',
  'sums.dewSurfaceClose':
    'The surface is only {marginK} over the dew point and {limitK} is needed. Do not coat yet; wait until it is {leastSurfaceC}.',
  'sums.dewHoldsThroughout':
    'The margin is enough now, and it must stay so for the whole drying time. The surface must not fall under {leastSurfaceC}, evening included.',
}

const film: Readonly<Record<string, string>> = {
  'sums.spreadTheory':
    'Solids of {solidsShare} leave {dryFilmUm} dry at a spread of {theoreticalM2PerL}, nothing lost.',
  'sums.spreadPractical':
    'With {lossShare} lost to roller, tray and pot, {theoreticalM2PerL} becomes {practicalM2PerL}.',
  'sums.spreadVolume': '{areaM2} at {practicalM2PerL} take {volumeL} for one coat.',
  'sums.spreadNoLoss':
    'No loss is counted. By brush or roller {leastShare} to {mostShare} never becomes film; add it before you buy.',
  'sums.wetFilm':
    '{dryFilmUm} dry from solids of {solidsShare}, thinned by {thinnerShare}, needs {wetFilmUm} wet.',
  'sums.wetUnthinned': 'No thinner is counted. Thinned paint must go on wetter for the same dry film.',
}

const mix: Readonly<Record<string, string>> = {
  'sums.mixParts': '{readyMl} ready to use, thinned by {thinnerShare}, hold {partsMl} of base and hardener.',
  'sums.mixSplit':
    '{partsMl} at {ratio} parts to 1 are {baseMl} of base and {hardenerMl} of hardener, with {thinnerMl} of thinner.',
  'sums.mixTurned':
    'The ratio is taken as base to hardener: {hardener, number} parts of hardener to one of base. If the hardener is the small part, type it the other way round, {hardener, number}:1.',
  'sums.mixByVolume':
    'The ratio is by volume. A ratio by weight on the can is another one; do not mix up the two.',
  'sums.mixReadyVolume':
    'The {readyMl} are taken as ready to use, thinner included. If you meant base and hardener alone, take {otherPartsMl} of them, which make {otherReadyMl}.',
  'sums.mixAdditiveOnTop':
    'The {additiveMl} of beads or grit come on top of the {readyMl} and do not thin the mix. Stir them in last and keep stirring.',
  'sums.mixDensityMissing': 'To mix by weight, {field} is missing too. Take it from the data sheet.',
}

const catalyst: Readonly<Record<string, string>> = {
  'sums.catalystMass': '{catalystShare} of {resinG} is {catalystG} of catalyst.',
  'sums.catalystVolume': '{catalystG} at {densityKgPerM3} are {catalystMl}.',
  'sums.catalystDensity':
    'The density of the catalyst is taken as {densityKgPerM3}; bottles range from {leastKgPerM3} to {mostKgPerM3}. Weigh it, or read the density off its sheet.',
  'sums.catalystHigh':
    '{catalystShare} is more than the usual {leastShare} to {mostShare}: it cures hot, brittle and too fast to work. Stay inside the resin maker’s limits.',
  'sums.catalystLow':
    '{catalystShare} is less than the usual {leastShare} to {mostShare}: it may never cure through. Stay inside the resin maker’s limits.',
  'sums.catalystMakerLimits':
    'The resin maker’s least and most rule. Outside them it stays soft or cures too hot, whatever the weather.',
  'sums.catalystNeverForCold':
    'More catalyst is no answer to cold: the resin ends up weaker. Warm the work and the resin instead.',
  'sums.catalystNeverWith':
    'Catalyst must never meet acetone or neat accelerator: either can explode. Keep bottles apart, measure in plastic, wear goggles.',
}

const laminate: Readonly<Record<string, string>> = {
  'sums.plyResin':
    'Cloth of {weightGPerM2} in a laminate of {glassShare} glass takes {resinKgPerM2} of resin.',
  'sums.plyThickness':
    'Glass of {glassKgPerM3} and resin of {resinKgPerM3} together lie {thicknessMm} thick.',
  'sums.plyDensities':
    'Glass is taken as {glassKgPerM3} and cured resin as {resinKgPerM3}. Other resins differ a little.',
  'sums.plyGlassUnusual':
    '{glassShare} glass is not what laying up by hand gives, which is {leastShare} to {mostShare}. Check the figure.',
  'sums.bevelOuter':
    'A hole of {holeMm} in {thicknessMm} of laminate, ground back {ratio}:1, has a taper {bevelWidthMm} wide and is {outerDiameterMm} across.',
  'sums.bevelStep':
    '{bevelWidthMm} of taper over {plies, plural, one {# ply} other {# plies}} make each disc {stepMm} larger than the last.',
  'sums.bevelTurned': 'The ratio was typed as rise to run and is taken as {ratio, number} along to 1 deep.',
  'sums.bevelSteep':
    'A taper of {ratio}:1 is steeper than the usual {usualRatio}:1, so the patch holds less. Grind it longer where there is room.',
  'sums.bevelPlyOrder':
    'With polyester and vinylester the largest ply goes in first; with epoxy either order is used. Keep to the resin maker’s advice.',
  'sums.bevelMassMissing':
    'To give glass and resin, {field} is missing too. Give both cloth and glass share.',
}

const vent: Readonly<Record<string, string>> = {
  'sums.ventLel':
    'One litre becomes {vapourLitresPerLitre} litres of vapour, which can burn from {lelShare} in air ({table}). To stay under a quarter of that takes {quarterM3PerHour}, under a tenth {tenthM3PerHour}.',
  'sums.ventExposure':
    '{vapourM3PerHour} of vapour held to {limitPpm} parts in a million ({table}), with a room that mixes {mixing} times worse than perfectly, take {airM3PerHour}.',
  'sums.ventTablesDiffer':
    'Published tables put the limit at which it burns from {lowShare} to {highShare}. The larger amount of air is shown.',
  'sums.ventFromMemory':
    'A figure for {solvent} has no printed source at hand. Check it against the product’s safety sheet.',
  'sums.ventMixing':
    'The room is taken to mix {mixing} times worse than perfectly. Corners and lockers are worse; measure or move more air.',
  'sums.ventFireOnly':
    'The smaller figure only keeps the air from burning. To breathe it takes {factor} times as much.',
  'sums.ventNoFlame':
    'No flame, spark, heater or switch where solvent evaporates. Vapour sinks and gathers low; draw it off from the floor.',
  'sums.ventNotIsocyanate':
    'These figures are for solvent alone. No amount of air makes isocyanates safe: use the mask their safety sheet names.',
  'sums.ventSafetySheet':
    'The product’s safety sheet and the local rules come first. Take their figures where they ask for more.',
}

const sun: Readonly<Record<string, string>> = {
  'sums.sunPosition':
    'At {latitudeDeg} latitude, {longitudeDeg} longitude, on {momentAtMs} universal time, the sun stands {altitudeDeg} high, bearing {azimuthDeg}.',
  'sums.sunIncidence':
    'With the bow at {bowDeg}, each side is lit by how squarely it faces a sun {altitudeDeg} high, bearing {azimuthDeg}.',
  'sums.sunDown': 'The sun is down, so no side is lit.',
  'sums.sunPolar':
    'The sun {up, select, always {does not set} other {does not rise}} on that day at that place, so there is no sunrise and no sunset.',
  'sums.sunUpright':
    'Sides are taken as upright and nothing as standing in the way. Trees, sheds and flare change what is lit.',
}

const cure: Readonly<Record<string, string>> = {
  'sums.cureRow': 'The sheet gives {hours} at {airC}.',
  'sums.cureBetween': 'Between {lowHours} at {lowC} and {highHours} at {highC} lies {hours} at {airC}.',
  'sums.cureAbove': 'Above its warmest row, {highHours} at {highC}, {hours} is taken for {airC}.',
  'sums.cureBelow':
    'Below its coldest row, {lowHours} at {lowC}, {hours, select, none {no time can be given} other {{hours} is taken}} for {airC}.',
  'sums.cureOnePoint':
    'From {lowHours} at {lowC}, doubling for each ten degrees colder, comes {hours} at {airC}.',
  'sums.cureOneRow':
    'The sheet has one row, so a factor of {factor, number} for each ten degrees is assumed. Look for a second row.',
  'sums.cureStopped':
    'Below {lowC} the sheet promises nothing, so the clock is taken to stand still. Wait for warmth or heat the work.',
  'sums.cureHeldBelow':
    'Below {lowC} the sheet says nothing, so the limit is not stretched beyond its coldest row.',
  'sums.cureHeldAbove':
    'Above {highC} the sheet says nothing, so the wait is not shortened beyond its warmest row.',
  'sums.cureShortened':
    'Above {highC} the sheet says nothing, so the limit is shortened further, at least by a factor of {factor, number} for each ten degrees. Work faster or wait for a cooler hour.',
}

export const sumsWords: Readonly<Record<string, string>> = {
  ...inputs,
  ...dew,
  ...film,
  ...mix,
  ...catalyst,
  ...laminate,
  ...vent,
  ...sun,
  ...cure,
}
