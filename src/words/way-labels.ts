/** What the parts of a worked-out figure are called, and how a figure came about that has no formula. */
const surfaces: Readonly<Record<string, string>> = {
  'wayPart.area': 'Area',
  'wayPart.areaGiven': 'Area, as given',
  'wayPart.length': 'Length',
  'wayPart.width': 'Width',
  'wayPart.pieces': 'How many alike',
  'wayPart.stations': 'Measured stations',
  'wayPart.girths': 'Girths by tape',
  'wayPart.points': 'Measured points',
  'wayPart.insideSheer': 'Deck inside the sheer',
  'wayPart.deckShare': 'Share that such a zone usually has',
  'wayPart.ruleArea': 'Area by the rule of thumb',
  'wayPart.lengthOverall': 'Length of the hull',
  'wayPart.beam': 'Beam',
  'wayPart.freeboardStem': 'Freeboard at the stem',
  'wayPart.freeboardMid': 'Freeboard at the middle',
  'wayPart.freeboardStern': 'Freeboard at the stern',
  'wayPart.draft': 'Depth of the hull below the waterline',
}

const marks: Readonly<Record<string, string>> = {
  'wayPart.panelArea': 'One panel',
  'wayPart.panelLength': 'Length of the panel',
  'wayPart.panelWidth': 'Width of the panel',
  'wayPart.border': 'Smooth border',
  'wayPart.cornerRadius': 'Radius of the corners',
  'wayPart.fieldLength': 'Length of the field',
  'wayPart.fieldWidth': 'Width of the field',
  'wayPart.stripeArea': 'Stripe, both sides',
  'wayPart.stripeLower': 'Lower edge',
  'wayPart.stripeUpper': 'Upper edge',
  'wayPart.stripeWidth': 'Plumb width of the stripe here',
  'wayPart.stripeGirth': 'Along the hull',
  'wayPart.heightStem': 'Lower edge at the stem',
  'wayPart.heightLow': 'Lower edge at its low point',
  'wayPart.heightStern': 'Lower edge at the stern',
  'wayPart.widthStem': 'Width at the stem',
  'wayPart.widthLow': 'Width at the low point',
  'wayPart.widthStern': 'Width at the stern',
}

const paint: Readonly<Record<string, string>> = {
  'wayPart.litres': 'Paint, mixed',
  'wayPart.layerLitres': 'Paint',
  'wayPart.coats': 'Coats',
  'wayPart.coverShare': 'Share of the zone it covers',
  'wayPart.spread': 'Spread of one coat',
  'wayPart.solids': 'Volume solids',
  'wayPart.loss': 'Lost to roller, tray and pot',
  'wayPart.dryFilm': 'Dry film of one coat',
  'wayPart.wetFilm': 'Wet film, to check with a comb',
  'wayPart.thinnerShare': 'Thinner, share of the mixed paint',
  'wayPart.additiveShare': 'Bead, share of the paint ready to use',
  'wayPart.mixed': 'Mixed paint in this pour',
  'wayPart.pours': 'Pours for the coat',
  'wayPart.partsA': 'Parts of base',
  'wayPart.partsB': 'Parts of hardener',
  'wayPart.base': 'Base',
  'wayPart.hardener': 'Hardener',
  'wayPart.thinner': 'Thinner',
  'wayPart.additive': 'Bead',
}

const shelf: Readonly<Record<string, string>> = {
  'wayPart.need': 'Needed',
  'wayPart.repairLitres': 'Goes into a repair',
  'wayPart.lostLitres': 'Again, for coats that were lost',
  'wayPart.reserve': 'Reserve',
  'wayPart.reserveShare': 'Share kept in reserve',
  'wayPart.touchUp': 'Kept for touch-up',
  'wayPart.left': 'Left over',
  'wayPart.packsShelf': 'Packs from the shelf',
  'wayPart.packsBought': 'Packs to buy',
  'wayPart.packVolume': 'In one pack',
  'wayPart.packPrice': 'Price of the smallest pack',
  'wayPart.perLitre': 'Price of a litre',
  'wayPart.consumable': 'How many',
  'wayPart.layerThinner': 'Thinner for one layer',
  'wayPart.layerBead': 'Bead for one layer',
  'wayPart.use.areaM2': 'Area it is used on, all passes',
  'wayPart.use.lengthM': 'Edge it is used on',
  'wayPart.use.personDays': 'Days, each person counted',
  'wayPart.use.count': 'Pours',
  'wayPart.useSpan.areaM2': 'One does for',
  'wayPart.useSpan.lengthM': 'One does for',
  'wayPart.useEach.personDays': 'For each person and day',
  'wayPart.useEach.count': 'For each pour',
}

const money: Readonly<Record<string, string>> = {
  'wayPart.line.labour': 'Labour',
  'wayPart.line.materials': 'Packs',
  'wayPart.line.consumables': 'Used up',
  'wayPart.line.costs': 'Fixed sum',
  'wayPart.each.labour': 'An hour',
  'wayPart.each.materials': 'One pack',
  'wayPart.each.consumables': 'One',
  'wayPart.quantity.materials': 'Packs',
  'wayPart.quantity.consumables': 'How many',
  'wayPart.labourHours': 'Hours charged',
  'wayPart.plannedHours': 'Hours at the boat, by the days',
  'wayPart.sessions': 'Days, each person counted',
  'wayPart.openHours': 'To open a day',
  'wayPart.closeHours': 'To close a day',
  'wayPart.doneHours': 'Hours of what is done',
  'wayPart.group.labour': 'Labour',
  'wayPart.group.materials': 'Materials',
  'wayPart.group.consumables': 'Consumables',
  'wayPart.group.costs': 'Other costs',
  'wayPart.sum.margin': 'Margin',
  'wayPart.sum.net': 'Net',
  'wayPart.sum.tax': 'Tax',
  'wayPart.sum.total': 'Total',
  'wayPart.sum.deposit': 'Deposit',
  'wayPart.share.margin': 'Margin',
  'wayPart.share.tax': 'Tax',
  'wayPart.share.deposit': 'Deposit',
  'wayPart.changeHours': 'Hours of the change',
  'wayPart.changeLabour': 'Labour of the change',
  'wayPart.changeMaterial': 'Material of the change',
  'wayPart.changeVolume': 'Litres of the change',
  'wayPart.changeTotal': 'Change order, tax included',
}

const air: Readonly<Record<string, string>> = {
  'wayPart.airC': 'Air',
  'wayPart.humidity': 'Humidity',
  'wayPart.skinC': 'Skin of the boat',
  'wayPart.dewC': 'Dew point',
  'wayPart.gamma': 'Humidity and warmth in one figure, γ',
  'wayPart.margin': 'Skin over the dew point',
}

const around: Readonly<Record<string, string>> = {
  'formula.up': 'rounded up',
  'waySource.assumed': 'Common practice, without a published source',
  'waySource.sheet': 'The product’s own sheet, as copied into the job',
  'waySource.weather': 'The weather of the job, under its shelter',
}

export const wayLabels: Readonly<Record<string, string>> = {
  ...surfaces,
  ...marks,
  ...paint,
  ...shelf,
  ...money,
  ...air,
  ...around,
}

export const wayWords: Readonly<Record<string, string>> = {
  'way.sizeSurface':
    'Measured on the surface of the hull that these sizes draw: a likely boat, until stations are measured.',
  'way.girthSurface':
    'Girths read off a tape, from one to the next along the boat; how the skin lies between them is that of the drawn hull.',
  'way.stationSurface': 'Measured on the surface through the measured stations.',
  'way.stripeSurface':
    'The stripe is measured along the skin of the hull, both sides, not in its projection.',
  'way.rule':
    'A rule of thumb from the guides of chandlers and paint suppliers, to hold the worked area against.',
  'way.filmSet':
    'The film is set, not worked out. The wet film follows from it: check that with a comb on the wall.',
  'way.stripeCurve':
    'A fair curve, seen from the side, through the heights set at stem, low point and stern.',
  'way.stripeGirth':
    'The plumb width laid along the hull at this station: the more the side leans, the wider it lies.',
  'way.weather':
    'As the weather of the job has it, under the shelter of the boat. A reading on the spot is surer.',
  'way.skin':
    'The skin follows the air and the sun with a delay, and cools below the air in a clear night; by how much depends on the shelter. A thermometer on the skin is surer.',
  'way.dew':
    'The dew point is the temperature at which the water in the air settles, by the formula of the World Meteorological Organization; its sums are in degrees Celsius.',
}
