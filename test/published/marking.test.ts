import { panel } from '#core/marking'
import { checkPublished, figure } from './published.ts'

checkPublished('non-skid-panel', {
  'panel left of its field': (given) => {
    const { panel: got } = panel({
      lengthM: figure(given, 'lengthMm') / 1000,
      widthM: figure(given, 'widthMm') / 1000,
      borderM: figure(given, 'borderMm') / 1000,
      cornerRadiusM: 0,
      count: 1,
    })
    return (got?.leftShare ?? Number.NaN) * 100
  },
})
