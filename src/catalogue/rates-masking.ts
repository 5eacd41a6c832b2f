/** Hours to strike and mask edges, take tape off, and get hardware off and on again. */
import { clockGuess, guess, leaning, type RateRow, recorded } from './rate-fields.ts'
import { refitLogs, yardLogs } from './sources.ts'

export const maskingRates = {
  'mask-line': guess('m', '2.5 min', '2 min', '3 min'),
  'mask-corner': guess('piece', '3 min', '2 min', '4 min'),
  'mask-fitting': recorded(`${refitLogs}, one loop of a handrail`, 'piece', '2 min'),
  'mask-drain': guess('piece', '2 min', '1 min', '4 min'),
  'tape-off': guess('m', '0.5 min', '0.3 min', '1 min'),
  'strike-line': leaning(`${yardLogs}, waterline of a sloop most of a day`, 'm', '15 min', '8 min', '22 min'),
  'level-boat': guess('job', '1.5 h', '1 h', '3 h'),
  'lay-out-panels': guess('m', '3 min', '2 min', '5 min'),
} satisfies Record<string, RateRow>

/** Hardware: off by kind, back on by a factor of it, and holes and cracks by piece or length. */
export const fittingRates = {
  'strip-small-fitting': guess('piece', '0.3 h', '0.2 h', '0.6 h'),
  'strip-cleat-or-stanchion': guess('piece', '0.85 h', '0.75 h', '1 h'),
  'strip-rub-rail': guess('job', '8 h', '6 h', '10 h'),
  'bed-hatch': recorded(
    `${yardLogs}, four hatches and two round ones in 5 h`,
    'piece',
    '0.75 h',
    '0.7 h',
    '0.85 h',
  ),
  'fill-hole': guess('piece', '0.25 h', '0.15 h', '0.4 h'),
  'fill-crack': guess('m', '2.5 h', '1.7 h', '3.3 h'),
  'photograph-and-bag': guess('piece', '3 min', '2 min', '5 min'),
} satisfies Record<string, RateRow>

/** What stands before and after the work on the surface. */
export const jobRates = {
  survey: guess('job', '4 h', '3 h', '8 h'),
  'record-marks': guess('job', '1 h', '0.5 h', '2 h'),
  'settle-dust': clockGuess('session', '12 h', '8 h', '16 h'),
  'check-stands': guess('job', '0.25 h', '0.2 h', '0.5 h'),
  'move-stands': guess('job', '1 h', '0.5 h', '2 h'),
  'map-fuel': guess('job', '1 h', '0.5 h', '2 h'),
  'snag-round': guess('job', '2 h', '1 h', '4 h'),
  handover: guess('job', '2 h', '1 h', '4 h'),
} satisfies Record<string, RateRow>
