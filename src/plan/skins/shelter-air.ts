/** What is known of the air under the shelter: fitted from a logger that hung in it, else assumed. */
import {
  assumedAir,
  fitShelter,
  type HourlySeries,
  isTypicalYear,
  leastFitHours,
  type Shed,
  type Shelter,
  type ShelterAir,
  type ShelterFit,
  type ShelterMiss,
  shelterNote,
  shelters,
  skyLight,
} from '#core/climate'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Runner, Stage } from '../remember.ts'
import { shedOver } from './shed-hours.ts'

export type ShelterAirInput = {
  readonly latitude: Work['place']['latitude'] | undefined
  readonly longitude: Work['place']['longitude'] | undefined
  readonly shelter: Shelter
  /** As it was given, not what goes on behind it: the hours of a typical year are none that a logger could have read. */
  readonly weather: HourlySeries | undefined
  readonly logger: HourlySeries | undefined
  /** Heater, doors and floor over the hours of that weather. */
  readonly shed: Shed | undefined
}

export type KnownAir = {
  /** Absent where it is assumed. */
  readonly fitted?: ShelterAir
  readonly notes: readonly Note[]
}

/** With a logger the shelter is fitted, or a note says why it is not. */
export const shelterAir: Stage<ShelterAirInput, KnownAir> = {
  name: 'shelter air',
  run: ({ weather, logger, shelter, shed, latitude, longitude }) => {
    // A boat in the open has a skin with notes of its own.
    if (shelter === 'open') return { notes: logger ? [left('climate.loggerInOpen')] : [] }
    const assumed = [shelterNote(shelter)]
    if (!logger || !weather) return { notes: assumed }
    if (isTypicalYear(weather)) return { notes: [...assumed, left('climate.loggerTypicalYear')] }
    const place = latitude && longitude && { latitude: latitude.value, longitude: longitude.value }
    const fit = fitShelter({
      series: weather,
      sunWm2: place && skyLight({ series: weather, place }).globalWm2,
      logger,
      shed,
      assumed: assumedAir(shelter),
    })
    if (fit.kind !== 'fitted') return { notes: [...assumed, refusal(fit)] }
    return { fitted: fit.air, notes: [fittedNote(fit, shelter)] }
  },
}

/** By the weather and the logger of a job. */
export function knownAirOf(
  run: Runner,
  of: {
    readonly weather?: HourlySeries | undefined
    readonly logger?: HourlySeries | undefined
    readonly work: Pick<Work, 'place' | 'shed' | 'boat'>
  },
): KnownAir {
  const { weather, logger, work } = of
  const { latitude, longitude, shelter } = work.place
  const shed = weather && logger ? shedOver(run, { name: 'logged', weather, work }) : undefined
  return run(shelterAir, { weather, logger, latitude, longitude, shelter, shed })
}

const left = (code: string, data: Note['data'] = {}): Note => ({ code, severity: 'notice', data })

function refusal(fit: Exclude<ShelterFit, { readonly kind: 'fitted' }>): Note {
  if (fit.kind === 'few')
    return left('climate.loggerTooShort', { hadHours: fit.hours, neededHours: leastFitHours })
  const { rmsK, rmsShare } = shownMiss(fit)
  if (fit.kind === 'poor') return left('climate.loggerPoor', { rmsK, rmsShare })
  const assumed = shownMiss(fit.assumed)
  return left('climate.loggerWorse', {
    rmsK,
    rmsShare,
    assumedRmsK: assumed.rmsK,
    assumedRmsShare: assumed.rmsShare,
  })
}

/** As closely as a logger reads: 0.01 K and a tenth of a per cent. */
const shownMiss = ({ rmsK, rmsShare }: ShelterMiss): ShelterMiss => ({
  rmsK: Math.round(100 * rmsK) / 100,
  rmsShare: Math.round(1000 * rmsShare) / 1000,
})

const fittedNote = (fit: Extract<ShelterFit, { readonly kind: 'fitted' }>, shelter: Shelter): Note => ({
  code: 'climate.shelterFitted',
  severity: 'info',
  data: {
    shelter,
    fittedHours: fit.hours,
    airLagHours: fit.air.airLagHours,
    // In the sun of a clear noon, 1000 W/m².
    fullSunK: 1000 * fit.air.sunKPerWm2,
    addedGPerM3: 1000 * fit.air.waterKgM3,
    ...shownMiss(fit),
    windShare: shelters[shelter].windShare,
    boatLagHours: shelters[shelter].boatLagHours,
  },
  source: 'measured',
})
