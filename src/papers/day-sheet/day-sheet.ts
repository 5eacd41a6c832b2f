/**
 * The sheet for the wall: one page for one day. What does not fit is counted and left to the plan; only how the coats are
 * laid off goes on over the page.
 */
import { paragraph } from '../blocks.ts'
import type { Column } from '../flow.ts'
import type { Kit } from '../kit.ts'
import { columnOf, measureOf } from '../page.ts'
import { type Drawing, inked, line, textAt } from '../shapes.ts'
import { sheetsOf } from '../sheets.ts'
import { beside, type Strip, space, stacked } from '../strips.ts'
import type { PdfSheets } from '../to-pdf.ts'
import { dayCautions } from './day-cautions.ts'
import { type DayData, type DayPour, dayData } from './day-data.ts'
import { type Density, densities, tightest } from './density.ts'
import { hoursAxis } from './hours-axis.ts'
import { layingOff } from './laying-off.ts'
import { type CardSize, cardHeight, cardSizes, mixCard } from './mix-card.ts'
import { mixTable } from './mix-table.ts'
import { paintHoursOf, paintStrip, verdictKey } from './paint-strips.ts'
import { readingsChart, readingsOf, readingsTable } from './readings.ts'
import { daySentence, paintSentence } from './sentence.ts'
import { moreStrip, stepStrips } from './steps-list.ts'
import { tape } from './tape.ts'

export function daySheetSheets(kit: Kit, date: string): PdfSheets {
  const { top, bottom } = columnOf(kit.page)
  const data = dayData(kit, date)
  const pages = pagesWith(fitted(kit, data, bottom - top), layingOff(kit, data), bottom - top)
  return sheetsOf(kit, {
    title: kit.say.label('paperTitle.daySheet'),
    date: kit.say.date(date),
    pages: pages.map((page) => [...page.draw(top), ...notesBelow(kit, { top: top + page.height, bottom })]),
  })
}

/** After the page as far as its room goes, then on pages of their own: a strip is never parted. */
function pagesWith(page: Strip, strips: readonly Strip[], height: number): readonly Strip[] {
  const pages = [[page]]
  for (const strip of strips) {
    const last = pages.at(-1)!
    const used = last.reduce((sum, one) => sum + one.height, 0)
    if (used + strip.height <= height) last.push(strip)
    else pages.push([strip])
  }
  return pages.map(stacked)
}

/** What is left of the sheet is ruled, to write on. */
function notesBelow(kit: Kit, { top, bottom }: Column): Drawing {
  const { x, width } = measureOf(kit.page)
  const step = 8
  const count = Math.min(12, Math.floor((bottom - top - 5) / step))
  if (count < 1) return []
  return [
    textAt([x, top + 5], kit.say.label('paper.notes'), 'caption', { ink: 'ink2' }),
    ...Array.from({ length: count }, (_, k) => top + 5 + (k + 1) * step).map((y) =>
      inked(line('thin', [x, y], [x + width, y]), 'hair'),
    ),
  ]
}

/** The roomiest setting that fits; the tightest with its lists cut when none does. */
export function fitted(kit: Kit, data: DayData, height: number): Strip {
  for (const density of densities) {
    const whole = pageStrip(kit, data, {
      density,
      cautions: data.cautions.length,
      stepsHeight: Number.POSITIVE_INFINITY,
    })
    if (whole.height <= height) return whole
  }
  return cutToFit(kit, data, height)
}

/** Cautions go first down to four, then steps, then the rest of the cautions; each says how many are left out. */
function cutToFit(kit: Kit, data: DayData, height: number): Strip {
  const bare = (cautions: number) => pageStrip(kit, data, { density: tightest, cautions, stepsHeight: 0 })
  const least = 60
  let cautions = data.cautions.length
  while (cautions > 0 && bare(cautions).height > height - least) cautions--
  const stepsHeight = Math.max(0, height - bare(cautions).height)
  return pageStrip(kit, data, { density: tightest, cautions, stepsHeight })
}

type Setting = {
  readonly density: Density
  readonly cautions: number
  /** No more room than this for the steps. */
  readonly stepsHeight: number
}

function pageStrip(kit: Kit, data: DayData, { density, cautions, stepsHeight }: Setting): Strip {
  return stacked([
    header(kit, data),
    space(2.5),
    hours(kit, data, density),
    ...(data.cautions.length === 0
      ? []
      : [space(3), dayCautions(kit, data, { detail: density.cautions, most: cautions })]),
    pours(kit, data, density),
    space(1.5),
    steps(kit, data, { density, stepsHeight }),
  ])
}

function header(kit: Kit, data: DayData): Strip {
  const of = { ...measureOf(kit.page), setter: kit.setter }
  const paint = paintSentence(kit, data)
  return stacked([
    ...paragraph(daySentence(kit, data), 'sheet', of).slice(0, 3),
    ...(paint === '' ? [] : [space(0.5), ...paragraph(paint, 'say', of).slice(0, 3)]),
  ])
}

function hours(kit: Kit, data: DayData, density: Density): Strip {
  if (!data.day) return space(0)
  const axis = hoursAxis(kit, data)
  const strips = paintHoursOf(kit, data, axis).slice(0, density.mostStrips)
  const readings = readingsOf(kit, data, axis)
  return stacked([
    tape(kit, data, { axis, mostPeople: density.mostPeople }),
    ...(strips.length === 0
      ? []
      : [space(1.5), ...strips.map((strip) => paintStrip(kit, strip, axis)), verdictKey(kit, axis)]),
    ...(readings && density.chart > 0
      ? [space(1.5), readingsChart(kit, readings, { axis, height: density.chart })]
      : []),
    ...(readings ? [space(1.2), readingsTable(kit, readings, axis)] : [space(2), ...noReadings(kit)]),
  ])
}

const noReadings = (kit: Kit): readonly Strip[] =>
  paragraph(kit.say.sentence('paper.noReadings'), 'small', { ...measureOf(kit.page), setter: kit.setter })

function pours(kit: Kit, data: DayData, density: Density): Strip {
  const shown = data.pours.slice(0, density.mostPours)
  const more = data.pours.length - shown.length
  if (shown.length === 0) return space(0)
  const drawn =
    density.mixing === 'table' ? mixTable(kit, shown) : cards(kit, shown, cardSizes[density.mixing])
  return stacked([
    space(2.5),
    drawn,
    ...(more > 0 ? [moreStrip(kit, 'paper.morePours', more, measureOf(kit.page))] : []),
  ])
}

const cardGap = 3

function cards(kit: Kit, shown: readonly DayPour[], size: CardSize): Strip {
  const { x, width } = measureOf(kit.page)
  const cardWidth = (width - cardGap * (size.perRow - 1)) / size.perRow
  const rows = Array.from({ length: Math.ceil(shown.length / size.perRow) }, (_, row) =>
    shown.slice(row * size.perRow, (row + 1) * size.perRow),
  )
  return stacked(
    rows.flatMap((row, index) => {
      const height = Math.max(...row.map((pour) => cardHeight(kit, pour, size, cardWidth)))
      const strips = row.map((pour, column) =>
        mixCard(kit, pour, { x: x + column * (cardWidth + cardGap), width: cardWidth, height, size }),
      )
      return [...(index > 0 ? [space(cardGap)] : []), beside(strips)]
    }),
  )
}

function steps(
  kit: Kit,
  data: DayData,
  { density, stepsHeight }: Pick<Setting, 'density' | 'stepsHeight'>,
): Strip {
  if (data.steps.length === 0) return space(0)
  const strips = stepStrips(kit, data, density.steps)
  const whole = stacked(strips)
  if (whole.height <= stepsHeight) return whole
  const row = strips[0]?.height ?? 1
  const room = Math.max(0, Math.floor((stepsHeight - 5) / row))
  const more = data.steps.length - Math.min(data.steps.length, 2 * room)
  const fewer: DayData = { ...data, steps: data.steps.slice(0, 2 * room) }
  return stacked([
    ...(room > 0 ? stepStrips(kit, fewer, density.steps) : []),
    ...(stepsHeight > 0 ? [moreStrip(kit, 'paper.moreSteps', more, measureOf(kit.page))] : []),
  ])
}
