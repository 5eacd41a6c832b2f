/** A quantity of the job: a bare number takes a unit, and what cannot be read is said at once and leaves the value alone. */
import { useState } from 'react'
import { type QuantityField as Measure, readCell } from '#job'
import { QuantityField, type QuantityFieldProps } from '../parts/index.ts'
import { bareUnit } from './bare-unit.ts'
import { unitHint, withUnit } from './unit-hint.ts'

export type Fault = { readonly code: string; readonly data: Readonly<Record<string, unknown>> }

export type MeasureFieldProps = Omit<QuantityFieldProps, 'unit'> & {
  readonly field: Measure
  readonly system: 'metric' | 'us'
  readonly say: (fault: Fault) => string
}

type Refused = { readonly text: string; readonly before: string; readonly fault: Fault }

export const MeasureField = ({ field, system, say, value, onCommit, ...box }: MeasureFieldProps) => {
  const [refused, setRefused] = useState<Refused>()
  const now = refused?.before === value ? refused : undefined
  const commit = (typed: string): void => {
    const text = withUnit(typed.trim(), bareUnit(typed, { value, field, system }))
    const reading = text === '' ? undefined : readCell(field, text, { currency: undefined })
    if (reading === undefined || reading.ok) {
      setRefused(undefined)
      onCommit(text)
    } else setRefused({ text, before: value, fault: reading })
  }
  return (
    <QuantityField
      {...box}
      {...(now ? { problem: say(now.fault) } : {})}
      value={now?.text ?? value}
      unit={unitHint(field, system)}
      onCommit={commit}
    />
  )
}
