/** It rained: from when to when, how much where that is known, and what became of coats it may have fallen on. */
import { useState } from 'react'
import { describeStep } from '#plan'
import { read } from '#units'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { localInstant } from '../../job/local-date.ts'
import { Button, ChoiceField, DateField, Dialog, QuantityField, TimeField } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { entryCells, type Film, filmsOf } from '../what-now/mishap-data.ts'
import { caughtCoats, type RainTold, rainCells, rainJustNow, rainMinutes } from './told-rain.ts'

export type RainDialogProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly onClose: () => void
  /** The entries are in the log. */
  readonly onTold: () => void
}

type Harm = Film | 'unseen' | 'none'

export const RainDialog = ({ view, plan, onClose, onTold }: RainDialogProps) => {
  const { words, timeZone, nowMs, log } = view
  const [told, setTold] = useState<RainTold>(() => rainJustNow(nowMs, timeZone))
  const [amount, setAmount] = useState('')
  const [harms, setHarms] = useState<Readonly<Record<string, Harm>>>({})
  const rain = rainMinutes(told, timeZone)
  const ahead = rain !== undefined && rain.fromMinute * 60_000 > nowMs
  const wrongAmount = isWrong(amount)
  const coats = rain === undefined ? [] : caughtCoats({ plan, log, rain })
  const set = (some: Partial<RainTold>): void => setTold({ ...told, ...some })
  const tell = (): void => {
    if (rain === undefined) return
    view.addEntry(rainCells(rain, { amount, timeZone }))
    for (const step of coats) {
      const film = harms[step] ?? 'unseen'
      if (film === 'unseen' || film === 'none') continue
      view.addEntry({ at: localInstant(nowMs, timeZone), ...entryCells({ id: 'rain', step, film }) })
    }
    onTold()
  }
  return (
    <Dialog
      title={labelOf('daysScreen.rained')}
      onClose={onClose}
      actions={
        <>
          <Button big onClick={onClose}>
            {labelOf('daysScreen.cancel')}
          </Button>
          <Button big next disabled={rain === undefined || ahead || wrongAmount} onClick={tell}>
            {labelOf('daysScreen.planAgain')}
          </Button>
        </>
      }
    >
      <div className="days-rained">
        <DateField
          label={labelOf('daysScreen.rainDay')}
          value={told.date}
          onCommit={(date) => set({ date })}
          problem={ahead ? words.sentence('daysscreen.rainAhead') : undefined}
        />
        <TimeField
          label={labelOf('daysScreen.rainFrom')}
          value={told.from}
          onCommit={(from) => set({ from })}
        />
        <TimeField
          label={labelOf('daysScreen.rainUntil')}
          value={told.until}
          onCommit={(until) => set({ until })}
        />
        <QuantityField
          label={labelOf('daysScreen.rainAmount')}
          value={amount}
          onCommit={setAmount}
          onType={setAmount}
          help={labelOf('daysScreen.rainAmountHelp')}
          problem={wrongAmount ? words.sentence('daysscreen.rainWrong') : undefined}
        />
      </div>
      <p>{words.sentence('daysscreen.rainHelp')}</p>
      {coats.map((step) => {
        const { code, data } = describeStep(plan, step)
        return (
          <ChoiceField<Harm>
            key={step}
            as="list"
            label={words.sentence(code, data)}
            choices={harmChoices}
            value={harms[step] ?? 'unseen'}
            onChange={(harm) => setHarms({ ...harms, [step]: harm })}
          />
        )
      })}
      <p>{shelterSentence(view, plan)}</p>
    </Dialog>
  )
}

const filmLabels: Readonly<Record<Film, string>> = {
  stands: 'daysScreen.rainStands',
  'wiped off': 'daysScreen.rainWiped',
  'sanded off': 'daysScreen.rainSanded',
}

const harmChoices = [
  { value: 'unseen' as const, label: labelOf('daysScreen.rainUnseen') },
  { value: 'none' as const, label: labelOf('daysScreen.rainNoHarm') },
  ...filmsOf('rain').map((film) => ({ value: film, label: labelOf(filmLabels[film]) })),
]

/** What the rain reaches, by what stands over the boat. */
const shelterSentence = ({ words }: JobView, { conditions }: ShownPlan): string => {
  const shelter = conditions.air.find(({ key }) => key === 'boat')?.shelter
  if (shelter === undefined) return words.sentence('daysscreen.rainNoWeather')
  return words.sentence(shelter === 'open' ? 'daysscreen.rainOpen' : 'daysscreen.rainRoof')
}

const isWrong = (text: string): boolean => {
  if (text.trim() === '') return false
  const found = read(text, 'length')
  return !found.ok || found.quantity.value < 0 || found.quantity.value > 1
}
