/** Label and help of each cell that tells of the boat, its zones, findings and hardware. */
import type { FieldWords } from './field-words.ts'

const photo = ['Photo', 'Number or name of the photo, so that it is found again in the file.'] as const
const place = ['Where exactly', 'In your own words, so that somebody else finds it.'] as const
const alike = ['How many', 'How many of the same; the other figures are then for one of them.'] as const

export const boatFields: FieldWords = {
  boat: {
    kind: ['Kind of boat', 'Tells the usual shape where sizes are missing.'],
    bilge: ['Bilge', 'Hard chine: the bottom meets the side in a corner. Round bilge: it runs round.'],
    lengthOverall: ['Length of the hull', 'Stem to transom on deck, without pulpit, platform and outboard.'],
    lengthWaterline: ['Length on the water', 'Along the line she floats on, stem to stern.'],
    beam: ['Beam', 'The greatest breadth, measured at the sheer.'],
    beamTransom: ['Beam at the transom', 'Breadth of the transom at the sheer.'],
    draft: [
      'Depth of the hull',
      'From the waterline down to the hull itself, without keel fin, skeg and drive.',
    ],
    freeboardStem: ['Freeboard at the stem', 'From the waterline plumb up to the sheer, at the stem.'],
    freeboardMid: ['Freeboard at the middle', 'From the waterline plumb up to the sheer, half way along.'],
    freeboardStern: ['Freeboard at the stern', 'From the waterline plumb up to the sheer, at the transom.'],
    deadrise: ['Deadrise', 'How steeply the bottom rises from keel to chine, half way along.'],
    deadriseTransom: [
      'Deadrise at the transom',
      'How steeply the bottom rises from keel to chine, right aft.',
    ],
    chineBeam: ['Breadth at the chine', 'From chine to chine, half way along.'],
    chineHeight: [
      'Height of the chine',
      'Above the waterline half way along; with a minus when it lies below.',
    ],
    flare: ['Flare', 'How far the side leans out from plumb, half way along.'],
    stemRake: ['Rake of the stem', 'How far the stem leans from plumb between waterline and sheer.'],
    transomRake: [
      'Rake of the transom',
      'How far it leans from plumb; with a minus when its foot is farther aft than its top.',
    ],
    laminate: [
      'Laminate',
      'Whether there is core between the skins, and where: it decides how holes are closed.',
    ],
    fuel: ['Fuel', 'What is in the tank: it decides what must be made safe before any saw.'],
    tankPlace: ['Tank and fuel lines', 'Where they run, so that nobody drills or grinds into them.'],
    scan: ['Scan', 'The file that the stations were taken from, its day, and what was made of it.'],
  },
  stations: {
    name: ['Station', 'Its number or name, as chalked on the hull.'],
    x: ['From the stern', 'Level distance of the station forward of the aftmost point of the hull.'],
  },
  points: {
    station: ['Station', 'The station this point lies on.'],
    halfBreadth: ['Half-breadth', 'Level distance from the centreline out to the hull.'],
    height: ['Height', 'Above the waterline; with a minus when the point lies below.'],
    knuckle: ['Corner', 'Set where the section has a corner here, such as the chine.'],
  },
  stance: {
    date: ['Measured on', 'Stands sink: heights are measured again on the day of striking.'],
    laserHeight: [
      'Laser over the floor',
      'Height of the laser plane over the floor, where a laser was used.',
    ],
    waterline: [
      'Waterline taken from',
      'Marks made afloat are sure; a scum line or an old paint edge is near it, and counts as assumed.',
    ],
  },
  levels: {
    name: ['Mark', 'What it is, so that somebody else finds it: bow at the sheer, scum line aft to port.'],
    fromStern: ['From the stern', 'Level distance forward of the aftmost point of the hull.'],
    offCentre: ['Off centre', 'To port of the centreline; with a minus to starboard.'],
    height: ['Over the waterline', 'With a minus below it; leave it empty for a mark on the line itself.'],
    overFloor: ['Over the floor', 'Measured plumb from the floor up to the mark.'],
    belowLaser: ['Below the laser', 'Or measured from the laser line down to the mark.'],
  },
  girths: {
    fromStern: ['From the stern', 'Level distance forward of the aftmost point to where the tape lies.'],
    side: ['Side', 'Port, starboard, or both when the sides are alike.'],
    sheerToWater: ['Sheer to waterline', 'Along the skin, square to the centreline.'],
    waterToChine: [
      'Waterline to chine',
      'On along the skin; with a minus where the chine is above the waterline.',
    ],
    chineToKeel: ['Chine to keel', 'On along the skin to the keel.'],
  },
  zones: {
    name: ['Name', 'What you call this part of the boat; it stands on every sheet.'],
    kind: [
      'Kind of zone',
      'Topsides, transom, bottom and boot-top are measured on the hull; others need corners, an area, or length and width.',
    ],
    side: ['Side', 'Port, starboard, or both taken together.'],
    upTo: [
      'Up to',
      'Where the bottom or the boot-top ends above. A tape line struck for it under Marks goes before this.',
    ],
    area: ['Area', 'When you have measured it yourself: only the corners of a deck zone go before it.'],
    length: ['Length', 'Of a flat zone, where it is easier to measure than the area.'],
    width: ['Width', 'Of a flat zone, its mean where it tapers.'],
    count: alike,
    lapPlaces: [
      'Places where a lap hides',
      'Along each run of it, about evenly apart: a port, a gate, the end of a rub strake. A run too long for crew and pot is broken there.',
    ],
    perimeter: ['Edge to mask', 'Length all round that gets tape, when you have measured it.'],
    existing: ['On it now', 'What the old surface is. A rag with solvent tells one-part from two-part.'],
    solventRub: [
      'Rub with solvent',
      'Leave the rag under film for 10 min, in three places. Film that gums or comes off is one-part or lacquer.',
    ],
    sandedWith: ['Sanded with', 'Grit whose scratches are in it, where somebody sanded it before: P60.'],
    texture: ['Surface now', 'Smooth, moulded pattern, or grit bonded on: it decides how it is sanded.'],
    shelter: ['Where it is done', 'Loose parts may go indoors, where rain and dew do not matter.'],
    behind: [
      'Behind the laminate',
      'A tank or an engine keeps the skin before it cold for hours after the air is warm; foam cuts it off from the air inside. A coat is judged by the coldest part.',
    ],
  },
  findings: {
    zone: ['Zone', 'The part of the boat it was found on.'],
    kind: ['What it is', 'It decides the cautions and how it is drawn on the lines plan.'],
    name: ['In your words', 'As you would tell the owner.'],
    count: ['How many', 'How many of the same; hours and product are for all of them.'],
    size: ['Size', 'Diameter of a hole, length of a crack; of one of them.'],
    area: ['Area', 'What it covers altogether.'],
    hours: ['Hours to put right', 'Person-hours for all of it, grinding and filling included.'],
    sheet: ['Filler or resin', 'The product it is filled with; its litres go on the shopping list.'],
    volume: ['How much of it', 'Mixed, for all of it.'],
    place,
    fromStern: [
      'From the stern',
      'Level distance of its middle forward of the aftmost point; places it on the lines plan.',
    ],
    height: [
      'Height',
      'Of its middle above the waterline, with a minus below; for the topsides and the transom.',
    ],
    offCentre: [
      'Off the centreline',
      'Of its middle, to port; with a minus to starboard. For decks and the transom.',
    ],
    photo,
  },
  fittings: {
    name: ['Name', 'What it is: cleat, hatch hinge, rub rail.'],
    kind: ['Kind', 'Number, plate, transducer and anodes are left alone, whatever else is planned.'],
    zone: ['Zone', 'The part of the boat it sits on.'],
    count: alike,
    plan: ['What happens to it', 'Off and on again, off for good, or left and masked.'],
    hoursOff: [
      'Hours to take off',
      'Person-hours for one of them. Nuts behind a liner take several times as long.',
    ],
    hoursOn: ['Hours to put on', 'Person-hours to bed and bolt one of them.'],
    reach: ['How the nut is reached', 'Free, through a hatch, behind a liner, or bonded in.'],
    fasteners: ['Holes it leaves', 'For one of them; each is sealed or filled.'],
    bedding: ['Bedded on', 'The sealant it goes back on.'],
    perimeter: ['Edge to mask', 'All round one that stays on.'],
    place,
    photo,
    bag: ['Bag', 'Label of the bag that its bolts go in.'],
  },
}
