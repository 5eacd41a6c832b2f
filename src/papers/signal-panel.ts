/** Signal panels after ANSI Z535: coloured head with triangle and word, body in ink, two-millimetre outline. */
import { paragraph } from './blocks.ts'
import type { Ink } from './inks.ts'
import type { Setter } from './setter.ts'
import { box, type Drawing, filled, type Point, textAt } from './shapes.ts'
import { heightOf, type Strip } from './strips.ts'
import type { StyleName } from './type-styles.ts'

export type Signal = 'danger' | 'warning' | 'caution' | 'notice'

const heads: Readonly<Record<Signal, { readonly fill: Ink; readonly ink: Ink }>> = {
  danger: { fill: 'danger', ink: 'paper' },
  warning: { fill: 'warning', ink: 'black' },
  caution: { fill: 'caution', ink: 'black' },
  notice: { fill: 'notice', ink: 'paper' },
}

export type PanelText = { readonly text: string; readonly style: StyleName }

export type PanelAt = { readonly x: number; readonly width: number; readonly setter: Setter }

export type Panel = {
  readonly signal: Signal
  /** DANGER, WARNING, CAUTION or NOTICE. */
  readonly word: string
  readonly body: readonly PanelText[]
}

const headHeight = 6
const inset = 2.4

export function signalPanel({ signal, word, body }: Panel, { x, width, setter }: PanelAt): Strip {
  const within = { x: x + inset, width: width - 2 * inset, setter }
  const lines = body.flatMap(({ text, style }, index) => [
    ...(index > 0 ? [lineGap] : []),
    ...paragraph(text, style, within),
  ])
  const height = headHeight + heightOf(lines) + 2.6
  return {
    height,
    draw: (top) => [
      filled(corner({ x, y: top, width, height: headHeight }), heads[signal].fill),
      ...triangle([x + 3.2, top + headHeight / 2], heads[signal]),
      textAt([x + 8, top + headHeight / 2 + 1.35], word, 'signal', { ink: heads[signal].ink }),
      ...drawDown(lines, top + headHeight + 1.2),
      { ...box({ x, y: top, width, height }, 'outline') },
      {
        kind: 'line',
        points: [
          [x, top + headHeight],
          [x + width, top + headHeight],
        ],
        pen: 'outline',
        ink: 'ink',
      },
    ],
  }
}

const lineGap: Strip = { height: 0.9, draw: () => [] }

const corner = ({
  x,
  y,
  width,
  height,
}: {
  x: number
  y: number
  width: number
  height: number
}): readonly Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
]

function drawDown(strips: readonly Strip[], top: number): Drawing {
  let y = top
  return strips.flatMap((strip) => {
    const drawing = strip.draw(y)
    y += strip.height
    return drawing
  })
}

/** The safety alert sign: a triangle with an exclamation mark. */
function triangle([x, y]: Point, { fill, ink }: { readonly fill: Ink; readonly ink: Ink }): Drawing {
  const half = 2.2
  return [
    filled(
      [
        [x - half, y + 1.75],
        [x + half, y + 1.75],
        [x, y - 2.05],
      ],
      ink,
    ),
    filled(
      [
        [x - 0.32, y - 0.8],
        [x + 0.32, y - 0.8],
        [x + 0.2, y + 0.55],
        [x - 0.2, y + 0.55],
      ],
      fill,
    ),
    { kind: 'circle', at: [x, y + 1.08], radius: 0.3, fill },
  ]
}
