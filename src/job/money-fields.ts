/** The *money* document: a member who may not see prices never receives it, and the plan runs without. */
import { percent } from './bounds.ts'
import type { Sections } from './field.ts'

export const moneyFields = {
  terms: {
    shape: 'one',
    doc: 'The terms of the quote.',
    fields: {
      currency: {
        kind: 'currency',
        need: 'required',
        standIn: 'XXX',
        doc: 'Currency of all prices: its code after ISO 4217, or its sign.',
      },
      margin: {
        kind: 'quantity',
        dimension: 'share',
        ...percent,
        doc: 'Added to materials and consumables.',
      },
      tax: { kind: 'quantity', dimension: 'share', ...percent, doc: 'Sales tax or VAT.' },
      deposit: { kind: 'quantity', dimension: 'share', ...percent, doc: 'Share due on signing.' },
      sundries: {
        kind: 'money',
        doc: 'One sum for everything that is used up; then consumables need no prices.',
      },
      signed: { kind: 'money', doc: 'Total with tax that the owner signed for.' },
      signedOn: { kind: 'date', doc: 'When it was signed.' },
      quoteNumber: { kind: 'text', doc: 'Number of the quote.' },
      validDays: { kind: 'count', least: 1, most: 365, doc: 'How long the quote stands.' },
      exclusions: { kind: 'text', doc: 'What the quote does not hold.' },
    },
  },
  rates: {
    shape: 'many',
    doc: 'What an hour costs the owner of the boat.',
    fields: {
      role: { kind: 'choice', choices: ['lead', 'helper'], need: 'required', doc: 'Whose hour.' },
      hourly: { kind: 'money', per: 'hour', need: 'required', doc: 'Price of one hour.' },
    },
  },
  prices: {
    shape: 'many',
    doc: 'What a pack costs the shop.',
    fields: {
      pack: { kind: 'ref', to: 'packs', need: 'required', doc: 'Which pack.' },
      price: { kind: 'money', per: 'piece', need: 'required', doc: 'Price of one.' },
    },
  },
  consumablePrices: {
    shape: 'many',
    doc: 'What consumables cost the shop, by the name the catalogue gives them.',
    fields: {
      consumable: { kind: 'ref', to: 'consumables', need: 'required', doc: 'Which consumable.' },
      price: { kind: 'money', per: 'piece', need: 'required', doc: 'Price of one piece, metre or litre.' },
    },
  },
  unitPrices: {
    shape: 'many',
    doc: 'What hidden damage costs, agreed beforehand.',
    fields: {
      name: { kind: 'text', need: 'required', doc: 'What kind of damage.' },
      per: { kind: 'text', need: 'required', doc: 'Per what, for example per 0.1 m².' },
      price: { kind: 'money', need: 'required', doc: 'Price per unit.' },
    },
  },
  costs: {
    shape: 'many',
    doc: 'Other fixed sums: lift, yard rent, disposal.',
    fields: {
      name: { kind: 'text', need: 'required', doc: 'What for.' },
      amount: { kind: 'money', need: 'required', doc: 'How much.' },
    },
  },
} as const satisfies Sections
