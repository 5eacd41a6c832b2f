import { describe, expect, it } from 'vitest'
import { catalogue, protections } from '#catalogue'
import { cautions } from './cautions.ts'
import { readMessage } from './message.ts'
import { protectionLabels } from './protection-labels.ts'

const hazards = [...catalogue.hazards, ...catalogue.standingCautions]

describe('cautions', () => {
  it('stand for exactly the hazards of the catalogue', () => {
    expect(Object.keys(cautions).sort()).toEqual(hazards.map(({ code }) => code).sort())
  })

  it('speak only of figures that the hazard carries', () => {
    for (const { code, data } of hazards) {
      const spoken = [...readMessage(cautions[code] ?? '', String).arguments.keys()].sort()
      expect(
        spoken.filter((name) => !(name in data)),
        code,
      ).toEqual([])
    }
  })

  it('say what, why and what to do: two sentences or more, none longer than fifty words', () => {
    for (const [code, text] of Object.entries(cautions)) {
      const sentences = text.split(/(?<=[.])\s+/)
      expect(sentences.length, code).toBeGreaterThanOrEqual(2)
      for (const sentence of sentences) expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(50)
    }
  })

  it('defer to the safety sheet where a product is the danger', () => {
    const products = hazards.filter(({ families, id }) => families.length > 0 && id !== 'leftovers')
    for (const { code } of products) expect(cautions[code], code).toMatch(/safety sheet|The can says/)
  })
})

describe('protection', () => {
  it('has a plain word for each key', () => {
    expect(Object.keys(protectionLabels)).toEqual(protections.map((each) => `protection.${each}`))
  })
})
