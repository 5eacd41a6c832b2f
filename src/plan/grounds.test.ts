import { expect, it } from 'vitest'
import type { RawDocument } from '#job'
import { projectRaw, sampleRaw, withCell } from '../../test/support/samples.ts'
import { grounds } from './grounds.ts'

type Cells = Readonly<Record<string, string>>

/** One finding alone on the transom. */
const groundOf = (finding: Cells, zone: Cells = {}) => {
  const sample = sampleRaw('open-powerboat')
  const bare: RawDocument = { ...sample, work: { ...sample.work, findings: {} } }
  const found = Object.entries({ zone: 'transom', hours: '1 h', ...finding }).reduce(
    (made, [key, text]) => withCell(made, 'work', ['findings', 'one', key], text),
    bare,
  )
  const raw = Object.entries(zone).reduce(
    (made, [key, text]) => withCell(made, 'work', ['zones', 'transom', key], text),
    found,
  )
  const { work } = projectRaw(raw)
  return grounds.run({ findings: work.findings, zones: work.zones }).transom
}
const filled = { sheet: projectRaw(sampleRaw('open-powerboat')).work.sheets[0]!.id, count: '2' }

it('takes the measured area, else a dish of a hole and a strip along a crack', () => {
  const mended = (cells: Cells) => groundOf({ ...filled, ...cells })?.mendedM2
  expect(mended({ kind: 'hole', size: '20 mm', area: '0.3 m²' })).toBeCloseTo(0.3, 12)
  // Dished to three times the diameter, common practice; two of them.
  expect(mended({ kind: 'hole', size: '20 mm' })).toBeCloseTo((2 * Math.PI * 0.06 ** 2) / 4, 12)
  // A strip of 50 mm along a crack, assumed.
  expect(mended({ kind: 'crack', size: '400 mm' })).toBeCloseTo(2 * 0.4 * 0.05, 12)
})

it('counts what is filled, and no finding that is only cleaned', () => {
  expect(groundOf({ kind: 'old silicone', area: '1 m²' })).toBeUndefined()
})

it('has old pattern off where it was measured, else over all of the zone', () => {
  expect(groundOf({ kind: 'worn non-skid', area: '1.5 m²' })?.patternOff).toBeCloseTo(1.5, 12)
  expect(groundOf({ kind: 'worn non-skid' })?.patternOff).toBe('whole')
  expect(groundOf({ kind: 'old silicone' }, { sandedWith: 'P60' })).toEqual({
    patternOff: 'none',
    mendedM2: 0,
    sandedWith: 'P60',
  })
})
