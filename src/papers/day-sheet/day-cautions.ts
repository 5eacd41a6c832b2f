/** Cautions of a day: a signal panel for each signal word, each caution with the steps it stands before. */
import { paragraph } from '../blocks.ts'
import { protectionLine, signalWord } from '../cautions.ts'
import type { Kit } from '../kit.ts'
import { measureOf } from '../page.ts'
import { type PanelText, type Signal, signalPanel } from '../signal-panel.ts'
import { beside, type Strip, space, stacked } from '../strips.ts'
import type { DayCaution, DayData } from './day-data.ts'
import { numberList } from './numbers.ts'
import { moreStrip } from './steps-list.ts'

/** How much is said: the whole, the whole of dangers, the first sentence of each. */
export type CautionDetail = 'whole' | 'dangers whole' | 'first sentence'

export type CautionOptions = {
  readonly detail: CautionDetail
  /** Not more of them than this; the rest is counted. */
  readonly most: number
}

const signals: readonly Signal[] = ['danger', 'warning', 'caution', 'notice']
const gap = 4

/** In two columns, each panel under the shorter one; then, once for the whole day, what is worn and stands ready. */
export function dayCautions(kit: Kit, data: DayData, { detail, most }: CautionOptions): Strip {
  const measure = measureOf(kit.page)
  const width = (measure.width - gap) / 2
  const shown = data.cautions.slice(0, most)
  const more = data.cautions.length - shown.length
  const columns: Strip[][] = [[], []]
  for (const signal of signals) {
    const own = shown.filter(({ caution }) => caution.severity === signal)
    if (own.length === 0) continue
    const shorter = stacked(columns[1]!).height < stacked(columns[0]!).height ? 1 : 0
    const panel = {
      signal,
      word: signalWord(kit, signal),
      body: bodyOf(kit, data, { cautions: own, detail }),
    }
    columns[shorter]!.push(
      signalPanel(panel, { x: measure.x + shorter * (width + gap), width, setter: kit.setter }),
      space(2),
    )
  }
  return stacked([
    beside(columns.map(stacked)),
    ...readyStrips(kit, data),
    ...(more > 0 ? [moreStrip(kit, 'paper.moreCautions', more, measure)] : []),
  ])
}

function readyStrips(kit: Kit, { cautions }: DayData): readonly Strip[] {
  const ready = protectionLine(kit, [...new Set(cautions.flatMap(({ caution }) => caution.protection))])
  return ready === '' ? [] : paragraph(ready, 'smallStrong', { ...measureOf(kit.page), setter: kit.setter })
}

type Body = { readonly cautions: readonly DayCaution[]; readonly detail: CautionDetail }

/** What holds all day first, as one list; then each caution with its steps. */
function bodyOf(kit: Kit, data: DayData, { cautions, detail }: Body): readonly PanelText[] {
  const whole = ({ caution }: DayCaution): boolean =>
    detail === 'whole' || (detail === 'dangers whole' && caution.severity === 'danger')
  const textOf = (one: DayCaution): string => {
    const text = kit.say.sentence(one.caution.code, one.caution.data)
    return whole(one) ? text : firstSentence(text)
  }
  const style = cautions.some(whole) ? 'small' : 'fine'
  const allDay = cautions.filter(({ steps }) => steps.length === data.steps.length)
  const some = cautions.filter((one) => !allDay.includes(one))
  return [
    ...(allDay.length === 0
      ? []
      : [{ text: `${kit.say.label('paper.allDay')} ${allDay.map(textOf).join(' ')}`, style } as const]),
    ...some.map(
      (one): PanelText => ({
        text: `${kit.say.sentence('paper.beforeNumbers', { numbers: numberList(one.steps) })} ${textOf(one)}`,
        style,
      }),
    ),
  ]
}

/** Up to the first full stop that a space follows. */
export const firstSentence = (text: string): string => /^.*?[.!?](?=\s|$)/s.exec(text)?.[0] ?? text
