/** Every pot that is running, the one that ends first on top, each with its own clock. */
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Part } from '../../parts/index.ts'
import { potState, samePot } from './pot-clock.ts'
import { PotClock } from './pot-clock.tsx'
import { pourOf } from './pour-of.ts'
import type { Pots } from './use-pots.ts'

export type PotClocksProps = { readonly view: JobView; readonly pots: Pots }

export const PotClocks = ({ view, pots }: PotClocksProps) => {
  if (pots.pots.length === 0) return null
  const until = (pot: Pots['pots'][number]): number => potState(pot, 0).untilMs ?? Number.POSITIVE_INFINITY
  return (
    <Part raised title={labelOf('pot.running')}>
      <div className="pot-list">
        {[...pots.pots]
          .sort((a, b) => until(a) - until(b))
          .map((pot) => (
            <PotClock
              key={`${pot.step} ${pot.nr}`}
              view={view}
              pots={pots}
              // Planned again, the pour may be gone; the pot is still on the bench.
              pour={view.plan?.pours.pours.find((pour) => samePot(pour, pot)) ?? pourOf(pot)}
            />
          ))}
      </div>
    </Part>
  )
}
