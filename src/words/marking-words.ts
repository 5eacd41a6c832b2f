/** Sentences about tape lines on the hull and non-skid panels on the deck. */

/** Which mark it is, where the data names one. */
const mark = '{name, select, none {} other {{name}: }}'
const place = '{place, select, stem {stem} low {low point} other {stern}}'

const panels: Readonly<Record<string, string>> = {
  'marking.panelSize': `${mark}The panel has no usable size ({lengthM} by {widthM}). Give length, width, border and count above zero.`,
  'marking.bordersMeet': `${mark}A border of {borderM} leaves nothing of a field {lengthM} by {widthM}. Make the border narrower or leave the panel out.`,
  'marking.cornerRadiusTooLarge': `${mark}A corner radius of {cornerRadiusM} does not fit this panel; {mostM} is the most, half its width. Choose a smaller one for all corners.`,
  'marking.borderAssumed': `${mark}The smooth border is taken as {borderM}, as is common off a deck edge. Give your own to change it.`,
  'marking.radiusAssumed': `${mark}The corner radius is taken as {cornerRadiusM}. One template for all corners looks best; give yours.`,
  'marking.panelNarrow': `${mark}A panel only {widthM} wide looks like a sliver and is hard to tape; {leastM} is a sensible least. Leave it out or join it to its neighbour.`,
}

const stripes: Readonly<Record<string, string>> = {
  'marking.heightsAssumed': `${mark}{count, plural, one {One height of the lower edge is} other {# heights of the lower edge are}} assumed; it runs {sternM} above the water at the stern, {lowM} at its low point and {stemM} at the stem. Give your own to change them.`,
  'marking.lineHeightsAssumed': `${mark}{count, plural, one {One height of the line is} other {# heights of the line are}} assumed; it runs {sternM} above the water at the stern, {lowM} at its low point and {stemM} at the stem. Give your own to change them.`,
  'marking.lineWithoutHeight': `${mark}The line has no height. Give it above the waterline at the stern, at its low point or at the stem.`,
  'marking.widthsAssumed': `${mark}{count, plural, one {One width of the stripe is} other {# widths of the stripe are}} assumed; it is {sternM} high at the stern, {lowM} at its low point and {stemM} at the stem. Give your own to change them.`,
  'marking.stripeHeight': `${mark}The height {heightM} of the lower edge at the ${place} cannot be used. Give it from the floating waterline.`,
  'marking.stripeWidth': `${mark}The width {widthM} of the stripe at the ${place} cannot be used. Give it above zero.`,
  'marking.stripeSpacing': `${mark}Marks {spacingM} apart cannot be struck; {leastM} to {mostM} can. Choose another distance.`,
  'marking.noWaterline': `${mark}The hull does not reach the water, so no stripe can be measured from it. Check the heights: they count from the floating waterline.`,
  'marking.stripeOffHull': `${mark}At {xM} the tape would stand {heightM} above the water, where there is no side to put it on. Move it, or make a stripe narrower.`,
  'marking.stripeNearWater': `${mark}The lower edge comes down to {heightM} above the water. Topside paint lies wet there; keep {leastM} or more.`,
  'marking.stripeFlatHull': `${mark}At {xM} the hull is so flat that {widthM} of height take {girthM} along it. Strike both edges by height; tape laid parallel would look thin there.`,
  'marking.loadMargin': `${mark}Heights count from the line she floats on with everything aboard. A boat of {fromM} to {toM} sinks about {sinkM} with stores; if yours was measured empty, set the stripe higher.`,
}

export const markingWords: Readonly<Record<string, string>> = { ...panels, ...stripes }
