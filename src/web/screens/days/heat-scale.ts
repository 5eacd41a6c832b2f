/** Colours of a skin: as the air on film, cooler towards the water of the look, warmer towards its skin; in even bands. */
import type { LitPlace, SolidFace, WeatherAtHand } from '#plan'
import type { ShownPlan } from '../../worker/messages.ts'
import { airThen } from '../air-now.ts'

/** Bands to each side of the one that is as warm as the air. */
export const bandsEachSide = 4
/** The outermost is not the token itself, so that lines in ink are still read on it. */
const strongest = 0.8

export type HeatScale = {
  /** Air of the hour, °C: the middle. */
  readonly airC: number
  /** Width of a band, K. */
  readonly bandK: number
}

/** Bands of whole or half kelvins that hold the farthest skin. */
export function heatScale(at: { readonly airC: number; readonly skinsC: readonly number[] }): HeatScale {
  const farthest = Math.max(0, ...at.skinsC.map((skinC) => Math.abs(skinC - at.airC)))
  const bandK = [0.5, 1, 2, 5, 10].find((width) => farthest <= width * (bandsEachSide + 0.5)) ?? 10
  return { airC: at.airC, bandK }
}

/** Of a skin, from -4 to 4; 0 is as warm as the air. */
export function bandOf(skinC: number, { airC, bandK }: HeatScale): number {
  const band = Math.round((skinC - airC) / bandK)
  return Math.min(bandsEachSide, Math.max(-bandsEachSide, band)) || 0
}

export type HeatInks = { readonly paper: string; readonly water: string; readonly skin: string }

/** @param inks as `rgb(...)`. @returns `#rrggbb`. */
export function bandColour(band: number, inks: HeatInks): string {
  const share = (Math.abs(band) / bandsEachSide) * strongest
  const [from, to] = [rgbOf(inks.paper), rgbOf(band < 0 ? inks.water : inks.skin)]
  const part = (at: number): string =>
    Math.round(from[at]! + (to[at]! - from[at]!) * share)
      .toString(16)
      .padStart(2, '0')
  return `#${part(0)}${part(1)}${part(2)}`
}

const rgbOf = (text: string): readonly number[] =>
  (text.match(/[\d.]+/g) ?? ['0', '0', '0']).slice(0, 3).map(Number)

/** Where the skin of a face is reckoned; a stripe that goes round both sides has none of its own. */
export function placeOfFace({ kind, zone }: SolidFace, { surfaces, marks }: ShownPlan): LitPlace | undefined {
  if (kind === 'topsides-port') return 'port'
  if (kind === 'topsides-starboard') return 'starboard'
  if (kind === 'transom') return 'transom'
  if (kind === 'bottom' || kind === 'boot-top') return 'bottom'
  const side = [...surfaces.zones, ...marks.zones].find(({ id }) => id === zone)?.side
  if (kind === 'stripe') return side === 'port' || side === 'starboard' ? side : undefined
  return 'deck'
}

export type PlaceHeat = {
  readonly place: LitPlace
  readonly skinC: number
  readonly airC: number
  readonly dewC: number
  /** Undefined under a cloth or a roof where nobody knows where the boat stands. */
  readonly lightWm2: number | undefined
}

/** Every place at one hour; one without a skin of its own has that of the boat. Empty where nobody knows. */
export function heatsAt(
  plan: ShownPlan,
  weather: WeatherAtHand | undefined,
  minute: number,
): readonly PlaceHeat[] {
  const hour = weather ? Math.floor((minute - weather.firstMinute) / 60) : -1
  const boat = airThen(plan, 'boat', minute)
  if (!boat) return []
  return (['port', 'starboard', 'deck', 'transom', 'bottom'] as const).map((place) => ({
    place,
    skinC: weather?.skins[place]?.[hour] ?? airThen(plan, place, minute)?.surfaceC ?? boat.surfaceC,
    airC: boat.airC,
    dewC: boat.dewC,
    lightWm2: weather?.lightsWm2[place]?.[hour],
  }))
}
