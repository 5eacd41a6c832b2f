/** What the work before the first coat leaves on each zone: where old pattern is ground off, and where it is mended. */
import type { Work } from '#job'
import type { Stage } from './remember.ts'

export type Ground = {
  /** Old pattern goes before anything comes on; of all the zone where nobody gave an area. */
  readonly patternOff: 'none' | 'whole' | number
  /** Filled or laminated, m², as far as somebody measured it. */
  readonly mendedM2: number
  /** Grit whose scratches are there already, from sanding before this job. */
  readonly sandedWith: string
}

/** By zone; those about which there is nothing to say are left out. */
export type Grounds = Readonly<Record<string, Ground>>

export type GroundsInput = { readonly findings: Work['findings']; readonly zones: Work['zones'] }

export const grounds: Stage<GroundsInput, Grounds> = {
  name: 'grounds',
  run: ({ findings, zones }) =>
    Object.fromEntries(
      zones.flatMap(({ id, sandedWith = '' }) => {
        const own = findings.filter(({ zone }) => zone === id)
        const patterns = own.filter(isPattern)
        const mendedM2 = sumOf(own.filter((one) => !isPattern(one) && one.sheet !== undefined))
        if (patterns.length === 0 && mendedM2 === 0 && sandedWith === '') return []
        return [[id, { patternOff: patternOffIn(patterns), mendedM2, sandedWith } satisfies Ground]]
      }),
    ),
}

type Finding = Work['findings'][number]

const isPattern = ({ kind }: Finding): boolean => kind.endsWith('non-skid')

/** A hole is dished to three times its diameter before it is filled: common practice, without a source. */
const DISH = 3
/** Width of what is ground and filled along a crack, m; assumed. */
const CRACK_WIDTH_M = 0.05

/** m² of all pieces together, the measured area first. */
function areaOf({ kind, area, size, count = 1 }: Finding): number {
  if (area || !size) return area?.value ?? 0
  return count * (kind === 'hole' ? (Math.PI / 4) * (DISH * size.value) ** 2 : size.value * CRACK_WIDTH_M)
}

const sumOf = (findings: readonly Finding[]): number => findings.reduce((sum, one) => sum + areaOf(one), 0)

const patternOffIn = (patterns: readonly Finding[]): Ground['patternOff'] => {
  if (patterns.length === 0) return 'none'
  return patterns.every(({ area }) => area) ? sumOf(patterns) : 'whole'
}
