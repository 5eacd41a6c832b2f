import { describe, expect, it } from 'vitest'
import { type ConsumableRate, consumables } from './consumables.ts'

const disc: ConsumableRate = { id: 'disc', driver: 'areaM2', perDriver: 0.4, unitsPerPiece: 1 }
const tape: ConsumableRate = { id: 'tape', driver: 'lengthM', perDriver: 1.1, unitsPerPiece: 50 }
const gloves: ConsumableRate = { id: 'gloves', driver: 'personDays', perDriver: 4, unitsPerPiece: 100 }

describe('consumables', () => {
  it('rounds up once, over all uses', () => {
    const { needs } = consumables({
      rates: [disc],
      uses: [
        { consumable: 'disc', driver: 'areaM2', quantity: 18, times: 2 },
        { consumable: 'disc', driver: 'areaM2', quantity: 14, times: 1 },
      ],
    })
    expect(needs).toEqual([{ consumable: 'disc', units: 20, pieces: 20 }])
  })

  it('counts rolls and boxes by what is in one', () => {
    const { needs } = consumables({
      rates: [tape, gloves],
      uses: [
        { consumable: 'tape', driver: 'lengthM', quantity: 30, times: 4 },
        { consumable: 'gloves', driver: 'personDays', quantity: 26, times: 1 },
      ],
    })
    expect(needs.map(({ consumable, pieces }) => [consumable, pieces])).toEqual([
      ['gloves', 2],
      ['tape', 3],
    ])
  })

  it('buys one can of 0.3 L for three tenths of a litre, not two', () => {
    const uses = [1, 2, 3].map(() => ({
      consumable: 'wipe',
      driver: 'count' as const,
      quantity: 0.1,
      times: 1,
    }))
    const rates = [{ id: 'wipe', driver: 'count' as const, perDriver: 1, unitsPerPiece: 0.3 }]
    expect(consumables({ rates, uses }).needs[0]?.pieces).toBe(1)
  })

  it('leaves out what has no rate, another driver or no figure, and says so', () => {
    const { needs, notes } = consumables({
      rates: [disc, tape],
      uses: [
        { consumable: 'wipes', driver: 'areaM2', quantity: 1, times: 1 },
        { consumable: 'disc', driver: 'lengthM', quantity: 1, times: 1 },
        { consumable: 'tape', driver: 'lengthM', quantity: Number.NaN, times: 1 },
      ],
    })
    expect(needs).toEqual([])
    expect(notes.map((note) => note.code)).toEqual([
      'stores.consumableUnknown',
      'stores.consumableDriver',
      'stores.consumableFigure',
    ])
  })
})
