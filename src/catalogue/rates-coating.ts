/** Hours to put coats on, and what every coat and every session costs before and after it. */
import { clockGuess, guess, leaning, type RateRow } from './rate-fields.ts'
import { topsidesLog } from './sources.ts'

export const coatingRates = {
  'roll-primer': leaning(`${topsidesLog} (0.29), and quicker practice`, 'm²', '0.15 h', '0.08 h', '0.29 h'),
  'roll-and-tip': leaning(
    `${topsidesLog} (0.29 to 0.32), and a 24 ft hull by one person (0.14)`,
    'm²',
    '0.25 h',
    '0.14 h',
    '0.32 h',
  ),
  'brush-coat': guess('m²', '0.35 h', '0.25 h', '0.5 h'),
  'stripe-coat': guess('m', '0.05 h', '0.03 h', '0.08 h'),
  'roll-texture': guess('m²', '0.25 h', '0.15 h', '0.4 h'),
  'broadcast-bead': guess('m²', '0.15 h', '0.1 h', '0.25 h'),
  'remove-loose-bead': guess('m²', '0.08 h', '0.05 h', '0.12 h'),
  'gelcoat-pass': guess('m²', '0.3 h', '0.2 h', '0.5 h'),
  'coat-set-up': clockGuess('coat', '45 min', '30 min', '60 min'),
  'coat-clean-up': clockGuess('coat', '30 min', '20 min', '45 min'),
  'session-open': clockGuess('session', '30 min', '15 min', '45 min'),
  'session-close': clockGuess('session', '30 min', '15 min', '45 min'),
  'mix-pour': guess('pour', '5 min', '3 min', '10 min'),
  'read-conditions': guess('reading', '3 min', '2 min', '5 min'),
  'wet-film-check': guess('reading', '1 min', '1 min', '2 min'),
  'trial-board': guess('piece', '45 min', '30 min', '90 min'),
  'test-patch': guess('piece', '30 min', '20 min', '45 min'),
  'cover-deck': guess('m²', '0.06 h', '0.04 h', '0.1 h'),
  'finish-audit': guess('m²', '0.03 h', '0.02 h', '0.05 h'),
  'touch-up': guess('piece', '15 min', '10 min', '30 min'),
} satisfies Record<string, RateRow>
