/** How each input is written in the units of the reader: examples stand in empty boxes, and fill them when asked. */
import type { Sum, SumField } from '#sums'
import type { SumSystem, TypedTexts } from './kept-sums.ts'

/** What a reader of US units would write instead of the example of an input. */
const usExamples: Readonly<Record<string, string>> = {
  '16 °C': '60 °F',
  '13 °C': '55 °F',
  '20 °C': '68 °F',
  '3 °C': '5 °F',
  '50 µm': '2 mil',
  '28 m²': '300 ft²',
  '50 mm': '2 in',
  '6 mm': '1/4 in',
  '500 g': '1 lb',
  '1.1 kg/L': '9.2 lb/gal',
  '1.2 kg/L': '10 lb/gal',
  '450 g/m²': '1.5 oz/ft²',
  '0.5 L/h': '1 pt/h',
  '5C:24h,15C:10h,25C:6h': '41F:24h,59F:10h,77F:6h',
}

const metricExamples: Readonly<Record<string, string>> = { '1 qt': '1 L', '4 fl oz/qt': '125 ml/L' }

export const exampleOf = ({ example }: SumField, system: SumSystem): string =>
  (system === 'us' ? usExamples : metricExamples)[example] ?? example

export const examplesOf = (sum: Sum, system: SumSystem): TypedTexts =>
  Object.fromEntries(
    sum.inputs
      .filter(({ default: usual }) => usual === undefined)
      .map((field) => [field.name, exampleOf(field, system)]),
  )
