/** A pour made from its pot, for a pot whose pour the plan has no more. */
import type { Pour } from '#plan'
import type { Pot } from './pot-clock.ts'

export const pourOf = ({ step, nr, of, mixedMs, standMinutes, lifeMinutes, airC }: Pot): Pour => {
  const mixAtMinute = Math.floor(mixedMs / 60_000)
  return {
    ...{ step, nr, of, airC, mixAtMinute },
    zone: '',
    sheet: '',
    times: 1,
    areaM2: 0,
    runs: [],
    laying: { crew: 1, sunny: 'unknown', overlapM: 0, floor: 'unknown' },
    intoWet: false,
    trayM3: [],
    readyM3: 0,
    partsM3: [],
    thinnerM3: 0,
    additiveM3: 0,
    useFromMinute: mixAtMinute + standMinutes,
    ...(lifeMinutes === undefined ? {} : { useUntilMinute: mixAtMinute + lifeMinutes }),
    certainty: 'worked',
  }
}
