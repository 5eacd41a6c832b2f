/** Sentences about the hull: sizes that were assumed, and what is wrong with sizes and stations. */

const size = `{size, select,
  lengthOverall {length overall} lengthWaterline {length on the waterline} beam {beam} beamTransom {beam of the transom}
  draft {draft of the hull} freeboardStem {freeboard at the stem} freeboardMid {freeboard at the middle}
  freeboardStern {freeboard at the stern} deadrise {deadrise} deadriseTransom {deadrise at the transom}
  chineBeam {beam over the chines} chineHeight {height of the chine} flare {flare of the sides} stemRake {rake of the stem} other {size}}`.replaceAll(
  /\s+/g,
  ' ',
)

const assumedSizes: Readonly<Record<string, string>> = {
  'boat.lengthWaterlineAssumed':
    'The length on the waterline is taken as {valueM}, a share of the length overall. Measure it for better areas below the water.',
  'boat.lengthWaterlineWorked':
    'The length on the waterline works out as {valueM} from the rake of the stem.',
  'boat.stemRakeDisagrees':
    'The rake of the stem is given as {givenRad}, but the length on the waterline makes it {workedRad}. The lengths are used; check which is wrong.',
  'boat.beamTransomAssumed':
    'The beam of the transom is taken as {valueM}, a share of the greatest beam. Measure it across the top of the transom.',
  'boat.draftAssumed':
    'The depth of the hull below the waterline is taken as {valueM}, a share of the beam. Measure it without keel, skeg or drive.',
  'boat.draftWorked':
    'The depth of the hull below the waterline works out as {valueM} from deadrise and chine.',
  'boat.freeboardMidAssumed':
    'The freeboard at the middle is taken as {valueM}, a share of the one at the stem. Measure it: it decides the area of the topsides.',
  'boat.freeboardSternAssumed':
    'The freeboard at the stern is taken as {valueM}, a share of the one at the stem. Measure it: it decides the area of the topsides.',
  'boat.chineBeamAssumed': 'The beam over the chines is taken as {valueM}, a share of the beam. Measure it.',
  'boat.chineBeamWorked': 'The beam over the chines works out as {valueM} from the flare of the sides.',
  'boat.deadriseAssumed':
    'The deadrise at the middle is taken as {valueRad}. Lay a level on the bottom for the true angle.',
  'boat.deadriseTransomAssumed':
    'The deadrise at the transom is taken as {valueRad}. Lay a level on the bottom there for the true angle.',
  'boat.deadriseDisagrees':
    'The deadrise is given as {givenRad}, but draft and chine make it {workedRad}. The heights are used; check which is wrong.',
  'boat.flareDisagrees':
    'The flare is given as {givenRad}, but beam, chine and freeboard make it {workedRad}. Beams and heights are used; check which is wrong.',
  'boat.sizeNotReached': `The ${size} given, {wantedM}, does not go with the other sizes: the hull drawn from them has {drawnM}. Check which is wrong, or measure stations.`,
  'boat.angleNotReached': `The ${size} given, {wantedRad}, does not go with the other sizes: the hull drawn from them has {drawnRad}. Check which is wrong, or measure stations.`,
  'boat.shapeAssumed':
    'The shape of the hull between the given sizes is drawn by rule, so areas and lines are good to a few parts in a hundred. Measured stations would make them sure.',
}

const standing: Readonly<Record<string, string>> = {
  'boat.levelsTooFew':
    'How the boat stands is not known from {count, plural, one {one mark} other {# marks}}: it takes {needed, number}, such as the bow and the waterline aft on either side. Measure their heights over the floor.',
  'boat.levelsInLine':
    'The marks lie on one line, so nothing says how far the boat leans to the other side of it. Measure one to port and one to starboard, at least {leastM} off the line.',
  'boat.levelsNoFit':
    'No way of standing fits these heights. Look for a height in the wrong unit, or a mark on the wrong side.',
  'boat.levelsWithoutHeight':
    '{count, plural, one {One mark has no height} other {# marks have no height}} over the floor or below the laser, and {count, plural, one {is} other {are}} left out. Measure it.',
  'boat.laserHeightMissing':
    'How high the laser stands over the floor is not given, so heights are told against the laser. Measure it once with a tape.',
  'boat.levelsUnchecked':
    'Three marks fit exactly whatever they say, so a slip would not be seen. Measure a fourth, better a fifth.',
  'boat.levelsDisagree':
    'The four marks disagree by {rmsByTapeM}, more than a tape does. A fifth mark would say which one is wrong.',
  'boat.levelDisagrees':
    'The mark {name} is {residualByTapeM} off what all the others say. Measure it again, or leave it out.',
  'boat.standsSink':
    'Stands sink, and the yard moves them. Measure these heights again on the day a line is struck.',
  'boat.waterlineFromTraces':
    '{from, select, unknown {Nothing says what the waterline was taken from, so it is} other {A {from} is}} near the floating waterline, not on it: it moves with load and growth. Marks made afloat at the bow and both corners of the transom are sure.',
  'boat.girthsHelp':
    'Lay a tape on the skin, square to the centreline, from the sheer down. Five places a side measure the topsides, whatever the drawn shape says.',
  'boat.stationsHelp':
    '{count, plural, =0 {No station is measured. Three or more, with points from keel to sheer and the corners marked, replace the drawn shape by the real one.} one {One station; a hull needs three.} other {# stations.}} Half-breadth is from the centreline out, height from the waterline up.',
  'boat.stationPoints': 'At {at}, {count, plural, =0 {no point} one {one point} other {# points}}.',
  'boat.standingUnknown':
    'Nobody has measured how she stands. Heights over the floor of three marks or more, such as the bow and the waterline aft on either side, give every line its height over the floor as well.',
  'boat.standing':
    'She stands {trimRad} {bow, select, up {bow up} other {bow down}} and leans {heelRad} to {side, select, port {port} other {starboard}}; the waterline aft is {heightByTapeM} over the {over, select, laser {laser plane} other {floor}}. The marks agree to {rmsByTapeM}.',
}

const sizeFaults: Readonly<Record<string, string>> = {
  'boat.sizeNotNumber': `The ${size} is not a number. Give it with its unit.`,
  'boat.sizeOutOfRange': `The ${size} is {valueM}, but a boat like this has {leastM} to {mostM}. Check the figure and its unit.`,
  'boat.angleOutOfRange': `The ${size} is {valueRad}, but hulls have {leastRad} to {mostRad}. Check the figure and its unit.`,
  'boat.chineOutsideSection':
    'The chine comes out at {heightM}, outside the side of the hull, which runs from {keelHeightM} to {sheerHeightM}. Check draft, deadrise and beam over the chines.',
}

const stationFaults: Readonly<Record<string, string>> = {
  'boat.tooFewStations':
    'There {count, plural, =0 {are no stations} one {is only one station} other {are only # stations}}, and {needed, number} are needed. Measure more sections, or leave stations out and give the sizes.',
  'boat.stationNamedTwice':
    'The station {station} stands in the list twice, the second time at place {position}. Give each its own name.',
  'boat.stationNotNumber': 'The place of station {station} along the boat is not a number. Measure it again.',
  'boat.pointNotNumber':
    'Point {point} of station {station} has no usable {axis, select, y {half breadth} z {height} other {figure}}. Measure it again.',
  'boat.halfBreadthNegative':
    'Point {point} of station {station} has a half breadth of {halfBreadthM}. Measure from the centreline outward, so that it is never below zero.',
  'boat.stationUpsideDown':
    'Station {station} begins at {keelHeightM} and ends lower, at {sheerHeightM}. List its points from keel to sheer.',
  'boat.heightsFall':
    'Point {point} of station {station} lies at {heightM}, below the point before it at {previousHeightM}. List the points from keel to sheer, or mark a chine where the side steps down.',
  'boat.stationTooFewPoints':
    'Station {station} has {count, plural, =0 {no points} one {one point} other {# points}}, and {needed, number} are needed. Measure more points on it.',
  'boat.stationNoBreadth':
    'Station {station} has no breadth, yet it is not at an end of the boat. Check its half breadths.',
  'boat.stationsAtSamePlace':
    'The stations {station} and {other} both stand at {xM}. Move one of them or leave it out.',
  'boat.stationOutOfOrder':
    'Station {station} at {xM} is out of order beside {neighbour} at {neighbourXM}. List stations from the stern forward.',
  'boat.noBeam': 'No station has any breadth. Check that half breadths were entered, not only heights.',
  'boat.halfBreadthJumps':
    'The half breadth {halfBreadthM} at point {point} of station {station} does not fit its neighbours, which suggest about {expectedM}. Look for a slip of the pen or a misplaced decimal.',
  'boat.sheerJumps':
    'The sheer at station {station} stands at {heightM}, while its neighbours suggest about {expectedM}. Measure it again.',
  'boat.knucklesDiffer':
    'Station {station} has {count, plural, one {# corner} other {# corners}}, the others {expected, number}. Mark the same chines and rails on every station.',
  'boat.knuckleAssumed':
    'Station {station} has no corner marked, so it is put where the stations beside it have theirs. Mark the chine on it.',
  'boat.keelFlatAssumed':
    'The sections begin beside the centreline, so the bottom is taken as flat across {widestM} there. If not so, add a point on the centreline.',
}

const cut = '{cut, select, bottom {upper edge of the bottom} other {edge of the stripe}}'

const surface: Readonly<Record<string, string>> = {
  'boat.stemOpen':
    'The foremost station {station} at {xM} is still {halfBreadthM} off the centreline, so the bow is left open. Add a station at the stem head.',
  'boat.nothingBelowWaterline':
    'No part of the hull lies below the waterline; the lowest point stands at {lowestM}. Measure heights from the floating waterline, minus below it.',
  'boat.aftmostNotZero':
    'The aftmost station stands at {xM} instead of zero. Measure along the boat from its aftmost point.',
  'boat.cutNotNumber': `The height of the ${cut} is not a number, so it is left out. Give it with its unit.`,
  'boat.cutAboveSheer': `The ${cut} would stand at {heightM} at station {station}, over the sheer at {sheerHeightM}. Lower it.`,
  'boat.chineMissing':
    'The bottom should end at the chine, but the hull has none, so it ends at the waterline. Mark the chine on the stations, or give a height.',
  'boat.bootTopClosed':
    'The stripe from {lowM} to {highM} has no height left, so it is left out. Raise its upper edge.',
  'boat.ruleDiffers':
    'A rule of thumb gives {ruleAreaM2} for the {zone}, where the surface has {areaM2}. {takes, select, box {It takes the bottom for a box as wide as the boat and as deep as she draws; a bottom that rises from keel to chine has less.} middling {Its factor is that of a boat of middling rise of floor; a flatter or steeper one differs.} flat {It takes the length on deck and knows nothing of the depth.} deck {It knows no cockpit and no side decks: it is the area inside the sheer that it stands for.} other {It takes the sides for plumb and the sheer for level.}} Buy by the surface, and measure once where the two are far apart.',
  'boat.areaFarFromRule':
    'The {zone, select, topsides {topsides come} bottom {bottom comes} other {deck comes}} to {areaM2}, while a common rule of thumb gives {ruleAreaM2}. Check the sizes before you buy.',
}

export const boatWords: Readonly<Record<string, string>> = {
  ...assumedSizes,
  ...standing,
  ...sizeFaults,
  ...stationFaults,
  ...surface,
}
