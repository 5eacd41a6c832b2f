/** How much longer a cambered deck is across than its width. */

/**
 * Length of a parabolic arc over its chord: 1 for a flat deck. Input: rise of the arc in its middle over its width,
 * dimensionless, its sign without meaning. Any rise works, a deck has up to about 1 in 10.
 *
 *     L / w = ½ √(1 + 16 k²) + ln(4 k + √(1 + 16 k²)) ÷ (8 k),    k = rise ÷ width
 *
 * Source: Bronshtein and Semendyayev, Handbook of Mathematics, section on the parabola, length of an arc (from memory);
 * the test holds it against the integral of the arc itself. Deck beams are struck as arcs of a circle as often: to 1 in
 * 10 the two differ by less than one part in a thousand.
 */
export const camberFactor = (riseOverWidth: number): number => {
  const k = Math.abs(riseOverWidth)
  // Below this the logarithm loses its digits, and the series 1 + 8 k² ÷ 3 is exact to the last of them.
  if (k < 1e-4) return 1 + (8 / 3) * k * k
  const root = Math.sqrt(1 + 16 * k * k)
  return root / 2 + Math.log(4 * k + root) / (8 * k)
}
