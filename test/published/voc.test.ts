import { mostThinner, vocBySolids, vocLessWater } from '#core/coating'
import { checkPublished, figure, type Given } from './published.ts'

/** The ratio of the two units is the same for mass over volume, so gallons and pounds are worked in as they stand. */
const given = (row: Given, name: string) => (name in row ? figure(row, name) : 0)

const POUND_A_GALLON = 0.45359237 / 0.003785411784

checkPublished('voc', {
  mixedLbGal: (row) =>
    vocLessWater([
      { volume: figure(row, 'volumeA'), vocMass: figure(row, 'volumeA') * figure(row, 'vocA') },
      { volume: given(row, 'volumeB'), vocMass: given(row, 'volumeB') * given(row, 'vocB') },
      { volume: given(row, 'thinner'), vocMass: given(row, 'thinner') * given(row, 'thinnerDensity') },
      { volume: given(row, 'water'), vocMass: 0, exemptVolume: given(row, 'water') },
    ])!,
  byVolumeLbGal: (row) =>
    vocLessWater([
      {
        volume: 1,
        vocMass: (figure(row, 'vocPct') / 100) * figure(row, 'density'),
        exemptVolume: figure(row, 'waterPct') / 100,
      },
    ])!,
  mostThinnerGal: (row) =>
    mostThinner({
      voc: figure(row, 'voc'),
      volume: figure(row, 'volume'),
      thinnerDensity: figure(row, 'thinnerDensity'),
      limit: figure(row, 'limit'),
    }),
  bySolidsLbGal: (row) => vocBySolids({ voc: figure(row, 'voc'), solventDensity: 7.36 }),
  gramsPerLitre: (row) => figure(row, 'lbGal') * POUND_A_GALLON,
})
