/** The key of rain and wind: only what the drawing above it uses. */
import { labelOf, type Words } from '#words'
import { Drop } from './rain-strokes.tsx'
import type { Rain, WeatherHour, Wind } from './weather-hours.ts'
import { Barb } from './wind-band.tsx'
import { barbCounts } from './wind-barb.ts'

/** SOURCE: a knot is 1852 m an hour. */
const knotMps = 1852 / 3600

export type WeatherKeyProps = {
  readonly hours: readonly WeatherHour[]
  readonly words: Words
  /** Where no wind is drawn. */
  readonly rainOnly?: boolean
}

export const WeatherKey = ({ hours, words, rainOnly = false }: WeatherKeyProps) => {
  const rains = new Set(hours.map(({ rain }) => rain.kind))
  const winds = rainOnly ? [] : hours.flatMap(({ wind }) => (wind === undefined ? [] : [wind]))
  const counts = winds.map(({ mps }) => barbCounts(mps))
  const knots = [
    { knots: 5, used: counts.some(({ half }) => half > 0) },
    { knots: 10, used: counts.some(({ whole }) => whole > 0) },
    { knots: 50, used: counts.some(({ pennants }) => pennants > 0) },
  ]
  return (
    <ul className="days-key">
      {rainKinds.map(([kind, label]) =>
        rains.has(kind) ? (
          <li key={kind}>
            <svg width="18" height="24" aria-hidden="true">
              {kind === 'unknown' ? (
                <rect className="days-not-known" x="1" y="6" width="16" height="11" />
              ) : (
                <Drop kind={kind} long={13} wide={6} transform="translate(9 1)" />
              )}
            </svg>
            {labelOf(label)}
          </li>
        ) : null,
      )}
      {knots.map((one) =>
        one.used ? (
          <li key={one.knots}>
            <BarbMark wind={{ mps: one.knots * knotMps, fromRad: (3 * Math.PI) / 2 }} />
            {words.sentence('daysscreen.knotsKey', { knots: one.knots })}
          </li>
        ) : null,
      )}
      {counts.some(({ calm }) => calm) ? (
        <li>
          <BarbMark wind={{ mps: 0, fromRad: 0 }} />
          {labelOf('daysScreen.calmKey')}
        </li>
      ) : null}
      {winds.some(({ fromRad }) => fromRad === undefined) ? (
        <li>
          <svg width="34" height="18" aria-hidden="true">
            <path className="days-wind-guessed" d="M3 9H31" />
          </svg>
          {labelOf('daysScreen.fromUnknownKey')}
        </li>
      ) : null}
      {!rainOnly && winds.length < hours.length ? (
        <li>
          <BarbMark wind={undefined} />
          {labelOf('daysScreen.windUnknownKey')}
        </li>
      ) : null}
    </ul>
  )
}

const rainKinds: readonly (readonly [Rain['kind'], string])[] = [
  ['fell', 'daysScreen.rainKey'],
  ['chance', 'daysScreen.chanceKey'],
  ['unknown', 'daysScreen.unknownKey'],
]

const BarbMark = ({ wind }: { readonly wind: Wind | undefined }) => {
  const still = wind === undefined || barbCounts(wind.mps).calm
  return (
    <svg width={still ? 14 : 40} height="24" aria-hidden="true">
      <g transform={still ? 'translate(7 12)' : 'translate(32 17)'}>
        <Barb wind={wind} south={false} />
      </g>
    </svg>
  )
}
