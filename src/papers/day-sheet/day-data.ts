/** What one day holds: its steps in order with their bars, pours, and the cautions that stand before them. */
import { describeStep, type Plan, type WorkStep } from '#plan'
import type { Kit } from '../kit.ts'

type Day = Plan['days']['days'][number]
export type Pour = Plan['pours']['pours'][number]
type Caution = Plan['cautions']['cautions'][number]

/** Minutes since local midnight, by the wall clock where the bar begins. */
export type Bar = { readonly from: number; readonly to: number; readonly people: readonly string[] }

export type DayStep = {
  readonly number: number
  readonly id: string
  readonly text: string
  readonly bars: readonly Bar[]
  readonly people: readonly string[]
  /** In one go, with paint: a coat or a filling. */
  readonly coat: boolean
  readonly step: WorkStep | undefined
}

export type DayPour = { readonly number: number; readonly pour: Pour }
export type DayCaution = { readonly caution: Caution; readonly steps: readonly number[] }

export type DayData = {
  readonly date: string
  /** Undefined when nothing is planned on this date. */
  readonly day: Day | undefined
  readonly steps: readonly DayStep[]
  readonly pours: readonly DayPour[]
  readonly cautions: readonly DayCaution[]
}

export function dayData(kit: Kit, date: string): DayData {
  const { plan } = kit
  const day = plan.days.days.find((each) => each.date === date)
  const steps = day ? stepsOf(kit, day) : []
  const numbers = new Map(steps.map((step) => [step.id, step.number]))
  return {
    date,
    day,
    steps,
    pours: plan.pours.pours
      .flatMap((pour) => {
        const number = numbers.get(pour.step)
        return number !== undefined && day && onDay(pour.useFromMinute, day) ? [{ number, pour }] : []
      })
      .sort((one, other) => one.pour.useFromMinute - other.pour.useFromMinute),
    cautions: plan.cautions.cautions.flatMap((caution) => {
      const before = steps
        .filter((step) => caution.steps.includes(step.step?.id ?? step.id))
        .map((step) => step.number)
      return before.length > 0 ? [{ caution, steps: before }] : []
    }),
  }
}

const onDay = (minute: number, day: Day): boolean => minute >= day.startMinute && minute < day.endMinute

function stepsOf({ plan, say }: Kit, day: Day): readonly DayStep[] {
  const ids = [...new Set(day.pieces.map((piece) => piece.step))]
  return ids.map((id, index) => {
    const pieces = day.pieces.filter((piece) => piece.step === id)
    const { code, data } = describeStep(plan, id)
    const step = plan.steps.steps.find((one) => one.id === id.replace(/^key:/, ''))
    const bars = pieces.map(({ startMinute, endMinute, people }): Bar => {
      const from = say.clockOf(startMinute)
      return { from, to: from + endMinute - startMinute, people }
    })
    return {
      number: index + 1,
      id,
      text: partOf(say.sentence(code, data), pieces[0]),
      bars,
      people: [...new Set(pieces.flatMap((piece) => piece.people))],
      coat: step?.inOneGo === true && !id.startsWith('key:'),
      step,
    }
  })
}

/** Work that goes on from another day, or to the next, says which part this is. */
const partOf = (text: string, piece: Day['pieces'][number] | undefined): string =>
  piece && piece.parts > 1 ? `${text} (${piece.part}/${piece.parts})` : text
