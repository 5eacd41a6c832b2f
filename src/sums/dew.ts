/** Dew: at what temperature the air's water settles, and whether a surface stands clear of it. */
import {
  absoluteHumidity,
  type DewVerdict,
  dewPoint,
  dewRule,
  frostPoint,
  standardPressurePa,
  wetBulb,
} from '#core/climate'
import type { Note } from '#core/note'
import { defineSum, how, result, type SumAnswer } from './sum.ts'

const formula = 'WMO-No. 8, Guide to Instruments and Methods of Observation, Annex 4.B'
const rule = 'ISO 8502-4; MIL-HDBK-1110, section 9.6.6'
/** Data sheets' usual upper limit (IMO MSC.215(82); public paint guides). */
const humidLimitShare = 0.85

export const dew = defineSum({
  id: 'dew',
  doc: 'Dew point, and whether a surface is far enough above it to be coated.',
  inputs: [
    {
      name: 'air',
      dimension: 'temperature',
      required: true,
      limits: { atLeast: -45, atMost: 60 },
      doc: 'Air temperature near the surface.',
      example: '16 °C',
    },
    {
      name: 'humidity',
      dimension: 'share',
      required: true,
      limits: { over: 0, atMost: 1 },
      doc: 'Relative humidity.',
      example: '71 %',
    },
    {
      name: 'surface',
      dimension: 'temperature',
      required: false,
      limits: { atLeast: -45, atMost: 120 },
      doc: 'Temperature of the surface itself, for the verdict.',
      example: '13 °C',
    },
    {
      name: 'limit',
      dimension: 'temperatureDifference',
      required: false,
      default: '3 °C',
      limits: { over: 0, atMost: 20 },
      doc: 'Least margin over the dew point; 5 °F where a specification says so.',
      example: '3 °C',
    },
  ],
  work: (given) => {
    const air = { airC: given.number('air'), humidityShare: given.number('humidity') }
    const limitK = given.number('limit')
    const dewPointC = dewPoint(air)
    const surfaceC = given.optional('surface')
    const verdict = surfaceC === undefined ? undefined : dewRule({ surfaceC, dewC: dewPointC, limitK })
    return {
      results: [
        result('dewPointC', dewPointC, 'temperature'),
        ...(verdict ? verdictResults(verdict) : []),
        result('leastSurfaceC', dewPointC + limitK, 'temperature'),
        result('waterGPerM3', 1000 * absoluteHumidity(air), 'number'),
        result('wetBulbC', wetBulb({ ...air, pressurePa: standardPressurePa }), 'temperature'),
      ],
      how: [
        how('sums.dewMagnus', { ...air, dewPointC }),
        ...(surfaceC !== undefined && verdict
          ? [how('sums.dewMargin', { surfaceC, dewPointC, marginK: verdict.marginK, limitK })]
          : []),
      ],
      notes: [...airNotes(air, dewPointC), surfaceNote(verdict, dewPointC + limitK)],
      sources: [formula, rule],
    }
  },
})

function verdictResults(verdict: DewVerdict): SumAnswer['results'] {
  return [
    result('verdict', verdict.go ? 'go' : 'no', 'text'),
    result('marginK', verdict.marginK, 'temperatureDifference'),
    result('state', verdict.state, 'text'),
  ]
}

function airNotes(air: { readonly airC: number; readonly humidityShare: number }, dewPointC: number): Note[] {
  const notes: Note[] = []
  if (air.humidityShare > humidLimitShare)
    notes.push({
      code: 'sums.dewHumid',
      severity: 'notice',
      data: { humidityShare: air.humidityShare, limitShare: humidLimitShare },
      source: 'IMO MSC.215(82); public paint guides',
    })
  if (dewPointC < 0)
    notes.push({
      code: 'sums.dewFrost',
      severity: 'info',
      data: { dewPointC, frostPointC: frostPoint(air) },
      source: formula,
    })
  return notes
}

function surfaceNote(verdict: DewVerdict | undefined, leastSurfaceC: number): Note {
  if (verdict === undefined)
    return { code: 'sums.dewNoSurface', severity: 'missing', data: { leastSurfaceC }, source: rule }
  const { marginK, limitK, state } = verdict
  const data = { marginK, limitK, leastSurfaceC }
  if (state === 'wet') return { code: 'sums.dewSurfaceWet', severity: 'notice', data, source: rule }
  if (state === 'close') return { code: 'sums.dewSurfaceClose', severity: 'notice', data, source: rule }
  return { code: 'sums.dewHoldsThroughout', severity: 'info', data, source: rule }
}
