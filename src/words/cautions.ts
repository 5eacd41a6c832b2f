/**
 * Cautions as sentences: what, why, what to do. Plain words of our own; none of them outranks the product’s own
 * safety sheet, the rules of the place, or a licensed trade.
 */

const materials: Readonly<Record<string, string>> = {
  'caution.isocyanate':
    'The hardener of this paint holds isocyanates. They can leave a person allergic for life, through the lungs or the skin, and fumes and wet film give no warning. Brush or roller only, never spray it here; skin covered, eyes covered, the mask its safety sheet names, air moving, nobody else near. What the product’s safety sheet asks for comes first.',
  'caution.sensitisedPerson':
    'Someone on this job is allergic to isocyanates, and paint with isocyanates is planned. Even a trace can bring on a dangerous attack. Keep that person away while it is mixed, painted, wet and sanded, or choose another paint, and ask a doctor before any change.',
  'caution.isocyanateTraining':
    'Somebody who is to use isocyanate paint has no valid training on record. In the European Union, training comes before professional use of paint with more than {contentShare} of free isocyanate, and is renewed after {renewYears} years. Train first and write the date down; elsewhere the local rules decide.',
  'caution.styrene':
    'Polyester, vinylester and gelcoat give off styrene until they have cured. It harms nerves and hearing, burns, and is heavier than air. Draw air through from one side to the other, wear a vapour mask that fits, keep flames and sparks out, and do not sleep aboard. The limit that counts is in the safety sheet and the local rules.',
  'caution.peroxide':
    'The catalyst is a peroxide: a drop in the eye can blind, and it feeds fire. Put goggles on before the bottle is opened, have water to rinse with in reach, measure in plastic, keep it apart and cool. A splash is rinsed at once and for a long time, then seen by a doctor; the rest is in its safety sheet.',
  'caution.peroxideMix':
    'Catalyst never meets acetone, and never meets the accelerator on its own: either can explode. Stir accelerator into the resin first when it is not in already, and catalyst last. A spill is soaked up as its safety sheet says, with nothing that burns, and goes outside.',
  'caution.leftovers':
    'A mixed pot that is left over heats itself: it can smoke, burst into flame and set the shed alight. Do not put it in the bin. Spread it thin, or set it outdoors on bare ground away from everything until it is cold and hard, then dispose of it as the local rules say.',
  'caution.epoxy':
    'Uncured epoxy and its hardener can make skin allergic, and the allergy stays. So can the dust of epoxy that is not cured yet. Gloves and sleeves on, change gloves when they are soiled, wash with soap and never with solvent, and sand only what is hard. The product’s safety sheet goes further.',
  'caution.solventVapour':
    'Vapour of thinner and paint makes the head swim, harms with time, and burns. It sinks and gathers low. Let air through, lids on, the mask the safety sheet names, and no flame or spark in the same air.',
  'caution.flashPoint':
    'The air is close to the temperature at which this product gives off vapour that a spark can light. Wait for a cooler hour, or clear the air from below and keep every flame, heater, switch and battery out of it. If neither is certain, do not open the can; the safety sheet gives its flash point.',
  'caution.closedSpace':
    'In lockers, cabins and bilges vapour gathers faster than it leaves, and there is little air. Blow fresh air in before and during work, switch the battery off, have someone outside who looks in, and come out at the first headache. Where local rules call it a confined space, they decide who may go in.',
  'caution.eyeSplash':
    'Paint, thinner and resin splash when they are poured and stirred, and on a ladder they fall on the face. Glasses stay on from the first lid to the last; know where the eye wash is. If something gets in, rinse long and see a doctor with the safety sheet in hand.',
}

const dusts: Readonly<Record<string, string>> = {
  'caution.dust':
    'Sanding dust of paint and filler stays in the lungs. Sand with the vacuum on and a particle mask that seals, not in wind, and gather the dust before it blows on. What the paint holds decides how much more is needed.',
  'caution.laminateDust':
    'Grinding laminate throws fine glass. It itches, cuts eyes and goes deep into lungs. Mask with the finest particle filter, tight goggles, sleeves taped to gloves, vacuum at the tool, others out of the way; wash in cold water before anything else.',
  'caution.dryPowder':
    'Light filler powder, silica and bead hang in the air when they are poured. Wear a particle mask and glasses, tip slowly and low, and wet the powder in before stirring fast. The bag’s safety sheet says what the powder is.',
  'caution.lead':
    'Old boat paint may hold lead, red, orange, yellow and white most of all, and old gelcoat may too. Lead dust harms children above all. Test before sanding; if it is there or not known, no dry sanding without a sealed vacuum, change and wash before going home, no children near, and the local rules on lead apply.',
  'caution.antifouling':
    'Antifouling is poison made to leach: copper, and organotin on some old boats. Never sand it dry. Wet it, scrape or sand wet with skin and eyes covered, catch all of the sludge and hand it in where the local rules say.',
}

const bodies: Readonly<Record<string, string>> = {
  'caution.powerTool':
    'Sanders and grinders deafen slowly and cut at once. Ears and eyes covered, both hands on the tool, cable behind, plug out when the disc is changed. Stop when hands go numb.',
  'caution.staging':
    'Work over {heightM} from the ground is done from staging with a rail, not from a ladder with a pot in one hand. Falls beside a boat are onto concrete. Build it for the whole run before the paint is mixed, tie it to nothing that holds the boat, and follow the rules of the yard.',
  'caution.heat':
    'Over {airC} a person in suit and mask overheats before noticing. Start early, drink often, rest in the shade each hour, and send anyone home who is dizzy or stops sweating; that needs a doctor at once.',
}

const wastes: Readonly<Record<string, string>> = {
  'caution.wipes':
    'Used solvent wipes go on giving off vapour. Put them straight into a closed metal bin that does not leak, marked for solvent wipes, without free liquid in it. In the United States they leave within {mostDays}; elsewhere the local waste rules say when and how.',
  'caution.oilyRags':
    'Rags with one-part paint or drying oil can catch fire by themselves when they lie in a heap. Hang them flat and single outdoors until stiff, or drown them in water in a closed tin, and do it before leaving. The can says how they are thrown away.',
  'caution.waste':
    'Nothing of this goes down a drain or onto the ground: not paint, not thinner, not the water of wet sanding. Mix only what is needed, let leftovers cure or keep them closed, and take liquid and dust where the yard and the local rules say.',
  'caution.drips':
    'Rolled paint flies and drips farther than it seems. Move cars and covers of other boats {distanceM} away, look at where the wind goes, and tell the neighbours on the hard before the first coat.',
}

const standing: Readonly<Record<string, string>> = {
  'caution.standCover':
    'Never tie a cover, tent or line to a stand. Wind in the cover pulls the stand out, and the boat comes down on whoever is beside it. Tie to the boat itself, to the ground or to weights, and take a cover down before a gale.',
  'caution.standMove':
    'Only the yard moves a stand, a prop or a block. One moved wrongly drops the boat. Where a pad hides the work, ask the yard, keep everybody clear while it is shifted, and do that patch afterwards.',
  'caution.standCheck':
    'Stands settle and loosen after wind, rain, frost, and work aboard. Walk round and look before each day’s work; if a pad is loose, a leg has sunk or a chain is slack, stay off and out from under, and call the yard.',
  'caution.fuelTank':
    'A saw or grinder into a fuel tank, a fuel line or the vapour round them kills. Find out where tank and lines run and mark it on the skin before the first cut; set a depth stop, switch the battery off, air the bilge, have an extinguisher in reach. Not sure where the tank is: do not cut. Emptying and gas-freeing a tank is for people licensed to do it.',
  'caution.unventedFlame':
    'A heater that burns in the room lights the vapour of solvent, styrene and uncured epoxy, uses up the air, and makes water: about {waterPerGas} times the weight of the gas, which lands on the paint as dew. Take it out, or use heat whose flame and flue are outside. While anything is open or curing, no flame.',
  'caution.wetFloorPower':
    'Water on the floor and mains tools together can kill. Only sockets behind a residual-current breaker that has been tested today, plugs and joints off the floor, low voltage or battery tools where there are any. Mains wiring is for an electrician.',
  'caution.wetFloorDust':
    'Do not wet a floor with antifouling, lead or copper dust on it: it washes into the ground and the harbour. Vacuum first. Water against dust is for a clean floor, damp and not in puddles, and only with air dry enough for it.',
  'caution.drains':
    'Drains masked for the day are opened every evening. One night’s rain behind the tape fills cockpit and bilge, and a boat that takes on water leans on its stands. Count the tapes on and count them off.',
  'caution.neighbours':
    'People live and work near this boat, and dust, vapour and noise reach them. Tell them what happens on which day, work when the wind is away from open windows, stop for children, and keep to the hours and limits of the place.',
  'caution.leaveAlone':
    'Some things are left alone: hull identification number, builder’s plate, transducer face, anodes. Photograph and mask them; do not sand, fill or paint them. A number that cannot be read brings trouble with the authorities, a painted transducer goes deaf, a painted anode protects nothing.',
  'caution.structure':
    'This may go deeper than the skin: transom or bottom core, a stringer, cracks through both skins, damage near a tank, a chainplate, a mast step or a lifting point. Filler would hide it and the boat could fail at sea. Stop there, leave it open, and have a surveyor look before going on.',
}

/** ICU messages by caution code. */
export const cautions: Readonly<Record<string, string>> = {
  ...materials,
  ...dusts,
  ...bodies,
  ...wastes,
  ...standing,
}
