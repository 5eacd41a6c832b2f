/** To the days before and after, to today, and to any date. */
import { labelOf } from '#words'
import { addDays, isDate } from '../../job/local-days.ts'
import { Button, DateField } from '../../parts/index.ts'

export type TurnProps = {
  readonly from: string
  readonly count: number
  readonly today: string
  readonly onFrom: (date: string) => void
}

export const Turn = ({ from, count, today, onFrom }: TurnProps) => (
  <div className="days-turn">
    <Button onClick={() => onFrom(addDays(from, -count))}>{labelOf('daysScreen.earlier')}</Button>
    <Button onClick={() => onFrom(addDays(from, count))}>{labelOf('daysScreen.later')}</Button>
    {from === today ? null : <Button onClick={() => onFrom(today)}>{labelOf('daysScreen.toNow')}</Button>}
    <DateField
      label={labelOf('daysScreen.from')}
      value={from}
      onCommit={(text) => {
        if (isDate(text)) onFrom(text)
      }}
    />
  </div>
)
