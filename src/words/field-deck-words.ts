/** Label and help of each cell that tells of deck zones as shapes. */
import type { FieldWords } from './field-words.ts'

const fromStern = [
  'From the stern',
  'Level distance forward of the aftmost point of the hull; with a minus behind it.',
] as const

/** Cells of a zone, beside its name, kind and area. */
export const deckZoneWords: FieldWords[string] = {
  mirror: [
    'Both sides alike',
    'Set where the corners are one half of it: the other side is their mirror image.',
  ],
  curve: [
    'Edge between offsets',
    'Straight from one offset to the next, or as a batten bent through them runs.',
  ],
  camber: ['Camber', 'Lay a batten across where it is widest: how far the middle stands above the edges.'],
  slope: [
    'Slope along the boat',
    'How steeply it slopes, where its corners were measured level and not along it.',
  ],
  upstandHeight: [
    'Height of an upstand',
    'Of what stands up along it and is painted with it: coaming, cabin side.',
  ],
  upstandLength: ['Length of the upstand', 'Along its foot; left empty, all round the edge of the zone.'],
  openingLength: ['Length of an opening', 'Of a hatch or port that is not painted with the zone.'],
  openingWidth: ['Width of the opening', 'Across the same opening.'],
  openingCount: ['Openings alike', 'How many openings of that size the zone has.'],
  faces: ['Faces painted', 'One face, or both, as of a hatch lid that is painted inside and out.'],
  hides: ['Hides', 'The part of the hull behind a stand pad or keel block, which is painted later.'],
}

export const deckFieldWords: FieldWords = {
  corners: {
    zone: ['Zone', 'The part of the deck it is a corner of.'],
    fromStern,
    offCentre: ['Off the centreline', 'To port; with a minus to starboard.'],
    opening: ['Opening', 'Its number, where the corner is one of an opening and not of the edge.'],
  },
  offsets: {
    zone: ['Zone', 'The part of the deck that was measured.'],
    fromStern,
    outer: ['To the outer edge', 'Level, from the centreline; half the width where the zone spans the boat.'],
    inner: ['To the inner edge', 'From the centreline; left empty where the zone reaches it.'],
  },
}
