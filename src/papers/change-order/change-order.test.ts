import { describe, expect, it } from 'vitest'
import { paperJob, paperPlan } from '../../../test/support/paper-plan.ts'
import { testPress } from '../../../test/support/paper-press.ts'
import { createKit } from '../kit.ts'
import { createSetter } from '../setter.ts'
import { changeOrderSheets } from './change-order.ts'
import { fileNames } from './file-names.ts'

describe('a change order', async () => {
  const setter = createSetter(await testPress())
  const [change] = paperPlan.money!.changes
  const sheets = changeOrderSheets(createKit({ plan: paperPlan, job: paperJob, page: 'A4' }, setter), change!)
  const text = sheets.pages
    .flat()
    .flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
    .join(' ')
    .replaceAll('\u2009', ' ')

  it('stands on one sheet with what was found, hours, material, days and price', () => {
    expect(sheets.pages).toHaveLength(1)
    for (const shown of [
      'Loose along its after edge',
      'Photo 61',
      'Material: Epoxy primer, grey',
      '0.5 working days',
      '325.34',
      '81.34',
      '406.68',
    ])
      expect(text).toContain(shown)
  })

  it('has a line for the date and one for the signature of either side', () => {
    expect(text.match(/Signature/g)).toHaveLength(2)
  })
})

describe('fileNames', () => {
  it('are safe in any file system and never the same twice', () => {
    expect(fileNames(['Locker', 'locker', '../../etc', '', '帆'])).toEqual([
      'locker',
      'locker-2',
      'etc',
      'change',
      'change-2',
    ])
    expect(fileNames(['x'.repeat(300)])[0]!.length).toBeLessThanOrEqual(60)
  })
})
