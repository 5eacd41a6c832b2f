/** Seeded chance for invented weather: the same numbers on every engine. */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

export type Chance = {
  /** 0 included to 1 excluded. */
  readonly share: () => number
  readonly between: (least: number, most: number) => number
}

/** A fresh source of chance; it lives as long as one piece of weather is made. */
export function chanceFrom(seed: number): Chance {
  const generator = xoroshiro128plus(seed)
  const share = () => uniformFloat64(generator)
  return { share, between: (least, most) => least + (most - least) * share() }
}

/**
 * A quantity that wanders about 0 with spread 1 and forgets itself in so many hours; a new value at each call.
 * First-order autoregression driven by sums of four uniform draws, which are near enough to normal.
 */
export function wandering(chance: Chance, memoryHours: number): () => number {
  const kept = 1 - 1 / memoryHours
  const drive = Math.sqrt(1 - kept * kept)
  let value = nearNormal(chance)
  return () => {
    value = kept * value + drive * nearNormal(chance)
    return value
  }
}

function nearNormal({ share }: Chance): number {
  return (share() + share() + share() + share() - 2) * Math.sqrt(3)
}
