/** Seeded random numbers of a standard normal distribution, after Box and Muller (1958). */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

export function normal(seed: number): () => number {
  const random = xoroshiro128plus(seed)
  return () => {
    const [u, v] = [1 - uniformFloat64(random), uniformFloat64(random)]
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * v)
  }
}
