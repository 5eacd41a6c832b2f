import {
  ageFactor,
  type CureTable,
  cureTable,
  equivalentAge,
  equivalentAgeByFactor,
  hoursAt,
  maturity,
  type WarmSpan,
} from '#core/cure'
import { checkPublished, figure, type Given } from './published.ts'

/** `t0C`, `h0`, `t1C`, `h1`, ... of a row, as far as they go. */
const spans = (given: Given): WarmSpan[] =>
  [0, 1, 2, 3]
    .filter((index) => `t${index}C` in given)
    .map((index) => ({ airC: figure(given, `t${index}C`), hours: figure(given, `h${index}`) }))

const table = (given: Given): CureTable => cureTable(spans(given))

const rate = (given: Given) => ({
  activationEnergy: figure(given, 'activationJ'),
  referenceC: figure(given, 'referenceC'),
})

const maturityOf = (given: Given) => maturity({ datumC: figure(given, 'datumC'), spans: spans(given) })

checkPublished('recoat-tables', {
  leastHours: (given) => hoursAt(table(given), figure(given, 'airC'), 'least').hours,
  factorPer10C: (given) => {
    const from = figure(given, 'fromC')
    const to = figure(given, 'toC')
    const ratio = hoursAt(table(given), from, 'least').hours / hoursAt(table(given), to, 'least').hours
    return ratio ** (10 / (to - from))
  },
})

checkPublished('maturity', {
  maturity: maturityOf,
  maturityDays: (given) => maturityOf(given) / 24,
  maturityAsHours: (given) => maturityOf(given) / (figure(given, 'referenceC') - figure(given, 'datumC')),
  ageFactor: (given) => ageFactor({ ...rate(given), airC: figure(given, 'airC') }),
  // ln of the factor is proportional to the energy, so one trial energy gives the one that doubles.
  doublingActivation: (given) => {
    const referenceC = figure(given, 'fromC')
    const trial = ageFactor({ activationEnergy: 1000, referenceC, airC: referenceC + 10 })
    return Math.LN2 / Math.log(trial)
  },
  equivalentAge: (given) => equivalentAge({ ...rate(given), spans: spans(given) }),
  equivalentAgeByFactor: (given) =>
    equivalentAgeByFactor({
      factorPer10K: figure(given, 'factor'),
      referenceC: figure(given, 'referenceC'),
      spans: spans(given),
    }),
})
