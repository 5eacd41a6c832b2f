/** Whether the floor may be damped before a coat: water in the air takes the skin nearer to its dew point. */
import type { Known } from '../known.ts'
import type { AirHours, LayingOff } from '../types.ts'

/** By skin, dew and humidity of the hour, from the weather at hand. */
export function floorAt(
  air: Pick<AirHours, 'firstMinute' | 'surfaceC' | 'dewC' | 'humidityShare'> | undefined,
  {
    minute,
    known,
  }: { readonly minute: number; readonly known: Pick<Known, 'wetFloorMarginK' | 'wetFloorHumidity'> },
): LayingOff['floor'] {
  const hour = air === undefined ? -1 : Math.floor((minute - air.firstMinute) / 60)
  const marginK = (air?.surfaceC[hour] ?? Number.NaN) - (air?.dewC[hour] ?? Number.NaN)
  const humidity = air?.humidityShare[hour] ?? Number.NaN
  if (Number.isNaN(marginK) || Number.isNaN(humidity)) return 'unknown'
  return marginK >= known.wetFloorMarginK.value && humidity <= known.wetFloorHumidity.value ? 'damp' : 'dry'
}
