import { expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { genericSheetNames } from '#words'

it('every generic sheet can be chosen by the name it has in the catalogue', () => {
  const named = Object.entries(catalogue.sheets).map(([id, { cells }]) => [id, cells.name])
  expect([...genericSheetNames]).toEqual(named)
})
