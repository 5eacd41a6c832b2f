/** The plan depends on what a document says and on its `order` cells, never on the order of its keys. */
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'
import { describe, expect, it } from 'vitest'
import type { RawDocument } from '#job'
import { type Plan, plan } from '#plan'
import { planInput, projectRaw, sampleWeather } from '../support/samples.ts'
import { jobs, programDocument, sampleJobs } from './jobs.ts'

const seeds = [1, 20270412, 77]

type Tree = string | { readonly [key: string]: Tree }

/** Every map of a document in another order, down to the cells. */
function shuffled(tree: Tree, random: RandomGenerator): Tree {
  if (typeof tree === 'string') return tree
  const entries = Object.entries(tree)
  for (let last = entries.length - 1; last > 0; last--) {
    const other = uniformInt(random, 0, last)
    ;[entries[last], entries[other]] = [entries[other]!, entries[last]!]
  }
  return Object.fromEntries(entries.map(([key, value]) => [key, shuffled(value, random)]))
}

/** Items of a collection told by a cell where they stand; sections of one map are left as they are. */
const withOrder = (section: Tree): Tree =>
  typeof section === 'string' || Object.values(section).some((value) => typeof value === 'string')
    ? section
    : Object.fromEntries(
        Object.entries(section).map(([id, item], index) => [
          id,
          { ...(item as object), order: String(index).padStart(4, '0') },
        ]),
      )

const eachSection = (part: Tree): Tree =>
  Object.fromEntries(Object.entries(part).map(([name, section]) => [name, withOrder(section)]))

function ordered(raw: RawDocument): Tree {
  const { work, money, log, ...rest } = raw as unknown as { readonly [key: string]: Tree }
  return {
    ...rest,
    work: eachSection(work!),
    ...(money === undefined ? {} : { money: eachSection(money) }),
    ...(log === undefined ? {} : { log: withOrder(log) }),
  }
}

const planOf = (raw: Tree, weather: ReturnType<typeof sampleWeather>): Plan =>
  plan(planInput(projectRaw(raw as unknown as RawDocument), weather))

describe.each(sampleJobs)('the plan of %s', (name) => {
  const raw = ordered(programDocument(jobs[name]))
  const weather = sampleWeather(jobs[name].sample)
  const made = planOf(raw, weather)

  it.each(seeds)(
    'is the same, hashes and all, with every key of the document shuffled by seed %d',
    (seed) => {
      const other = shuffled(raw, xoroshiro128plus(seed))
      expect(JSON.stringify(other)).not.toBe(JSON.stringify(raw))
      expect(planOf(other, weather)).toEqual(made)
    },
  )

  it('is that of the file as it stands, where the order of the items is that of the lines', () => {
    const { stamp, ...rest } = made
    const { stamp: asWritten, ...plain } = planOf(programDocument(jobs[name]) as unknown as Tree, weather)
    expect(plain).toEqual(rest)
    expect(stamp.catalogue).toBe(asWritten.catalogue)
  })
})
