/** A length or a place on a scan, typed as people write it. */
import { readCell } from '#job'
import { problemText } from '#words'
import { MeasureField } from '../../../fields/measure-field.tsx'
import type { JobView } from '../../../job/job-view.ts'

/** A place may lie to either side of nought. */
const field = { kind: 'quantity', dimension: 'length', sign: 'any', least: -60, most: 60, doc: '' } as const

export type LengthFieldProps = {
  readonly view: JobView
  readonly label: string
  readonly value: string
  readonly onCommit: (text: string) => void
}

export const LengthField = ({ view, ...box }: LengthFieldProps) => (
  <MeasureField
    {...box}
    field={field}
    system={view.system}
    say={(fault) => problemText(view.words, { ...fault, pointer: '' })}
  />
)

/** In metres; undefined while nothing usable stands there. */
export function metresOf(text: string): number | undefined {
  if (text.trim() === '') return undefined
  const reading = readCell(field, text, { currency: undefined })
  return reading.ok ? (reading.value as { readonly value: number }).value : undefined
}

/** To the millimetre, in metres. */
export const inMetres = (value: number): string => `${(Math.round(1000 * value) / 1000 + 0).toFixed(3)} m`
