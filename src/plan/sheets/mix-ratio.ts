/** Parts by volume of a product whose sheet gives them by volume, by weight, or both. */
import type { Note } from '#core/note'
import type { Ratio, Sheet } from '#job'
import type { Sure } from '../types.ts'

export type MixRatioRead = { readonly mix?: Sure<readonly number[]>; readonly notes: readonly Note[] }

/** A sheet rounds both ratios and its densities: up to this far apart, as a share, they say the same, assumed. */
const SAME_WITHIN = 0.05

type Densities = { readonly base: number | undefined; readonly hardener: number | undefined }

/** Volume is weight over density; where volume is given it counts, and the weights are held against it. */
export function readMixRatio(own: Sheet, densities: Densities): MixRatioRead {
  const { mix, mixByWeight } = own
  const weighed = mixByWeight && volumesOf(mixByWeight, densities)
  const about = { sheet: own.id, name: own.name ?? own.id }
  if (mix) {
    const apart = weighed && apartBy(mix.parts, weighed)
    return {
      mix: { value: mix.parts, certainty: 'sheet' },
      notes:
        apart !== undefined && apart > SAME_WITHIN
          ? [
              {
                code: 'buildup.ratiosDisagree',
                severity: 'warning',
                data: {
                  ...about,
                  mix: mix.text,
                  byWeight: mixByWeight!.text,
                  worked: hardenerPart(weighed!),
                },
                source: 'volume = weight / density',
              },
            ]
          : [],
    }
  }
  if (!mixByWeight) return { notes: [] }
  if (weighed) return { mix: { value: weighed, certainty: 'worked' }, notes: [] }
  return {
    notes: [
      {
        code: 'buildup.ratioByWeightAlone',
        severity: 'fault',
        data: { ...about, byWeight: mixByWeight.text },
      },
    ],
  }
}

/** Parts by volume that weigh as asked; nothing without the densities. One part has nothing to weigh against. */
function volumesOf({ parts }: Ratio, { base, hardener }: Densities): readonly number[] | undefined {
  const [a, b] = parts
  if (a === undefined || b === undefined) return [1]
  return base && hardener ? [1, ((b / a) * base) / hardener] : undefined
}

const hardenerPart = ([a = 1, b = 0]: readonly number[]): number => b / a

const apartBy = (given: readonly number[], worked: readonly number[]): number =>
  Math.abs(hardenerPart(given) - hardenerPart(worked)) / Math.max(hardenerPart(worked), 1e-9)
