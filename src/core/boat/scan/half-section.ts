/** A half-section of a scan as one line from keel to sheer: y from the centreline out, z up, metres. */

export type Spot = { readonly y: number; readonly z: number }

export type HalfLine = {
  readonly points: readonly Spot[]
  /** Length of the gaps that were bridged by straight pieces, m. */
  readonly bridged: number
  readonly widestGap: number
}

export const girthOf = (line: readonly Spot[]): number =>
  line.reduce((sum, spot, i) => (i === 0 ? 0 : sum + gapOf(line[i - 1]!, spot)), 0)

export const gapOf = (a: Spot, b: Spot): number => Math.hypot(b.y - a.y, b.z - a.z)

export const between = (a: Spot, b: Spot, t: number): Spot => ({
  y: a.y + t * (b.y - a.y),
  z: a.z + t * (b.z - a.z),
})

/** Pieces of section lines by side, starboard ones turned over to port. Lines are cut where they cross the centreline. */
export const bySide = (
  lines: readonly (readonly Spot[])[],
): { port: readonly (readonly Spot[])[]; starboard: readonly (readonly Spot[])[] } => {
  const port: (readonly Spot[])[] = []
  const starboard: (readonly Spot[])[] = []
  for (const line of lines)
    for (const piece of cutAtCentre(line)) {
      if (piece.length < 2) continue
      const side = piece.reduce((sum, { y }) => sum + y, 0)
      if (side >= 0) port.push(piece.map(({ y, z }) => ({ y: Math.max(y, 0), z })))
      else starboard.push(piece.map(({ y, z }) => ({ y: Math.max(-y, 0), z })))
    }
  return { port, starboard }
}

const cutAtCentre = (line: readonly Spot[]): readonly (readonly Spot[])[] => {
  const pieces: Spot[][] = []
  let open: Spot[] = []
  line.forEach((spot, i) => {
    const before = line[i - 1]
    if (before && before.y < 0 !== spot.y < 0) {
      const middle = between(before, spot, before.y / (before.y - spot.y))
      pieces.push([...open, middle])
      open = [middle]
    }
    open.push(spot)
  })
  pieces.push(open)
  const [first, last] = [pieces[0]!, pieces.at(-1)!]
  const isRound = pieces.length > 1 && gapOf(line[0]!, line.at(-1)!) < 1e-9
  return isRound ? [[...last, ...first.slice(1)], ...pieces.slice(1, -1)] : pieces
}

/** Pieces shorter than this share of the longest are crumbs; gaps wider than the other share of the extent end it. */
const [crumbShare, mostGapShare] = [0.03, 0.25]

/** Joins pieces into one line: from the lowest end near the centreline on to whichever end is nearest. */
export const joinedLine = (pieces: readonly (readonly Spot[])[]): HalfLine | undefined => {
  const longest = Math.max(0, ...pieces.map(girthOf))
  const rest = pieces.filter((piece) => girthOf(piece) > crumbShare * longest)
  const start = best(rest, (end) => end.z + end.y)
  if (start === undefined) return undefined
  const points = [...start.line]
  let [bridged, widestGap] = [0, 0]
  let left = rest.filter((piece) => piece !== start.piece)
  for (;;) {
    const end = points.at(-1)!
    const next = best(left, (spot) => gapOf(end, spot))
    if (next === undefined || next.cost > mostGapShare * longest || !leadsOn(points, next.line)) break
    points.push(...next.line)
    bridged += next.cost
    widestGap = Math.max(widestGap, next.cost)
    left = left.filter((piece) => piece !== next.piece)
  }
  return { points, bridged, widestGap }
}

/** Of both ends of all pieces the one that costs least, with its piece running away from it. */
const best = (pieces: readonly (readonly Spot[])[], costOf: (end: Spot) => number) => {
  let found: { piece: readonly Spot[]; line: readonly Spot[]; cost: number } | undefined
  for (const piece of pieces)
    for (const line of [piece, piece.toReversed()]) {
      const cost = costOf(line[0]!)
      if (found === undefined || cost < found.cost) found = { piece, line, cost }
    }
  return found
}

/** What comes next must get farther from the keel than the line is already; an inner skin runs back. */
const leadsOn = (line: readonly Spot[], next: readonly Spot[]): boolean => {
  const keel = line[0]!
  return gapOf(keel, next.at(-1)!) > gapOf(keel, line.at(-1)!)
}

/** As many equal steps of its length as asked for. */
export const inSteps = (line: readonly Spot[], steps: number): readonly Spot[] => {
  const whole = girthOf(line)
  const spots: Spot[] = [line[0]!]
  let [passed, k] = [0, 1]
  for (let i = 1; i < steps; i++) {
    const goal = (whole * i) / steps
    while (k < line.length - 1 && passed + gapOf(line[k - 1]!, line[k]!) < goal) {
      passed += gapOf(line[k - 1]!, line[k]!)
      k += 1
    }
    const piece = gapOf(line[k - 1]!, line[k]!)
    spots.push(between(line[k - 1]!, line[k]!, piece > 0 ? Math.min((goal - passed) / piece, 1) : 0))
  }
  return [...spots, line.at(-1)!]
}
