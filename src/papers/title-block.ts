/** The title block at the foot of every sheet: boat, sheet, date, units, how sure, and what it was made from. */
import type { Certainty } from '#core/note'
import { certaintyLine } from './figure.ts'
import type { Kit } from './kit.ts'
import { frameOf, titleBlockHeight } from './page.ts'
import { type Drawing, line, textAt } from './shapes.ts'

export type SheetTitle = {
  /** Key of the paper's name. */
  readonly title: string
  /** The date the paper is about, or the plan's. */
  readonly date: string
  readonly number: number
  readonly of: number
}

type Cell = { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

export function titleBlock(kit: Kit, sheet: SheetTitle): Drawing {
  const frame = frameOf(kit.page)
  const top = frame.y + frame.height - titleBlockHeight
  const half = titleBlockHeight / 2
  const upper = cells({ x: frame.x, y: top, width: frame.width, height: half }, [58, 50, 40, 32])
  const lower = cells({ x: frame.x, y: top + half, width: frame.width, height: half }, [98, 82])
  const right = frame.x + frame.width
  const { say, job } = kit
  const texts = [
    [say.label('paperBlock.boat'), job.boatName],
    [
      say.label('paperBlock.sheet'),
      say.sentence('paper.sheetOf', { title: sheet.title, number: sheet.number, of: sheet.of }),
    ],
    [say.label('paperBlock.date'), sheet.date],
    [say.label('paperBlock.units'), say.label(`paperUnits.${job.units}`)],
  ] as const
  return [
    line('thick', [frame.x, top], [right, top]),
    line('thin', [frame.x, top + half], [right, top + half]),
    ...[...upper.slice(1), ...lower.slice(1)].map((cell) =>
      line('thin', [cell.x, cell.y], [cell.x, cell.y + cell.height]),
    ),
    ...upper.flatMap((cell, index) => named(kit, cell, texts[index]!)),
    ...certaintyKey(kit, lower[0]!),
    ...madeFrom(kit, lower[1]!),
  ]
}

/** Cells side by side, in these proportions. */
function cells(of: Cell, shares: readonly number[]): readonly Cell[] {
  const whole = shares.reduce((sum, share) => sum + share, 0)
  let x = of.x
  return shares.map((share) => {
    const cell = { ...of, x, width: (of.width * share) / whole }
    x += cell.width
    return cell
  })
}

const inset = 2.2

const caption = (kit: Kit, { x, y, width }: Cell, text: string) =>
  textAt([x + inset, y + 3.9], kit.setter.fit(text, 'caption', width - 2 * inset), 'caption', { ink: 'ink2' })

const named = (kit: Kit, cell: Cell, [label, text]: readonly [string, string]): Drawing => [
  caption(kit, cell, label),
  textAt([cell.x + inset, cell.y + 8.2], kit.setter.fit(text, 'strong', cell.width - 2 * inset), 'strong'),
]

const certainties: readonly Certainty[] = ['measured', 'sheet', 'typical', 'assumed', 'worked']

function certaintyKey(kit: Kit, cell: Cell): Drawing {
  const gap = 3.6
  let x = cell.x + inset
  const words = certainties.flatMap((certainty): Drawing => {
    const text = kit.say.label(`certainty.${certainty}`)
    const from = x
    const to = x + kit.setter.width(text, 'small')
    x = to + gap
    return [
      textAt([from, cell.y + 7.6], text, 'small', { ink: certainty === 'worked' ? 'ink2' : 'ink' }),
      ...certaintyLine(certainty, { from, to, y: cell.y + 8.7 }),
    ]
  })
  return [caption(kit, cell, kit.say.label('paperBlock.sure')), ...words]
}

/** The first eight signs of each hash name it well enough to compare two papers by eye. */
function madeFrom(kit: Kit, cell: Cell): Drawing {
  const { stamp } = kit.plan
  const hashes = (['work', 'money', 'log', 'weather', 'catalogue'] as const).flatMap((key) => {
    const hash = stamp[key]
    return hash === undefined ? [] : [`${kit.say.label(`paperHash.${key}`)} ${hash.slice(0, 8)}`]
  })
  const text = [`Hardstand ${stamp.app}`, ...hashes].join('\u2003')
  const lines = kit.setter.wrap(
    text.replaceAll(' ', '\u00a0').replaceAll('\u2003', '  '),
    'fine',
    cell.width - 2 * inset,
  )
  return lines
    .slice(0, 2)
    .map((each, index) => textAt([cell.x + inset, cell.y + 4.2 + index * 3.6], each, 'fine', { ink: 'ink2' }))
}
