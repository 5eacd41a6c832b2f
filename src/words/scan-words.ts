/** Sentences about a hull that comes from a 3D scan: its size, its marks, its sections, and the steps on the sheet Boat. */

const axis = '{way, select, across {to the side} other {up or down}}'

export const scanWords: Readonly<Record<string, string>> = {
  'boat.scanUnitGuessed':
    'The file does not say its unit. In {unit} the boat is {lengthM} long{others, plural, =0 {, and in no other unit would it be a boat} other {, but another unit would make a boat of it too}}. Say which it is.',
  'boat.scanScalePut':
    'The taped length of {tapedM} is {seenM} in the scan, so the scale is put right by {offShare}.',
  'boat.scanScaleFarOff':
    'The taped length of {tapedM} is {seenM} in the scan, {offShare} off, where 1 in a hundred is usual. It is put right; tape it once more, between the same two places.',
  'boat.scanScaleRefused':
    'The taped length of {tapedM} is {seenM} in the scan, which is more than {mostShare} off. Check the unit, the tape and both places.',
  'boat.scanScaleUnchecked':
    'No length was taped, so the scale of the scan is taken as it is. Scans are often 1 in a hundred off, which is 2 in a hundred of every area. Tape one long distance.',
  'boat.scanMarksTooFew':
    'It takes {needed, number} marks or more, two of them on the waterline: {count, plural, =0 {none is set} one {one is set} other {# are set}}, and the heights of {heights, number} are known.',
  'boat.scanMarksInLine':
    'The marks leave open how the boat lies. Add one on the centreline aft, and one on the waterline to the other side.',
  'boat.scanMarksNoFit':
    'No way of lying fits these marks. Look for one on the wrong place, or turn the scan the right way up, bow forward.',
  'boat.scanMarksUnchecked':
    'The marks fit exactly whatever they say, so a slip would not be seen. Set one more, such as the waterline amidships.',
  'boat.scanMarksDisagree':
    'The marks disagree by {rmsByTapeM}. One more mark on the waterline would say which one is wrong.',
  'boat.scanMarkDisagrees': `The mark “{mark}” is {residualByTapeM} off ${axis} against what all the others say. Set it again, or leave it out.`,
  'boat.scanNotSymmetric':
    'The two sides of the scan are not mirror images, so the centreline is taken from the marks alone. Crop away what is not hull, or say that one side was scanned.',
  'boat.scanMirrored': 'Only the {side} side was scanned. The other is taken as its mirror image.',
  'boat.scanNoiseLeft':
    'The surface is so rough that its area did not settle: it still moved by {lastChangeShare}. Areas are good to a few times that. Scan slower, in even light.',
  'boat.scanCrumbs':
    '{count, plural, one {One small loose piece was} other {# small loose pieces were}} left out.',
  'boat.scanNothingLeft': 'Nothing of the scan is left inside the box. Make the box larger.',
  'boat.scanSectionMissing':
    'There is no section at {xM}: the scan has a gap all the way round there. Scan that part again, or crop the scan to what belongs to the hull.',
  'boat.scanHolesBridged':
    'Holes in {stations, plural, one {one section} other {# sections}}, up to {widestM} wide, are bridged by straight lines. Look at the sections there.',
  'boat.scanSheerDrawn':
    'In {stations, plural, one {one section} other {# sections}} the scan ends below the sheer; the sides are drawn on straight, by {mostM} at most. Look at the sections there.',
  'boat.scanDeckCut': 'What turns inward over the sheer is taken for the deck and left out.',
  'boat.scanCornerFound':
    'A corner runs along the hull: {stations, number} of {of, number} sections show it by themselves, in the others it is followed.',
  'boat.scanTransomFound': 'The transom leans {angleRad} from plumb.',
  'scan.say':
    'A scan of the hull from a telephone or a scanner measures her better than any few sizes. Give it as STL, OBJ, PLY or GLB; it stays on this device.',
  'scan.from': 'The stations come from a scan: {from}',
  'scan.refused': 'The scan is not taken, and nothing has changed.',
  'scan.failed':
    'The scan cannot be worked on here: {text}. It may be too large for this device; thin it out and try again.',
  'scan.seen':
    'The scan has {triangles, number} triangles. {smoothed, select, yes {Smoothing took {takenOffShare} off its area, which was noise.} other {They are too large to tell noise from the hull, so none was taken out.}}',
  'scan.collapsed':
    '{count, plural, one {One triangle without any area was} other {# triangles without any area were}} left out.',
  'scan.repeated':
    '{count, plural, one {One triangle was there twice} other {# triangles were there twice}}; one of each is kept.',
  'scan.turned':
    '{count, plural, one {One triangle that faced the wrong way was} other {# triangles that faced the wrong way were}} turned round.',
  'scan.crowdedEdges':
    'At {count, plural, one {one edge} other {# edges}} three or more triangles meet, as where something stands against the hull.',
  'scan.twistedEdges':
    'Over {count, plural, one {one edge} other {# edges}} the surface changes the side that it faces.',
  'scan.notTwin':
    'Its two sides are not mirror images: crop away what is not hull, or say which side was scanned.',
  'scan.markSay':
    'Choose a mark and touch where it is, or type its place below. Three at least: the waterline at the stem, and aft on both sides. The scum line or the edge of old paint will do.',
  'scan.checkSay':
    'Tape one long distance on the boat. Without it the scale of a scan is often 1 in a hundred off.',
  'scan.cropSay':
    'Only what lies inside is taken for the hull: leave floor, stands and everything inside her out.',
  'scan.at': 'At {xM}, {zM} up.',
  'scan.hull':
    'She is {lengthM} long; the scan was made {factor} times as large, and {takenOffShare} of its area was taken off as noise.',
  'scan.deviation': 'Her two sides differ by {rmsByTapeM}.',
  'scan.cell':
    '{file}, {date}: {triangles, number} triangles, made {factor} times as large, {takenOffShare} of its area taken off as noise.',
}
