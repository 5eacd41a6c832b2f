/** What to do the minute something goes wrong: how it is known, what now, what then, what never. */

const people: Readonly<Record<string, string>> = {
  'mishap.eyeSplash': 'Thinner, catalyst, resin or paint has got into an eye.',
  'mishap.rinseEye':
    'Rinse at once with clean running water, lids held open, for at least {rinseMinutes}. Start within {withinSeconds}; the clock matters more than anything else here.',
  'mishap.lensesOut': 'Take contact lenses out while you rinse, if they come easily.',
  'mishap.callPoison': 'Let somebody else call the emergency or poison number, and go on rinsing.',
  'mishap.sheetAlong':
    'Take the product’s safety sheet along, and say whether it was catalyst: that is the worst.',
  'mishap.doctorAnyway': 'See an eye doctor the same day, even when it feels better.',
  'mishap.writeDown': 'Write down what, how much, when, and who was there.',
  'mishap.neverRub': 'Never rub the eye.',
  'mishap.neverNeutralise': 'Never put anything but water or eyewash into it.',
  'mishap.neverDriveSelf': 'Never drive yourself.',
  'mishap.unwell': 'Somebody is dizzy, sick, coughs, wheezes, or has a tight chest.',
  'mishap.outToAir': 'Bring them out into fresh air at once, upwind.',
  'mishap.callIfBreath':
    'Call the emergency number if breath is short, the chest is tight, or they are drowsy. With two-part paint that may be asthma and can come hours later.',
  'mishap.sitUp': 'Let them sit up and rest; on the side if they are not awake.',
  'mishap.clothesOff': 'Take off what is soaked, gloves too.',
  'mishap.stopPot': 'Close cans, stop the work, open the doors.',
  'mishap.stayWith': 'Stay with them for some hours: it can come back, also at night.',
  'mishap.noMoreExposure':
    'Whoever wheezed or got a rash from a two-part product does no more with it until a doctor has said so.',
  'mishap.neverGoInAfter':
    'Never go into a cabin or bilge after somebody who has dropped: call for help and for air.',
  'mishap.neverVomit': 'Never make somebody vomit who has swallowed solvent.',
  'mishap.neverBackToday': 'Never go back to the same work on the same day.',
  'mishap.onSkin': 'Resin, hardener, catalyst or thinner is on skin.',
  'mishap.soapWater':
    'Wash with soap and plenty of water, for {rinseMinutes} where it was catalyst or hardener.',
  'mishap.doctorIfBurn': 'See a doctor for burns, blisters or a rash; take the safety sheet along.',
  'mishap.neverThinnerOnSkin': 'Never wash skin with thinner: it carries the rest in.',
}

const fire: Readonly<Record<string, string>> = {
  'mishap.smoke': 'Something smokes, glows or burns: rags, a pot, dust in a bag, vapour.',
  'mishap.everyoneOut': 'Everybody out, and count heads.',
  'mishap.callFire': 'Call the fire brigade; say there are solvents and perhaps peroxide.',
  'mishap.smallOnly':
    'Only while it is small, with your back to the way out: foam, powder or CO₂ for solvent, a bucket of water for rags of drying oil.',
  'mishap.gasOff': 'Switch off at the main switch outside, if that is on your way.',
  'mishap.ragsApart':
    'Then look for the others: rags of the same kind flat outside or under water in a lidded metal bin.',
  'mishap.neverBackIn': 'Never go back in for things.',
  'mishap.neverWaterOnSolvent': 'Never put a jet of water on burning solvent: it spreads.',
  'mishap.spill':
    'Solvent, paint, resin or catalyst has been knocked over or has dripped where it should not.',
  'mishap.sparksOff': 'No switches, no flame, heaters off at the wall; everybody not needed goes out.',
  'mishap.airThrough': 'Open both ends: vapour lies low, in bilge and cockpit first.',
  'mishap.damSpill': 'Gloves and goggles on, then dam and soak it up with sand or mineral absorbent.',
  'mishap.catalystSpill':
    'Catalyst: mineral absorbent wetted with water, plastic shovel, outside at once. It heats up by itself.',
  'mishap.bilgeToo': 'Look whether it ran into the bilge, a drain or a neighbour’s boat or car.',
  'mishap.wasteOutside': 'Waste stands outside in an open or vented bin until the yard takes it.',
  'mishap.cleanSplashes': 'Wipe splashes off other boats and cars while they are fresh, and tell the owners.',
  'mishap.neverDrain': 'Never hose it into a drain or into the water.',
  'mishap.neverSawdust': 'Never soak up catalyst with sawdust, rags or paper: they can catch fire.',
}

const pot: Readonly<Record<string, string>> = {
  'mishap.potKicks': 'The pot gets hot, thick, smokes or strings.',
  'mishap.putDown': 'Stop, and put it down on something that does not burn.',
  'mishap.smokesLeave':
    'Smoke or flame already: leave it, everybody out, and call the fire brigade if it burns.',
  'mishap.potOutside':
    'Else carry it outside by the rim or on a tray, within {withinMinutes}, with mask and gloves on.',
  'mishap.spreadThin': 'If it still pours, spread it thin in a metal tray: thin layers stay cool.',
  'mishap.keepAway': 'Stay upwind, people and things that burn kept away.',
  'mishap.nextPotSmaller': 'Mix the next pot half as large, and set its clock when the parts meet.',
  'mishap.binWhenCold': 'Into the bin only when it is cold and hard all through.',
  'mishap.finishAtCorner': 'Go on only to the nearest corner or stripe, with a fresh pot.',
  'mishap.neverLid': 'Never put a lid on it, and never put it in a bin: the heat stays in.',
  'mishap.neverWaterInPot': 'Never pour water into it: hot resin spits, and two-part paint gives off gas.',
  'mishap.neverThinHotPot': 'Never thin a pot that goes off, nor add fresh paint to it.',
  'mishap.neverHold': 'Never hold it in the hand to see how hot it gets.',
  'mishap.potOnHull':
    'The paint drags, strings or goes dull in the tray, and some of it is on the hull already.',
  'mishap.wipeFresh':
    'Wipe off what was just put on, within {withinMinutes}, with the thinner of the sheet and clean cloths.',
  'mishap.freshTools': 'New roller, new brush, clean tray.',
}

const wet: Readonly<Record<string, string>> = {
  'mishap.runs': 'Sags, curtains or drops on an upright surface.',
  'mishap.tipOutRun': 'Within {withinSeconds}: one light stroke of a dry brush, upward, once.',
  'mishap.lessPaint': 'Load less on the roller; look at the last metre again before you go on.',
  'mishap.leaveTacky': 'Already tacky: leave it alone. It is put right when it is hard.',
  'mishap.shaveRun': 'When hard, after {sandWaitHours} or more, shave it with a sharp blade held flat.',
  'mishap.blockSpots': 'Block those places with {spotGrit}, wipe, and put on the next coat.',
  'mishap.neverSandSoft': 'Never sand a run that is soft under its skin: it tears out.',
  'mishap.neverThinnerOnBrush': 'Never dip the tipping brush in thinner.',
  'mishap.stopRolling': 'Stop putting paint on. Note where the wet edge is.',
  'mishap.craters': 'Round craters or eyes open in the wet film, down to the layer below.',
  'mishap.wipeWet':
    'Within {withinMinutes} wipe the coat off, wet, with the thinner of the sheet: two cloths, turned often.',
  'mishap.cleanAgain': 'Clean again for wax and silicone, 100 mm round every one, with new cloths.',
  'mishap.tryPatch': 'Try a hand’s width and watch it before you coat the rest.',
  'mishap.airThenAgain': 'Wiped off: let it air for {wipedWaitMinutes} at least, then coat again.',
  'mishap.belowCraters':
    'Too late to wipe: after {sandWaitHours} or more sand with {sandGrit} to below the craters, clean, and coat again.',
  'mishap.neverPaintOver': 'Never coat over it: it comes through.',
  'mishap.neverSilicone': 'Never help yourself with a drop of silicone or washing-up liquid in the pot.',
  'mishap.brushMarks': 'The brush drags, and its marks do not flow out within {withinSeconds}.',
  'mishap.stopTipping': 'Tip once and leave it; do not go back.',
  'mishap.coolSide': 'Go to the cool, shaded side, or stop for the day.',
  'mishap.thinnerCapful':
    'Thinner for brushing by the capful, within the sheet’s most; try it on glass first.',
  'mishap.smallerPatch': 'Shorter patches, two people: one rolls, one tips right behind.',
  'mishap.sandAllThenCoat':
    'When it can be sanded, after {sandWaitHours} or more, {spotGrit} all over, then the next coat.',
  'mishap.neverSecondTip': 'Never tip a second time: it marks.',
  'mishap.orangePeel': 'The film dries with the grain of the roller in it.',
  'mishap.tipBehind': 'Tip right behind the roller, within {withinSeconds}.',
  'mishap.newRoller': 'New roller sleeve, of a kind that stands the solvent.',
  'mishap.neverStretch': 'Never stretch the paint to reach the corner.',
  'mishap.lapMark': 'A ridge or dull band where wet paint met paint that had set.',
  'mishap.toNearestCorner':
    'Finish to the nearest corner, stripe or rub strake with what is in the pot, then stop.',
  'mishap.wholePanel': 'Coat the whole panel again, from one edge that hides a lap to the next.',
  'mishap.neverBrushEdge': 'Never work a wet brush into an edge that has set.',
  'mishap.dust': 'Nibs, hairs or insects stand in the film.',
  'mishap.pickWet': 'Large ones at once, with tweezers or a bit of tape; one tipping stroke over it.',
  'mishap.shutDust': 'Find where it comes from: sanding next door, a fan, a dry floor, clothes.',
  'mishap.wetSandNibs':
    'When hard, after {sandWaitHours} or more, wet-sand the nibs with {spotGrit}, rinse, dry, tack, and coat.',
  'mishap.neverBlow': 'Never blow compressed air over a wet film.',
  'mishap.rollerBits': 'Crumbs of foam, lint or dry skin from the roller lie in the film.',
  'mishap.freshPaintOnly': 'Clean tray, paint through a strainer, and more of it on the roller.',
  'mishap.rain': 'Drops fall on a coat that is still wet or soft.',
  'mishap.coverClear':
    'Shelter over it that hangs clear of the film, if that takes less than {withinMinutes}.',
  'mishap.potLid': 'Lids on cans that have no hardener in them yet; the mixed pot stands under a roof, open.',
  'mishap.letDropsDry': 'Let the water dry off by itself. Touch nothing.',
  'mishap.judgeDry':
    'Look at it when it is dry: gloss gone or pits mean sanding; one mark here and there means spots.',
  'mishap.sandThenAgain': 'After {sandWaitHours} or more sand with {sandGrit}, rinse, dry, and coat again.',
  'mishap.dryBeforeNext':
    'The next coat waits until the surface has been dry and clear of the dew point for an hour.',
  'mishap.neverWipeDrops': 'Never wipe drops off a wet film.',
  'mishap.neverTieStand': 'Never tie a cover to a stand.',
  'mishap.neverPlastic': 'Never let plastic sheet touch it: it marks, and sweats.',
  'mishap.dew': 'The film turns milky, dull or greasy, or water stands on it in the evening or the morning.',
  'mishap.keepAirMoving':
    'Doors open or shut, whichever keeps it drier; air moving, no warm wet breath of a heater.',
  'mishap.washBlush': 'Epoxy: wash the greasy film off with water and a pad, dry, before any sanding.',
  'mishap.polishOrSand':
    'After {sandWaitHours} or more: last coat, try to polish one place; else {spotGrit} all over and coat again.',
  'mishap.neverFlame': 'Never bring an unvented flame near: it makes water, and solvent burns.',
  'mishap.neverSolventBlush': 'Never take blush off with solvent or by sanding: it stays.',
}

const dry: Readonly<Record<string, string>> = {
  'mishap.soft': 'The film stays soft or sticky long after the hours of its sheet.',
  'mishap.whySoft': 'Find out why: cold, too thick, too little hardener, or not stirred to the bottom.',
  'mishap.warmThrough': 'Cold or thick: give it warmth without a flame, moving air, and time.',
  'mishap.tryNail': 'Press a finger nail into it in three places, morning and evening, and write it down.',
  'mishap.wrongMixOff':
    'Hardener wrong or forgotten: it never gets hard. Scrape it off and wipe with the thinner of the sheet.',
  'mishap.neverHardenerOnTop': 'Never brush hardener or catalyst on top.',
  'mishap.blisters': 'Small blisters or craters that burst open as the film dries.',
  'mishap.openBlisters': 'Press a few: hollow ones are opened, none is left closed.',
  'mishap.thinAndLater': 'Next time thinner coats, the full wait between them, and a skin out of the sun.',
  'mishap.peeling': 'The film comes off in flakes or sheets, with a clean side below.',
  'mishap.tapeTest': 'Press tape on around it and pull: everything that comes along has to go.',
  'mishap.backToSound':
    'Scrape back to where it holds, and feather that edge with {spotGrit}; where it comes off all over, take all of it off.',
  'mishap.primeBare': 'Bare places get the whole stack again, from the first primer.',
  'mishap.neverFillEdge': 'Never fill over an edge that lifts.',
  'mishap.missedSpot': 'A place was missed or shows through.',
  'mishap.insideWetEdge': 'Inside the wet edge, within {withinSeconds}: roll and tip it once more.',
  'mishap.elseMark': 'Beyond it: leave it, and mark the place on tape outside the film.',
  'mishap.nextCoatCovers': 'The next coat covers it; after the last one, coat that panel again.',
  'mishap.pinholes': 'Small holes that stay open, or bubbles that come up as the hull warms.',
  'mishap.markAll': 'Ring each one with a pencil under a low light.',
  'mishap.fillPinholes':
    'After {sandWaitHours} or more fill them, pressed in with a blade, then {spotGrit} and the coat again.',
  'mishap.fallingWarmth': 'Coat while the hull cools, not while it warms.',
  'mishap.neverBridge': 'Never hope that the next coat closes them: it bridges, and opens again.',
  'mishap.lifting': 'The coat wrinkles, crawls or comes up from the layer below.',
  'mishap.photo': 'Take a photo and write down which products, and the hours between them.',
  'mishap.stripSound':
    'After {sandWaitHours} or more take it off to the layer that is sound, {sandGrit} or coarser.',
  'mishap.rubTest': 'Rub the old layer with the thinner before anything else goes on it.',
  'mishap.barrier': 'Where it softens, a barrier coat comes between, or the old layer goes.',
  'mishap.missedWindow': 'The hours in which the next coat would bond by itself are over.',
  'mishap.noCoatYet': 'Put no coat on yet.',
  'mishap.readSheet': 'Read the sheet’s most hours again at the temperature it really had.',
  'mishap.keyAll': 'Sand all of it with {spotGrit}, wipe, and coat.',
  'mishap.neverTrustTack': 'Never trust that it still feels soft.',
}

const edges: Readonly<Record<string, string>> = {
  'mishap.tapeBleed': 'Paint has crept under the tape.',
  'mishap.wipeBleedWet':
    'Still wet: wipe along the line with a cloth just damp with thinner, over a finger nail or a card.',
  'mishap.pullBack': 'Pull the tape now if the coat is the last, slowly, back on itself.',
  'mishap.cutBack':
    'When hard, after {sandWaitHours} or more, cut it back with {spotGrit} on a small hard block along a fresh tape.',
  'mishap.touchIn': 'Touch in with the same batch and a fine brush.',
  'mishap.neverSolventCured': 'Never scrub a cured bleed with solvent: the edge goes first.',
  'mishap.tapePulls': 'Paint comes off with the tape, or the edge tears.',
  'mishap.stopPulling': 'Stop pulling.',
  'mishap.warmTape': 'Warm the tape with warm air, hand-warm, and pull back on itself at a flat angle.',
  'mishap.scoreEdge': 'Score the edge with a new blade, only through the film.',
  'mishap.feather':
    'After {sandWaitHours} or more feather the torn edge with {spotGrit} to where it holds; bare spots get their primer.',
  'mishap.neverYank': 'Never yank, and never use stronger tape on a coat that young.',
}

export const mishapWords: Readonly<Record<string, string>> = {
  ...people,
  ...fire,
  ...pot,
  ...wet,
  ...dry,
  ...edges,
}

export const mishapLabels: Readonly<Record<string, string>> = {
  'mishapName.eyeSplash': 'Something in an eye',
  'mishapName.unwell': 'Somebody feels unwell',
  'mishapName.onSkin': 'On skin',
  'mishapName.smoke': 'Smoke or fire',
  'mishapName.spill': 'Spill',
  'mishapName.potKicks': 'The pot goes hot',
  'mishapName.potOnHull': 'The pot went off on the hull',
  'mishapName.runs': 'Runs',
  'mishapName.craters': 'Craters, fish-eyes',
  'mishapName.brushMarks': 'Brush drags, marks stay',
  'mishapName.orangePeel': 'Orange peel',
  'mishapName.lapMark': 'Lap mark',
  'mishapName.dust': 'Dust or insects',
  'mishapName.rollerBits': 'Bits from the roller',
  'mishapName.rain': 'Rain on wet paint',
  'mishapName.dew': 'Dew, milky or greasy',
  'mishapName.soft': 'Stays soft',
  'mishapName.blisters': 'Blisters, solvent pop',
  'mishapName.peeling': 'Peeling',
  'mishapName.missedSpot': 'Missed spot',
  'mishapName.pinholes': 'Pinholes',
  'mishapName.lifting': 'Lifting, wrinkling',
  'mishapName.missedWindow': 'Too late for the next coat',
  'mishapName.tapeBleed': 'Paint under the tape',
  'mishapName.tapePulls': 'Tape pulls paint off',
  'mishapGroup.people': 'People',
  'mishapGroup.fire': 'Fire and spills',
  'mishapGroup.pot': 'Pot',
  'mishapGroup.wetFilm': 'While it is wet',
  'mishapGroup.dryFilm': 'Once it is dry',
  'mishapGroup.edges': 'Edges',
}
