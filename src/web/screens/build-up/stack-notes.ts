/** What the plan says of the layers and products of one build-up; what was assumed stands with the figures themselves. */
import type { Stack } from '#papers'
import type { Plan } from '#plan'

type Noted = Pick<Plan, 'buildUps' | 'quantities'>

const unsaid: ReadonlySet<string> = new Set(['info', 'assumed'])

export function stackNotes({ layers }: Pick<Stack, 'layers'>, plan: Noted): Noted['buildUps']['notes'] {
  const own = new Set(layers.map(({ layer }) => layer))
  const sheets = new Set(plan.buildUps.layers.filter(({ layer }) => own.has(layer)).map(({ sheet }) => sheet))
  const isOwn = ({ layer, sheet }: Readonly<Record<string, unknown>>): boolean =>
    layer === undefined ? sheet === undefined || sheets.has(String(sheet)) : own.has(String(layer))
  return [...plan.buildUps.notes, ...plan.quantities.notes].filter(
    ({ severity, data }) => !unsaid.has(severity) && isOwn(data),
  )
}
