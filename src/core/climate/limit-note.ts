/** A failing limit as a note, so that `words/` can say it. */
import type { Note } from '#core/note'
import type { FailingLimit, Limit } from './paint-limits.ts'
import { limitUnits } from './paint-limits.ts'

const codes: Readonly<Record<Limit, string>> = {
  airLeast: 'climate.limitAirLeast',
  airMost: 'climate.limitAirMost',
  skinLeast: 'climate.limitSkinLeast',
  skinMost: 'climate.limitSkinMost',
  hotSun: 'climate.limitHotSun',
  dark: 'climate.limitDark',
  evening: 'climate.limitEvening',
  humidity: 'climate.limitHumidity',
  dewMargin: 'climate.limitDewMargin',
  wetSince: 'climate.limitWetSince',
  wind: 'climate.limitWind',
  rain: 'climate.limitRain',
  rainChance: 'climate.limitRainChance',
}

const suffixes = { C: 'C', share: 'Share', K: 'K', hours: 'Hours', mps: 'Mps', mm: 'Mm' } as const

/**
 * Turns a failing limit into a note.
 * @returns code `climate.limit...`, ending in `Unknown` when the figure is not known; data `needed` and `had`
 * with the unit in the key (`neededK`, `hadK`), `effect`, and `inHours`.
 */
export function limitNote(failing: FailingLimit): Note {
  const { limit, effect, needed, had, inHours } = failing
  const suffix = suffixes[limitUnits[limit]]
  const data = { effect, inHours, [`needed${suffix}`]: needed }
  if (had === null) return { code: `${codes[limit]}Unknown`, severity: 'missing', data }
  return { code: codes[limit], severity: 'info', data: { ...data, [`had${suffix}`]: had } }
}
