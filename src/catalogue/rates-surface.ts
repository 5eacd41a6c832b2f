/** Hours to wash, sand, grind, fill and fair; person-hours for one square metre and one pass. */
import { guess, leaning, type RateRow } from './rate-fields.ts'
import { yardLogs } from './sources.ts'

export const surfaceRates = {
  'wash-dewax': guess('m²', '0.12 h', '0.08 h', '0.15 h'),
  'water-break-test': guess('m²', '0.02 h', '0.01 h', '0.03 h'),
  'wash-blush': guess('m²', '0.06 h', '0.04 h', '0.1 h'),
  'remove-old-paint': leaning(`${yardLogs}, area of the hull guessed`, 'm²', '0.55 h', '0.5 h', '0.6 h'),
  'sand-80': guess('m²', '0.2 h', '0.15 h', '0.3 h'),
  'sand-120': guess('m²', '0.15 h', '0.1 h', '0.25 h'),
  'sand-220': guess('m²', '0.12 h', '0.08 h', '0.2 h'),
  'sand-320': guess('m²', '0.12 h', '0.08 h', '0.2 h'),
  'sand-400': guess('m²', '0.12 h', '0.08 h', '0.2 h'),
  'sand-by-hand': leaning(`${yardLogs}, one deck in 320, area guessed`, 'm²', '0.5 h', '0.3 h', '0.7 h'),
  'scuff-panel': guess('m²', '0.15 h', '0.1 h', '0.25 h'),
  'grind-moulded-non-skid': guess('m²', '1.1 h', '0.8 h', '1.5 h'),
  'grind-bonded-grit': guess('m²', '2 h', '1.5 h', '3 h'),
  'grind-laminate': guess('m²', '1 h', '0.6 h', '1.5 h'),
  'laminate-ply': guess('m²', '0.5 h', '0.3 h', '0.8 h'),
  'skim-filler': guess('m²', '0.22 h', '0.15 h', '0.3 h'),
  'long-board': guess('m²', '0.6 h', '0.4 h', '0.8 h'),
  'guide-coat': guess('m²', '0.03 h', '0.02 h', '0.05 h'),
  'block-primer': guess('m²', '0.32 h', '0.25 h', '0.4 h'),
  'pinhole-round': guess('m²', '0.08 h', '0.05 h', '0.15 h'),
  vacuum: guess('m²', '0.03 h', '0.02 h', '0.05 h'),
  'solvent-wipe': guess('m²', '0.04 h', '0.03 h', '0.06 h'),
  tack: guess('m²', '0.02 h', '0.01 h', '0.03 h'),
  'drain-and-dry': guess('m²', '0.02 h', '0.01 h', '0.03 h'),
  'clean-shop': guess('job', '2 h', '1 h', '4 h'),
} satisfies Record<string, RateRow>
