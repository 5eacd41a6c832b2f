/** A mix card: the cup in section with its levels, each part in ml and g, and the clock times of the pour. */

import {
  coverOf,
  coverTells,
  describeCover,
  describeHandling,
  type MixAmounts,
  type MixPart,
  mixAmounts,
  partKey,
} from '#plan'
import { fittedLines } from '../blocks.ts'
import { type FigureStyle, figureDrawing } from '../figure.ts'
import { noteFlag } from '../flags.ts'
import { hatchFor } from '../hatches.ts'
import type { Kit } from '../kit.ts'
import { box, type Drawing, line, moved, type Point, textAt } from '../shapes.ts'
import type { Strip } from '../strips.ts'
import type { StyleName } from '../type-styles.ts'
import { cup } from './cup.ts'
import type { DayPour, Pour } from './day-data.ts'

export type CardSize = {
  readonly perRow: number
  readonly cup: { readonly width: number; readonly height: number }
  readonly row: number
  readonly title: {
    readonly height: number
    readonly lines: number
    readonly about: number
    readonly style: StyleName
  }
  readonly part: StyleName
  readonly amount: FigureStyle
  readonly caption: StyleName
  readonly clock: StyleName
  readonly until: StyleName
  /** Lines that say what it covers and how it is poured out. */
  readonly said: number
}

export const cardSizes = {
  large: {
    perRow: 3,
    cup: { width: 15, height: 26 },
    row: 9,
    title: { height: 13, lines: 1, about: 2, style: 'label' },
    part: 'label',
    amount: { digits: 'figure', unit: 'unit' },
    caption: 'caption',
    clock: 'say',
    until: 'figure',
    said: 3,
  },
  small: {
    perRow: 4,
    cup: { width: 10, height: 18 },
    row: 7,
    title: { height: 12.6, lines: 2, about: 1, style: 'caption' },
    part: 'caption',
    amount: { digits: 'strong', unit: 'label' },
    caption: 'grid',
    clock: 'body',
    until: 'strong',
    said: 3,
  },
} as const satisfies Readonly<Record<string, CardSize>>

const inset = 2.2
const clockHeight = 9.2
/** Under the cup. */
const foot = 2

type Sized = { readonly size: CardSize }

/** Cards of one row are as high as the one with most to say. */
export function cardHeight(kit: Kit, { pour }: DayPour, size: CardSize, width: number): number {
  const parts = mixAmounts(pour).parts.length
  const said = saidLines(kit, pour, size, width - 2 * inset).length
  return (
    size.title.height + Math.max(parts * size.row, size.cup.height) + foot + saidHeight(said) + clockHeight
  )
}

const saidLead = 3.3
const saidHeight = (lines: number): number => (lines === 0 ? 0 : lines * saidLead + 0.8)

function saidLines({ say, setter }: Kit, pour: Pour, { said }: CardSize, width: number): readonly string[] {
  const cover = coverTells(pour) ? describeCover(pour) : undefined
  const text = [...(cover ? [cover] : []), ...describeHandling(pour)]
    .map(({ code, data }) => say.sentence(code, data))
    .join(' ')
  return text === '' ? [] : fittedLines(setter, { text, style: 'fine', width, most: said })
}

export type CardAt = Sized & { readonly x: number; readonly width: number; readonly height: number }

export function mixCard(kit: Kit, { number, pour }: DayPour, { x, width, height, size }: CardAt): Strip {
  const amounts = mixAmounts(pour)
  const said = saidLines(kit, pour, size, width - 2 * inset)
  const saidTop = height - clockHeight - saidHeight(said.length)
  return {
    height,
    draw: (top) => [
      box({ x, y: top, width, height }, 'medium'),
      ...title(kit, { number, pour }, { size, x, y: top, width }),
      ...contents(kit, pour, {
        amounts,
        size,
        x: x + inset,
        y: top + size.title.height,
        width: width - 2 * inset,
        height: saidTop - size.title.height - foot,
      }),
      ...said.map((text, index) =>
        textAt([x + inset, top + saidTop + (index + 0.65) * saidLead], text, 'fine', { ink: 'ink2' }),
      ),
      ...clocks(kit, pour, { size, x, y: top + height - clockHeight, width }),
    ],
  }
}

type At = { readonly x: number; readonly y: number; readonly width: number }

function title(kit: Kit, { number, pour }: DayPour, { x, y, width, size }: At & Sized): Drawing {
  const { say, setter, plan } = kit
  const { lines, about, style } = size.title
  const sheet = plan.buildUps.sheets.find((one) => one.id === pour.sheet)
  const zone = [...plan.surfaces.zones, ...plan.marks.zones].find((one) => one.id === pour.zone)
  const left = x + inset + 7
  const room = x + width - inset - left
  const said = {
    ...{ nr: pour.nr, of: pour.of, times: pour.times },
    ...{ zone: zone?.name ?? pour.zone, cover: coverOf(pour), areaM2: pour.areaM2 },
  }
  const names = fittedLines(setter, { text: sheet?.name ?? pour.sheet, style, width: room, most: lines })
  const abouts = fittedLines(setter, {
    text: say.sentence('paper.pourOf', said),
    style: 'fine',
    width: room,
    most: about,
  })
  const spare = lines + about - names.length - abouts.length
  const first = y + 4.3 + (spare * titleLead) / 2
  return [
    ...noteFlag(number, [x + inset, y + 1.7]),
    ...names.map((text, index) => textAt([left, first + index * titleLead], text, style)),
    ...abouts.map((text, index) =>
      textAt([left, first + 0.2 + (names.length + index) * titleLead], text, 'fine', { ink: 'ink2' }),
    ),
  ]
}

const titleLead = 3.4

type Contents = At & Sized & { readonly amounts: MixAmounts; readonly height: number }

/** Parts from the bottom of the cup up, each row joined to its level by a leader. */
function contents(kit: Kit, pour: Pour, { amounts, size, x, y, width, height }: Contents): Drawing {
  const liquids = amounts.parts.filter((part) => part.toMl !== undefined)
  const fills = liquids.map((part) => ({
    share: amounts.readyMl > 0 ? (0.85 * part.ml) / amounts.readyMl : 0,
    ...hatchOf(kit, pour, part),
  }))
  const drawn = cup(fills, { width: size.cup.width, height })
  const lowest = y + height
  const rowX = x + size.cup.width + 4.5
  return [
    ...moved(drawn.drawing, [x, y]),
    ...amounts.parts.flatMap((part, index): Drawing => {
      const rowFoot = lowest - index * size.row
      const level = drawn.levels[index]
      return [
        ...partRow(kit, pour, {
          part,
          size,
          decimals: amounts.decimals,
          x: rowX,
          y: rowFoot,
          width: x + width - rowX,
        }),
        ...(level && part.toMl !== undefined
          ? leaderTo([x + level[0], y + level[1]], [rowX - 0.8, rowFoot - size.row + 2.4])
          : []),
      ]
    }),
  ]
}

const leaderTo = (from: Point, to: Point): Drawing => [line('thin', from, [from[0] + 1, from[1]], to)]

function hatchOf({ plan }: Kit, pour: Pour, { part }: MixPart) {
  const sheet = plan.buildUps.sheets.find((one) => one.id === pour.sheet)
  if (!sheet || part === 'thinner') return {}
  const hatch = hatchFor(sheet.family, part === 'A' ? 'primer' : 'finish')
  return hatch ? { hatch } : {}
}

type PartRow = At & Sized & { readonly part: MixPart; readonly decimals: 0 | 1 }

function partRow(kit: Kit, pour: Pour, { part, decimals, size, x, y, width }: PartRow): Drawing {
  const { say, setter } = kit
  const level =
    part.toMl === undefined || part.part === 'A'
      ? ''
      : say.sentence('paper.cupTo', { to: say.digits(part.toMl, decimals) })
  const weight = part.g === undefined ? '' : say.grams(part.g)
  const first = y - size.row + 3.4 + (level === '' && weight === '' ? 1.6 : 0)
  const second = (text: string, align: 'left' | 'right') =>
    text === ''
      ? []
      : [textAt([align === 'left' ? x : x + width, first + 3.6], text, 'fine', { align, ink: 'ink2' })]
  return [
    textAt([x, first], say.label(`paperMix.${partKey(pour, part.part)}`), size.part),
    ...figureDrawing(
      { text: say.millilitres(part.ml, decimals), certainty: pour.certainty },
      { at: [x + width, first], align: 'right', style: size.amount },
      setter,
    ),
    ...second(level, 'left'),
    ...second(weight, 'right'),
  ]
}

/** Mix at, use from, use until, as clock times; without a pot life the tray is topped up as it empties. */
function clocks(kit: Kit, pour: Pour, { size, x, y, width }: At & Sized): Drawing {
  const { say, setter } = kit
  const times = [
    ['paperClock.mix', say.time(pour.mixAtMinute), size.clock],
    ['paperClock.from', say.time(pour.useFromMinute), size.clock],
    [
      'paperClock.until',
      pour.useUntilMinute === undefined ? '\u2013' : say.time(pour.useUntilMinute),
      size.until,
    ],
  ] as const
  const third = width / 3
  const styleFor = (time: string, style: StyleName): StyleName =>
    setter.width(time, style) > third - 1.5 ? 'fine' : style
  return [
    line('thin', [x, y], [x + width, y]),
    ...[1, 2].map((k) => line('thin', [x + k * third, y], [x + k * third, y + clockHeight])),
    ...times.flatMap(
      ([key, time, style], index): Drawing => [
        textAt([x + index * third + third / 2, y + 3.4], say.label(key), size.caption, {
          align: 'centre',
          ink: 'ink2',
        }),
        textAt([x + index * third + third / 2, y + 7.6], time, styleFor(time, style), { align: 'centre' }),
      ],
    ),
  ]
}
