/** Sentences about tape lines on the hull and non-skid panels on the deck. */
export const markingWords: Readonly<Record<string, string>> = {
  'marking.panelSize':
    'The panel has no usable size ({lengthM} by {widthM}). Give length, width, border and count above zero.',
  'marking.bordersMeet':
    'A border of {borderM} leaves nothing of a field {lengthM} by {widthM}. Make the border narrower or leave the panel out.',
  'marking.cornerRadiusTooLarge':
    'A corner radius of {cornerRadiusM} does not fit this panel; {mostM} is the most, half its width. Choose a smaller one for all corners.',
  'marking.borderAssumed':
    'The smooth border is taken as {borderM}, as is common off a deck edge. Give your own to change it.',
  'marking.radiusAssumed':
    'The corner radius is taken as {cornerRadiusM}. One template for all corners looks best; give yours.',
  'marking.panelNarrow':
    'A panel only {widthM} wide looks like a sliver and is hard to tape; {leastM} is a sensible least. Leave it out or join it to its neighbour.',
}
