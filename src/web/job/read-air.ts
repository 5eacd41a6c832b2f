/** Air, humidity and skin as a person types them: with units, and held against the dew point at once. */
import { sums } from '#sums'
import { type Dimension, read } from '#units'

export type AirTexts = { readonly air: string; readonly humidity: string; readonly skin: string }
export type AirKey = keyof AirTexts

export type AirRead = {
  /** As the log keeps them: what was typed, a bare number in the unit of the job; empty ones left out. */
  readonly cells: Partial<AirTexts>
  readonly wrong: readonly AirKey[]
  /** Once air and humidity are read. */
  readonly dewC?: number
  /** Coldest skin that may be coated. */
  readonly leastSkinC?: number
  /** Once the skin is read too. */
  readonly marginK?: number
  readonly verdict?: 'enough' | 'close' | 'wet'
}

export type AirAsked = {
  readonly system: 'metric' | 'us'
  /** Least margin of the product in hand; left out, the usual 3 K. */
  readonly limitK?: number | undefined
}

export const usualLimitK = 3

type Kind = { readonly dimension: Dimension; readonly from: number; readonly to: number }

const kinds: Readonly<Record<AirKey, Kind>> = {
  air: { dimension: 'temperature', from: -45, to: 60 },
  humidity: { dimension: 'share', from: 0, to: 1 },
  skin: { dimension: 'temperature', from: -45, to: 120 },
}

export const airKeys = Object.keys(kinds) as readonly AirKey[]

export function readAir(texts: AirTexts, { system, limitK = usualLimitK }: AirAsked): AirRead {
  const cells: Partial<Record<AirKey, string>> = {}
  const values: Partial<Record<AirKey, number>> = {}
  const wrong: AirKey[] = []
  for (const key of airKeys) {
    const text = meant(key, texts[key].trim(), system)
    if (text === '') continue
    const value = siOf(key, text)
    if (value === undefined) wrong.push(key)
    else {
      cells[key] = text
      values[key] = value
    }
  }
  return { cells, wrong, ...dewOf(values, limitK) }
}

/** A bare number is of the unit that stands beside the box; 0.65 of humidity is a share and no percentage. */
function meant(key: AirKey, text: string, system: 'metric' | 'us'): string {
  const bare = /^([+−-]?\d+(?:[.,]\d+)?)\s*°?$/.exec(text)?.[1]
  if (bare === undefined) return text
  if (key !== 'humidity') return `${bare} ${system === 'us' ? '°F' : '°C'}`
  return Number(bare.replace(',', '.')) > 1 ? `${bare} %` : text
}

function siOf(key: AirKey, text: string): number | undefined {
  const { dimension, from, to } = kinds[key]
  const found = read(text, dimension)
  if (!found.ok) return undefined
  const { value } = found.quantity
  return value < from || value > to ? undefined : value
}

function dewOf(
  { air, humidity, skin }: Partial<Record<AirKey, number>>,
  limitK: number,
): Omit<AirRead, 'cells' | 'wrong'> {
  // Air without any water has no dew point.
  if (air === undefined || humidity === undefined || humidity === 0) return {}
  const { results } = sums.dew.run({
    air,
    humidity,
    limit: limitK > 0 ? limitK : usualLimitK,
    ...(skin === undefined ? {} : { surface: skin }),
  })
  const figure = (key: string): number => Number(results.find((one) => one.key === key)?.value)
  const dew = { dewC: figure('dewPointC'), leastSkinC: figure('leastSurfaceC') }
  if (skin === undefined) return dew
  const state = results.find(({ key }) => key === 'state')?.value
  const verdict = state === 'wet' ? 'wet' : state === 'close' ? 'close' : 'enough'
  return { ...dew, marginK: figure('marginK'), verdict }
}
