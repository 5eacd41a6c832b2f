/** References between items: the ids they may name, and what happens to one that leads nowhere. */
import type { Fields, Sections } from './field.ts'
import { errorAt, type FoundProblem } from './found-problem.ts'
import { nearest } from './nearest.ts'
import { below } from './pointer.ts'
import { quote } from './problem.ts'

export type Item = Readonly<Record<string, unknown>> & { readonly id: string }

/** Ids that may be named, by section; a section that is not in it is not checked. */
export type Targets = ReadonlyMap<string, ReadonlySet<string>>

export type RefFieldOf = { readonly key: string; readonly to: string; readonly required: boolean }

export const refFields = (fields: Fields): readonly RefFieldOf[] =>
  Object.entries(fields).flatMap(([key, field]) =>
    field.kind === 'ref' || field.kind === 'refs'
      ? [{ key, to: field.to, required: field.need === 'required' }]
      : [],
  )

/** Sections so that each comes after those it refers to. References form no circle (tested). */
export const targetsFirst = (sections: Sections): readonly string[] => {
  const done = new Set<string>()
  const visit = (name: string): void => {
    const section = sections[name]
    if (done.has(name) || section === undefined) return
    for (const { to } of refFields(section.fields)) visit(to)
    done.add(name)
  }
  for (const name of Object.keys(sections)) visit(name)
  return [...done]
}

export type Resolved = { readonly item: Item | undefined; readonly problems: readonly FoundProblem[] }

const none: readonly FoundProblem[] = []

/**
 * The item without the references that lead nowhere; no item when a required one is left empty. An item whose
 * references are all good is returned as it is.
 */
export const resolve = (
  item: Item,
  {
    refs,
    targets,
    pointer,
  }: { readonly refs: readonly RefFieldOf[]; readonly targets: Targets; readonly pointer: string },
): Resolved => {
  const problems: FoundProblem[] = []
  const changed: Record<string, unknown> = {}
  let lost = false
  for (const { key, to, required } of refs) {
    const known = targets.get(to)
    const value = item[key]
    if (known === undefined || value === undefined) continue
    const ids = typeof value === 'string' ? [value] : (value as readonly string[])
    const kept = ids.filter((id) => known.has(id))
    if (kept.length === ids.length) continue
    for (const id of ids) if (!known.has(id)) problems.push(dangling({ id, to, key, known, pointer }))
    changed[key] = kept.length === 0 ? undefined : kept
    if (kept.length === 0 && required) lost = true
  }
  if (problems.length === 0) return { item, problems: none }
  return { item: lost ? undefined : without({ ...item, ...changed }), problems }
}

const without = (item: Item): Item =>
  Object.fromEntries(Object.entries(item).filter(([, value]) => value !== undefined)) as unknown as Item

/** In a very long list a near name is not looked for. */
const mostCandidates = 2_000

const dangling = (at: {
  readonly id: string
  readonly to: string
  readonly key: string
  readonly known: ReadonlySet<string>
  readonly pointer: string
}): FoundProblem => {
  const guess = at.known.size <= mostCandidates ? nearest(at.id, at.known) : undefined
  const data = { found: quote(at.id), to: at.to, field: at.key, ...(guess ? { nearest: guess } : {}) }
  return errorAt(below(at.pointer, at.key), 'job.ref', data)
}
