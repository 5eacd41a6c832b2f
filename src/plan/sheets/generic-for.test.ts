import { describe, expect, it } from 'vitest'
import { catalogue } from '#catalogue'
import { plan } from '#plan'
import { planInput, projectRaw, sampleRaw, withCell } from '../../../test/support/samples.ts'
import { readCatalogue } from '../read-catalogue.ts'
import { genericFor } from './generic-for.ts'
import { resolveSheet } from './resolve-sheet.ts'

const { sheets } = readCatalogue.run({ catalogue })
const idOf = (own: Parameters<typeof genericFor>[0]) => genericFor(own, sheets)?.sheet.id

describe('the sheet behind a product', () => {
  it('is the one it names, whatever it is', () => {
    expect(idOf({ like: 'gelcoat', family: 'epoxy', role: 'filler' })).toBe('gelcoat')
    expect(idOf({ like: 'none such', family: 'epoxy', role: 'filler' })).toBeUndefined()
  })

  it('is else one of its kind, or of its family that does the same work', () => {
    expect(idOf({ family: 'two-part polyurethane', role: 'finish' })).toBe('two-part-finish')
    expect(idOf({ family: 'epoxy', role: 'filler' })).toBe('epoxy-fairing')
    expect(idOf({ family: 'epoxy' })).toBeUndefined()
    expect(idOf({ family: 'acrylic', role: 'laminating resin' })).toBeUndefined()
  })

  it('leaves nothing that is not assumed, and no wait out', () => {
    const own = { id: 'tin', family: 'epoxy', role: 'filler' } as const
    const { sheet } = resolveSheet(own, genericFor(own, sheets))
    expect(sheets.get('epoxy-fairing')?.certainty.mix).not.toBe('assumed')
    expect([sheet.mix.certainty, sheet.clocks.dryToSand?.certainty]).toEqual(['assumed', 'assumed'])
    expect(sheet.clocks.dryToSand?.value.every(({ hours }) => hours > 0)).toBe(true)
  })
})

describe('a product of which nobody knows how it dries', () => {
  const raw = sampleRaw('open-powerboat')
  const told = (cells: Readonly<Record<string, string>>) => {
    const bare = structuredClone(raw) as unknown as { work: { sheets: Record<string, unknown> } }
    const layer = plan(planInput(projectRaw(raw), undefined)).buildUps.layers.find(
      ({ role }) => role === 'fairing',
    )!
    bare.work.sheets[layer.sheet] = { name: 'Tin', ...cells }
    return plan(planInput(projectRaw(bare as unknown as typeof raw), undefined)).notes.filter(
      ({ code }) => code === 'buildup.dryingUnknown',
    )
  }

  it('is told of, and not once its kind is known', () => {
    expect(told({ role: 'fairing' })).toHaveLength(1)
    expect(told({ role: 'fairing' })[0]).toMatchObject({ severity: 'missing', data: { name: 'Tin' } })
    expect(told({ role: 'fairing', family: 'epoxy' })).toEqual([])
    expect(told({ role: 'fairing', recoatLeast: '20C: 8h', dryToSand: '20C: 12h' })).toEqual([])
  })
})

it('keeps figures of the sheet itself before those of its kind', () => {
  const document = withCell(raw(), 'work', ['sheets', 'tin', 'dryFilm'], '33 µm')
  const own = projectRaw(document).work.sheets.find(({ id }) => id === 'tin')!
  const made = resolveSheet(
    { ...own, family: 'epoxy', role: 'primer' },
    genericFor({ family: 'epoxy', role: 'primer' }, sheets),
  )
  expect(made.sheet.dryFilmM).toMatchObject({ value: 33e-6, certainty: 'sheet' })
})

const raw = () => sampleRaw('open-powerboat')
