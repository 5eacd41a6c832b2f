/** What the judge says of a build-up, numbered as it stands at the joints: what does not hold first. */
import type { JointMark, Stack } from '#papers'
import type { Plan } from '#plan'

type Note = Plan['bonds']['notes'][number]

export type Found = { readonly number: number; readonly note: Note; readonly breaks: boolean }

const breaking: ReadonlySet<string> = new Set(['fault', 'missing'])

/** `zones`: those that are drawn as one build-up; their grounds may differ. */
export function bondFound({ bonds }: Pick<Plan, 'bonds'>, zones: readonly string[]): readonly Found[] {
  const stacks = bonds.stacks.filter((stack) => stack.zones.some((zone) => zones.includes(zone)))
  // The notes of the whole plan name every zone that has the fault, so each stands once.
  const own = new Set(stacks.flatMap(({ notes }) => notes.map(aboutWhat)))
  return bonds.notes
    .filter((note) => own.has(aboutWhat(note)))
    .map((note) => ({ note, breaks: breaking.has(note.severity) }))
    .toSorted((a, b) => Number(b.breaks) - Number(a.breaks))
    .map((one, at) => ({ ...one, number: at + 1 }))
}

/** Where they stand in the section; what is about no layer of it stands in the list alone. */
export const marksOf = (found: readonly Found[], { layers }: Pick<Stack, 'layers'>): readonly JointMark[] =>
  found.flatMap(({ number, note: { code, data }, breaks }) => {
    const at = layers.findIndex(({ layer }) => layer === data.layer)
    return at === -1 ? [] : [{ number, breaks, id: `new:${at}`, above: code === weathered }]
  })

const weathered = 'buildup.notTopcoated'

/** The note without the zones it names. */
const aboutWhat = ({ code, data: { zones: _zones, more: _more, ...rest } }: Note): string =>
  JSON.stringify([code, rest])
