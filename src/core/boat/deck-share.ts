/**
 * Areas of deck zones nobody has measured, as shares of the plan area inside the sheer. From memory, without a source:
 * decks differ by half from boat to boat, so each of these is a stand-in until a tape has been laid across.
 */
const shares = {
  foredeck: 0.2,
  'side deck': 0.18,
  'cabin top': 0.2,
  'cabin side': 0.15,
  'cockpit sole': 0.2,
  'cockpit side': 0.25,
  coaming: 0.08,
  console: 0.12,
  gunwale: 0.1,
  hardtop: 0.2,
  'outboard well': 0.06,
  'swim platform': 0.06,
  'non-skid': 0.3,
} as const

/** Area in m² of a zone of this kind; undefined for kinds that a boat has any number or size of. */
export const deckShare = (kind: string, insideSheerM2: number): number | undefined =>
  Object.hasOwn(shares, kind) ? shares[kind as keyof typeof shares] * insideSheerM2 : undefined
