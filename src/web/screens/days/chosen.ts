/** What is asked about on the sheet Days: a bar of work, or an hour of a zone. */
import type { Bar } from './zone-days.ts'

export type Chosen =
  | { readonly kind: 'bar'; readonly bar: Bar }
  | {
      readonly kind: 'hour'
      readonly zone: string
      readonly minute: number
      /** Of the hours that are shown for the zone. */
      readonly hoursKey: string
    }

/** What is chosen a second time is let go. */
export const isSame = (a: Chosen | undefined, b: Chosen): boolean => a !== undefined && keyOf(a) === keyOf(b)

export const keyOf = (chosen: Chosen | undefined): string =>
  chosen === undefined
    ? ''
    : chosen.kind === 'bar'
      ? `${chosen.bar.step} ${chosen.bar.fromMinute}`
      : `${chosen.zone} ${chosen.minute}`
