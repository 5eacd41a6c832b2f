/** Sentences about deck zones that were measured as shapes, and about pads. */

const shapes: Readonly<Record<string, string>> = {
  'boat.deckTooFewCorners':
    '{name} has {count, plural, =0 {no corners} one {one corner} other {# corners}}, and a shape needs {needed, number}. Add the others, or take its corners away.',
  'boat.deckNoArea':
    'All corners of {name} lie on one line, so they enclose nothing. Measure how far each lies off the centreline.',
  'boat.deckCrosses':
    'The edge of {name} crosses itself: from corner {first} to {firstTo}, and from corner {second} to {secondTo}. Put the corners in order round the zone.',
  'boat.deckOverCentre':
    '{name} is mirrored, yet its corner {corner} lies {byM} over the centreline. It is taken on the centreline; give one side only, or do not mirror it.',
  'boat.deckCamberTooHigh':
    'The camber of {name} is given as {riseM} over a width of {widthM}, more than any deck has. It is taken as flat; measure from a batten laid across.',
  'boat.deckOpeningTooLarge':
    'The openings of {name} add up to {openM2}, but it has {areaM2}. They are not taken off; check their sizes and how many they are.',
  'boat.deckOpeningOutside':
    'Opening {opening} of {name} reaches out of the zone, so it is not taken off. Check its corners.',
  'boat.deckOpeningUnusable':
    'The corners of opening {opening} of {name} enclose nothing, or cross. It is not taken off; give at least three, in order.',
  'boat.deckTooFewOffsets':
    '{name} has {count, plural, one {one offset} other {# offsets}}, and {needed, number} are needed. Measure its width at one more place.',
  'boat.deckOffsetTwice':
    '{name} has two offsets at {xM} from the stern. Take one away, or put it where it was measured.',
  'boat.deckOffsetInside':
    'At {xM} from the stern the inner edge of {name} is {innerM} off the centreline, farther out than its outer edge at {outerM}. Swap them.',
  'boat.deckOutsideSheer':
    'Corner {corner} of {name}, {xM} from the stern, lies {byM} outside the sheer{count, plural, one {} other { (# corners do)}}. Measure it again, or the beam of the boat.',
}

const plan: Readonly<Record<string, string>> = {
  'surfaces.shapeNotRead':
    '{name} has corners or offsets, but its kind is measured in another way. They are not used; choose a kind of deck zone, or take them away.',
  'surfaces.shapeByEye':
    'The shape of {name}, {areaM2}, was put by eye or rests on a guess. Lay a tape and type in its figures before you buy.',
  'surfaces.cornersBesideOffsets':
    '{name} has both corners and offsets. The corners are used; take one or the other away.',
  'surfaces.areaBesideShape':
    '{name} is measured by its shape as {areaM2}; the {givenM2} typed in as its area are not used. Take the area away, or the shape.',
  'surfaces.areaTakenAsIs':
    'The area of {name} is typed in as {areaM2} and taken as it stands: camber, slope, upstand and openings are not counted on top. Give corners, or length and width, in its place.',
  'surfaces.upstandWithoutHeight':
    'The upstand of {name} has a length but no height, so it is left out. Measure how high it stands.',
  'surfaces.padsLeftOut':
    '{count, plural, one {One pad hides} other {# pads hide}} {areaM2} of the hull, left out of what is painted now. Paint there once the yard has moved the stands, or in the slings.',
  'surfaces.padAssumed':
    'The size of {name} is taken as {areaM2} for each pad. Measure one, if the paint is to be exact.',
  'surfaces.padsHideNothing':
    '{name} hides a part of the hull that is not among the zones, so nothing is taken off for it.',
  'surfaces.padsCover':
    '{name} would hide {padsM2} of {areaM2}, which leaves nothing. Pads are not taken off; check how many they are and how large.',
}

export const deckWords: Readonly<Record<string, string>> = { ...shapes, ...plan }
