/** The open weather services that are asked, and how each wants to be asked. */

export const serviceNames = ['open-meteo', 'met-norway', 'us-nws'] as const
export type ServiceName = (typeof serviceNames)[number]

export type Spot = {
  /** Degrees, north and east are plus. */
  readonly latitude: number
  readonly longitude: number
}

/** Where a service is reached; tests put a server of their own here. */
export type Origins = Readonly<Record<ServiceName, string>>

export const origins: Origins = {
  'open-meteo': 'https://api.open-meteo.com',
  'met-norway': 'https://api.met.no',
  'us-nws': 'https://api.weather.gov',
}

/** To about ten metres: more digits say nothing, and two of the services turn them away. */
const degrees = (value: number): string => String(Math.round(value * 1e4) / 1e4)

/** SOURCE: each service's own description of its interface, from memory. */
const firstPaths: Readonly<Record<ServiceName, (spot: Spot) => string>> = {
  'open-meteo': ({ latitude, longitude }) =>
    `/v1/forecast?${new URLSearchParams({
      latitude: degrees(latitude),
      longitude: degrees(longitude),
      hourly: openMeteoColumns.join(','),
      wind_speed_unit: 'ms',
      timezone: 'UTC',
      past_days: '1',
      forecast_days: '10',
    })}`,
  'met-norway': ({ latitude, longitude }) =>
    `/weatherapi/locationforecast/2.0/complete?lat=${degrees(latitude)}&lon=${degrees(longitude)}`,
  'us-nws': ({ latitude, longitude }) => `/points/${degrees(latitude)},${degrees(longitude)}`,
}

const openMeteoColumns = [
  'temperature_2m',
  'relative_humidity_2m',
  'dew_point_2m',
  'precipitation',
  'precipitation_probability',
  'cloud_cover',
  'wind_speed_10m',
  'wind_direction_10m',
  'shortwave_radiation',
  'direct_normal_irradiance',
  'diffuse_radiation',
]

export const firstUrl = (service: ServiceName, spot: Spot, base: Origins): URL =>
  new URL(firstPaths[service](spot), base[service])

/**
 * The address that an answer points on to: the weather service of the US tells the cell of its grid first. It has to
 * lie with the same service, whatever the answer says.
 */
export function nextUrl(service: ServiceName, answer: Uint8Array, base: Origins): URL | 'done' | 'unknown' {
  if (service !== 'us-nws') return 'done'
  const told = gridUrl(answer)
  if (told === undefined) return 'done'
  const { pathname } = new URL(told, base[service])
  return /^\/gridpoints\/[A-Z]{3}\/\d+,\d+$/.test(pathname) ? new URL(pathname, base[service]) : 'unknown'
}

/** Undefined when the answer is no point of the service. */
function gridUrl(answer: Uint8Array): string | undefined {
  try {
    const { properties } = JSON.parse(new TextDecoder().decode(answer)) as {
      readonly properties?: { readonly forecastGridData?: unknown }
    }
    const url = properties?.forecastGridData
    return typeof url === 'string' ? url : undefined
  } catch {
    return undefined
  }
}
