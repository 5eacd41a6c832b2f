/** The sentence of a problem where people see boxes and not the keys of the document: cells and sections by name. */
import { labelOf, labels } from './labels.ts'
import type { LineProblem } from './problem-line.ts'
import { roomOfSection } from './section-rooms.ts'
import type { Words } from './words.ts'

export type PlacedProblem = Pick<LineProblem, 'code' | 'data'> & { readonly pointer: string }

/** The sentence of a problem, with the boxes of its section called by their names. */
export function problemText(words: Words, { code, data, pointer }: PlacedProblem): string {
  const section = sectionIn(pointer)
  // What a newer program wrote has no box here, and nobody can put it right.
  if (code === 'job.unknownKey')
    return words.sentence('job.unknownKept', { section: labelOf(`section.${section}`) })
  if (code === 'job.missing') return missingText(words, { data, pointer })
  const named = Object.entries(data).map(([key, value]) => [key, nameOf(section, key, value)])
  return words.sentence(code, Object.fromEntries(named))
}

/** Which box is empty, what comes of it, and where the box is. */
function missingText(words: Words, { data, pointer }: Omit<PlacedProblem, 'code'>): string {
  const section = sectionIn(pointer)
  const room = roomOfSection(section)
  const [part, ...path] = pointer.slice(1).split('/')
  // The place ends in the box where it was left empty, and in what has no such box where it was never there.
  const depth = path.at(-1) === data.field ? path.length - 1 : path.length
  return words.sentence('job.missingBox', {
    field: `“${nameOf(section, 'field', data.field)}”`,
    section: labelOf(`section.${section}`),
    many: depth > 1 || part === 'log' ? 'yes' : 'no',
    sheet: room === undefined ? 'none' : labelOf(`room.${room}`),
  })
}

/** `/work/boat/beam` lies in `boat`, `/log/seen/at` in `log`. */
export function sectionIn(pointer: string): string {
  const [, part = '', section = ''] = pointer.split('/')
  return part === 'log' ? part : section
}

function nameOf(section: string, key: string, value: unknown): unknown {
  if (typeof value !== 'string') return value
  if (key === 'field') return labelled(`cell.${section}.${value}`, value)
  if (key === 'section' || key === 'to') return labelled(`section.${value}`, value)
  if (key === 'keys')
    return value
      .split(', ')
      .map((each) => labelled(`cell.${section}.${each}`, each))
      .join(', ')
  return value
}

const labelled = (key: string, otherwise: string): string => labels[key] ?? labelOf(`cell.${otherwise}`)
