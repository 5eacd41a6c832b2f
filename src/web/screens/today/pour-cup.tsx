/** One pour in the cup: what goes in, in what order, up to which line; what it covers, and how it goes in the tray. */
import {
  coverTells,
  describeCover,
  describeHandling,
  type MixPart,
  mixAmounts,
  type Pour,
  partKey,
} from '#plan'
import { labelOf } from '#words'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'
import { LaidOff } from '../laid-off.tsx'
import { Cup } from '../sums/cup.tsx'
import { cupLevels } from '../sums/cup-levels.ts'
import { inCup, onScales } from './in-cup.ts'

export type PourCupProps = { readonly pour: Pour; readonly view: JobView }

export const PourCup = ({ pour, view }: PourCupProps) => {
  const { words } = view
  const { parts, decimals } = mixAmounts(pour)
  const levels = cupLevels(parts.map(({ part, ml }) => ({ key: keys[part], volumeMl: ml })))
  if (levels.length === 0) return null
  const rows = levels.map((level) => {
    const own = parts.find(({ part }) => keys[part] === level.key)!
    const name = labelOf(labels[partKey(pour, own.part)])
    return {
      level,
      name,
      amount: (
        <WayFigure
          view={view}
          of={{ kind: 'pour', step: pour.step, nr: pour.nr, of: keys[own.part] }}
          text={inCup(own.ml, decimals, view)}
          certainty="worked"
          size="mix"
          label={name}
        />
      ),
      // Bead is stirred in on top of what the cup reads.
      to:
        own.toMl === undefined
          ? ''
          : words.sentence('sumscreen.levelTo', { levelMl: inCup(own.toMl, decimals, view) }),
      mass: own.g === undefined ? undefined : onScales(own.g, view),
    }
  })
  const label = words.sentence('sumscreen.cupDrawing', {
    levels: rows.map(({ name, level }) => `${name} ${inCup(level.toMl, decimals, view)}`).join(', '),
  })
  const cover = coverTells(pour) ? describeCover(pour) : undefined
  const clock = (minute: number): string => words.time(minute * 60_000, view.timeZone)
  const clocks = {
    code: 'pour.clocks',
    data: {
      mixClock: clock(pour.mixAtMinute),
      fromClock: clock(pour.useFromMinute),
      untilClock: pour.useUntilMinute === undefined ? 'none' : clock(pour.useUntilMinute),
      airC: pour.airC,
    },
  }
  const said = [clocks, ...(cover ? [cover] : []), ...describeHandling(pour)]
  return (
    <div>
      <Cup rows={rows} label={label} />
      <ul className="today-pour-said">
        {said.map(({ code, data }) => (
          <li key={code}>{words.sentence(code, data)}</li>
        ))}
      </ul>
      <LaidOff view={view} pour={pour} />
    </div>
  )
}

const keys = {
  A: 'base',
  B: 'hardener',
  thinner: 'thinner',
  bead: 'additive',
} as const satisfies Record<MixPart['part'], string>

const labels = {
  only: 'today.paint',
  A: 'today.partA',
  B: 'today.partB',
  thinner: 'today.thinner',
  bead: 'today.additive',
} as const
