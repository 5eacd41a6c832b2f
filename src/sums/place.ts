/** Latitude, longitude and bearing as people write them: `44.5 N`, `-73.2`, `73.2 W`, `44° 30′ N`, `SE`. */
import { read } from '#units'
import { SumError } from './sum-error.ts'

const degree = Math.PI / 180

type Axis = { readonly field: string; readonly plus: string; readonly minus: string; readonly most: number }

const latitudeAxis: Axis = { field: 'latitude', plus: 'N', minus: 'S', most: 90 }
const longitudeAxis: Axis = { field: 'longitude', plus: 'E', minus: 'W', most: 180 }

/** rad, north positive. Throws a SumError. */
export function readLatitude(text: string): number {
  return readAxis(text, latitudeAxis)
}

/** rad, east positive. Throws a SumError. */
export function readLongitude(text: string): number {
  return readAxis(text, longitudeAxis)
}

function readAxis(text: string, axis: Axis): number {
  const letters = `${axis.plus}${axis.minus}`
  const match = new RegExp(`^\\s*([${letters}])?\\s*(.*?)\\s*([${letters}])?\\s*$`, 'iu').exec(text)
  const letter = (match?.[1] ?? match?.[3])?.toUpperCase()
  const angle = readAngle(match?.[2] ?? '')
  const twice = match?.[1] !== undefined && match?.[3] !== undefined
  const signed = letter !== undefined && angle !== undefined && angle < 0
  if (angle === undefined || twice || signed || Math.abs(angle) > axis.most * degree * (1 + 1e-12))
    throw badPlace(text, axis)
  return letter === axis.minus ? -angle : angle
}

/** A bare number counts degrees. */
function readAngle(text: string): number | undefined {
  const bare = read(text, 'number')
  if (bare.ok) return bare.quantity.value * degree
  const angle = read(text, 'angle')
  return angle.ok ? angle.quantity.value : undefined
}

function badPlace(text: string, { field, plus, minus, most }: Axis): SumError {
  return new SumError(
    'sums.badPlace',
    { field, text, atMost: most, plus, minus },
    `${field}: not a place, got "${text}", expected degrees up to ${most}, ${plus} or ${minus}`,
  )
}

const points = 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' ')

/** rad from north, clockwise: a compass point, an angle, or a bare number of degrees from -360 to 360. */
export function readBearing(field: string, text: string): number {
  const point = points.indexOf(text.trim().toUpperCase())
  const angle = point >= 0 ? (point * Math.PI) / 8 : readAngle(text)
  if (angle !== undefined && Math.abs(angle) <= 2 * Math.PI * (1 + 1e-12)) return angle
  throw new SumError(
    'sums.badBearing',
    { field, text },
    `${field}: not a bearing, got "${text}", expected degrees from north or a point such as SE`,
  )
}
