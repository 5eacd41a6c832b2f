/** The sheet of the week for the wall: the drawing on its first page, what is done on which day behind it. */
import type { CSSProperties } from 'react'
import type { CoatWindow } from '#plan'
import type { JobView } from '../../job/job-view.ts'
import { Part } from '../../parts/index.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import { DayList } from './day-list.tsx'
import { shownDays } from './shown-days.ts'
import { ZoneChart } from './zone-chart.tsx'
import { zoneDays } from './zone-days.ts'

export type PrintedWeekProps = {
  readonly view: JobView
  readonly plan: ShownPlan
  readonly windows: readonly CoatWindow[]
  readonly from: string
}

/** Width of the drawing on the narrower of A4 and Letter, lying, inside the frame, px. */
const paperWide = 890
/** Height of the drawing on the lower of the two under sentence and heading, and of what is in it, px. */
const paperHigh = 535
const besideRows = 510
const rowHigh = 51
/** A drawing of more rows goes on over the page. */
const leastZoom = 0.52
/** The smallest letters of the drawing are as many px. They are printed at 8 points at least, of 3/4 px each. */
const lettersPx = 14
const leastLettersPx = 8 / 0.75

export const PrintedWeek = ({ view, plan, windows, from }: PrintedWeekProps) => {
  const days = shownDays(from, 7, view.timeZone)
  const within = { fromMinute: days[0]?.fromMinute ?? 0, toMinute: days.at(-1)?.toMinute ?? 0 }
  const rows = zoneDays({ plan, windows, within }).filter(({ bars, lines }) => bars.length + lines.length > 0)
  // Smaller the more rows there are, as long as it can be read.
  const zoom = Math.max(leastZoom, Math.min(1, paperHigh / (rows.length * rowHigh + besideRows)))
  const letters = lettersFor(zoom)
  return (
    <div className="days-paper">
      <Part
        title={view.words.sentence('daysscreen.weeks', { fromDate: from, toDate: days.at(-1)?.date ?? from })}
      >
        <div className="days-paper-drawing" style={{ zoom, '--letters': letters } as CSSProperties}>
          <ZoneChart
            {...{ view, plan, windows, days, letters }}
            width={paperWide / zoom}
            chosen={undefined}
            onChoose={() => undefined}
          />
        </div>
      </Part>
      <div className="days-paper-list">
        <Part>
          <DayList view={view} plan={plan} days={days} href={(room) => room} go={() => undefined} />
        </Part>
      </div>
    </div>
  )
}

/** How many times as large letters are set, so that they are large enough once the drawing is made smaller. */
export const lettersFor = (zoom: number): number => Math.max(1, leastLettersPx / lettersPx / zoom)
