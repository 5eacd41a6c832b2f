/** Short texts that stand in lists and tables: steps of work, marks, and amounts in stores. Not whole sentences. */

const what = '{count, plural, =1 {{name}} other {# × {name}}}{zone, select, none {} other {, {zone}}}'
const edge = '{lengthM, select, none {} other {, {lengthM} of edge}}'
const paper = '{grit, select, none {} other { with {grit}}}'

const steps: Readonly<Record<string, string>> = {
  'pour.covers':
    '{count, plural, =1 {{where, select, port {Port side} starboard {Starboard side} stern {Stern} bow {Flat bow} piece {Piece} other {All of it}}{of, plural, =1 {} other {{where, select, whole {, stretch {nr, number} of {of, number}} piece { {nr, number} of {of, number}} other {, run {nr, number} of {of, number}}}}}, {part, select, yes {{areaM2} of its {runM2}} other {{areaM2}}}{wet, select, yes {, wet into the pour before} other {}}.} other {# runs, {areaM2} in all.}}',
  'lay.way':
    '{way, select, runs {Lay each run in one go, from the stern to the stem, and end it where the lap hides.} side {Lay the whole side in one go, from the stern to the stem; the other side back from the stem to the stern.} transom {The transom is a panel of its own: from one corner to the other.} panel {Each panel in one go, from its far edge to the near one.} part {A loose part lies flat and is laid in one go.} other {Lay outward: from the far end to the way out, so that nobody has to tread on it.}}{sun, select, lit { At that hour this side stands in the sun: begin at dawn, or wait until it is in shade.} shaded { At that hour it lies out of the sun.} portFirst { Port lies out of the sun: lay it first.} starboardFirst { Starboard lies out of the sun: lay it first.} unknown { Which side stands in the sun is not known: the job does not say where the bow points.} other {}}',
  'lay.tools':
    '{tool, select, brush {} other {Roller: {solvent, select, strong {closed-cell foam or a nap of 3 mm that is made for two-part, a fresh one for each coat; roll it on tape first.} water {short nap or coarse foam, as the texture wants it.} other {fine foam or a nap of 3 mm; roll it on tape first.}} {solvent, select, strong {Tray of metal or with a liner that the solvent leaves alone.} other {}}}}{tool, select, roller {} brush {Brush: badger or another natural bristle, dry.} other { Brush: badger or another natural bristle, dry.}}',
  'lay.floor':
    '{floor, select, damp {Against dust: vacuum, let it settle, damp the floor without puddles, but never where copper or lead dust lies, then tack with a cloth made for this paint.} dry {Against dust: vacuum, let it settle, tack with a cloth made for this paint. Leave the floor dry: the air is too damp, or the skin too near to its dew point.} other {Against dust: vacuum, let it settle, tack with a cloth made for this paint. Damp the floor only with skin 5 K over dew and humidity up to 65 %, and never where copper or lead dust lies.}}',
  'lay.hands':
    '{crew, select, two {One rolls ahead, the other tips behind with a dry brush, once, in one direction to the end,} other {Roll, put the roller down and tip at once with a dry brush, once, in one direction to the end,}} {overlapM} back into the patch before. No thinner on the brush.',
  'lay.sections':
    '{count, plural, one {One section} other {# sections}} of about {widthM}, {sectionMinutes} each{hasEdge, select, true {; the edge takes the next for {edgeMinutes}} other {}}.',
  'lay.looks':
    '{looks, select, poorAtFirst {A first coat that still looks poor is as it should be: it shows what is below. Do not go over it again.} lastGloss {When it is right the marks of the brush run out within a minute or two and the reflection is whole. A sag is brushed out while it is wet, later it is sanded.} primer {When it is right it is even and matt, and shows every pinhole: mark them.} texture {When it is right the pattern is even and nothing smooth shines through.} other {When it is right no ridge is higher than the board takes off.}}',
  'pour.thinner': 'Thinner for {airC}: {grade}.',
  'pour.tray':
    '{count, plural, one {Into the tray at once.} other {Into the tray in # fillings of {each, number} ml.}}',
  'pour.again':
    '{times, number} such cups, one after the other{timed, select, true {, about every {everyMinutes}} other {}}. Spread each at once, never in a heap.',
  'pour.stir': 'Bead sinks: stir again every {stirMinutes}.',
  'pour.clocks':
    'Mix at {mixClock}, use from {fromClock}{untilClock, select, none {} other { until {untilClock}}}, at {airC}.',
  'daysscreen.goesOver': 'goes over from {fromAtMs} to {untilAtMs}',
  'daysscreen.verdictLike': '{verdict}, good on {least, number} of {of, number} such days',
  'daysscreen.originSpread': '{origin}; air on like days {lowC} to {highC}',
  'hours.likeDays': 'good on {least, number} to {most, number} of {of, number} such days',
  'days.likeDays': 'good on {least, number} of {of, number} such days',
  'step.survey': 'Survey: photographs all round, tap, press, old coating, list of hardware',
  'step.references': 'Set reference marks for waterline and stripe, clear of the work',
  'step.fuel': 'Make the fuel safe: tank and lines mapped, battery off, bilge vented',
  'step.guard': 'Photograph and mask what is left alone: identification number, plate, transducer, anodes',
  'step.off': `Take off: ${what}`,
  'step.wash': 'Wash and dewax {zone}',
  'step.repair': `Open and grind: ${what}`,
  'step.fillRepair': `Fill or laminate: ${what}`,
  'step.settle': 'Vacuum everything, then let the dust settle overnight',
  'step.sand': `Sand {zone}${paper} for {layer}`,
  'step.mask': `Mask {zone} for {layer}${edge}`,
  'step.strike': `Strike and tape {zone}${edge}`,
  'step.fill': '{layer} on {zone}, pass {coat, number} of {coats, number}',
  'step.coat':
    '{layer} on {zone}, coat {coat, number} of {coats, number}{method, select, none {} other {, {method}}}{tapeOffM, select, none {} other {; tape off while it is soft}}',
  'step.sandBetween': `Sand {zone}${paper} before coat {coat, number} of {layer}`,
  'step.mend': `Sand {layer, select, none {} other {{layer} on }}{zone}${paper} to put it right`,
  'step.lost': '{layer, select, none {} other {{layer} on }}{zone}, a coat that was lost',
  'step.pinholes': 'Fill pinholes in {layer} on {zone}',
  'step.key': 'Sand {zone} to key it for {layer}, because the time to coat without sanding has run out',
  'step.on': `Bed and refit: ${what}`,
  'step.snag': 'Go through the snag list with the owner',
  'step.handover': 'Hand over, with care sheet and papers',
  'step.unknown': 'Step {step}',
}

const views: Readonly<Record<string, string>> = {
  'marks.stripe': '{areaM2} on both sides, {tapeM} of tape for both edges once',
  'marks.panel':
    '{count, plural, =1 {} other {# × }}{name}: {lengthM} by {widthM}, border {borderM}, corners {cornerRadiusM}, {areaM2} in all',
  'boat.findingAt':
    '{zone}{xM, select, none {, place not given} other {, {xM} from the stern}}{heightM, select, none {} other {, {heightM} over the water}}{offM, select, none {} other {, {offM} to {side} of the middle}}',
  'buildup.dryTogether': '{filmM} dry',
  'stores.goesWith': '{name} for {sheet}',
  'stores.fromShelf': '{packs} from the shelf',
  'stores.packsBought': '{packs} bought',
  'open.movesEnd': 'the end by up to {days}',
  'open.movesPaint': 'the paint by up to {litres}',
  'open.movesSum': 'the sum by up to {sum}',
}

const log: Readonly<Record<string, string>> = {
  'log.written': 'written {writtenAtMs}',
  'log.heldBatch': 'batch {text}',
  'log.heldUsed': '{text} used',
  'log.heldWetFilm': 'wet film {text}',
  'log.heldRain': '{text} of rain',
}

export const viewPhrases: Readonly<Record<string, string>> = { ...steps, ...views, ...log }
