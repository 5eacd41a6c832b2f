/** The quote: what finish, what is done, what it costs, what hidden damage would cost, and who signs. */
import type { Plan } from '#plan'
import { heading, paragraph } from '../blocks.ts'
import { flow } from '../flow.ts'
import type { Kit } from '../kit.ts'
import { columnOf, measureOf } from '../page.ts'
import { sheetsOf } from '../sheets.ts'
import { signatures } from '../signature.ts'
import { type Flowing, space } from '../strips.ts'
import { type SumLine, sumUnits } from '../sums.ts'
import { cell, figureCell, strongCell, type TableAt, tableRow } from '../table.ts'
import type { PdfSheets } from '../to-pdf.ts'
import { type QuoteLine, quoteLines } from './quote-lines.ts'
import { workPart } from './work-part.ts'

type Estimate = NonNullable<Plan['money']>

export function quoteSheets(kit: Kit, money: Estimate): PdfSheets {
  const { say } = kit
  const parts = [
    opening(kit, money),
    ...finish(kit),
    ...workPart(kit),
    price(kit, money),
    ...exclusions(kit, money),
    ...hidden(kit, money),
    ...(money.complete && money.signedCoins === undefined ? [signing(kit, money)] : []),
  ]
  return sheetsOf(kit, {
    title: quoteTitle(kit, money),
    date: say.date(quoteDate(kit)),
    pages: flow(parts, columnOf(kit.page)),
  })
}

const quoteTitle = ({ say }: Kit, { quoteNumber }: Estimate): string =>
  quoteNumber === '' ? say.label('paperTitle.quote') : `${say.label('paperTitle.quote')} ${quoteNumber}`

const quoteDate = ({ plan, say }: Kit): string => say.dateOf(Math.floor(plan.stamp.nowMs / 60_000))

export const dateAfter = (isoDate: string, days: number): string =>
  new Date(Date.parse(`${isoDate}T12:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10)

function opening(kit: Kit, money: Estimate): Flowing {
  const { say, job, setter } = kit
  const of = { ...measureOf(kit.page), setter }
  const hours = quoteLines(money).find((line) => line.kind === 'labour')?.hours ?? 0
  const about = [job.owner, job.shop, job.place].filter((part) => part !== '').join(' \u00b7 ')
  const said = { boat: job.boatName, totalCoins: money.totalCoins, work: say.hours(hours) }
  return {
    gap: 0,
    units: [
      [
        ...paragraph(say.sentence('paper.quoteHeadline', said), 'sheet', of),
        ...standing(kit, money),
        ...(about === '' ? [] : paragraph(about, 'small', of, { ink: 'ink2' })),
        ...(money.complete ? [] : [space(1.5), ...paragraph(say.sentence('paper.quoteDraft'), 'strong', of)]),
      ],
    ],
  }
}

/** Until when it stands, or that it was signed: what is printed afterwards is no second offer. */
function standing(kit: Kit, money: Estimate): Flowing['units'][number] {
  const of = { ...measureOf(kit.page), setter: kit.setter }
  if (money.signedCoins !== undefined) {
    const { signedCoins, signedDate } = money
    const text = kit.say.sentence('paper.quoteSigned', { signedCoins, date: signedDate ?? 'none' })
    return [space(1), ...paragraph(text, 'say', of)]
  }
  return money.complete ? [space(1), ...paragraph(validUntil(kit, money), 'say', of)] : []
}

const validUntil = (kit: Kit, { validDays }: Estimate): string =>
  kit.say.sentence('paper.quoteValid', { untilDate: dateAfter(quoteDate(kit), validDays) })

function finish(kit: Kit): readonly Flowing[] {
  const { job, say, setter } = kit
  const of = { ...measureOf(kit.page), setter }
  const { inspectionDistanceM } = job
  const judged =
    inspectionDistanceM === undefined ? '' : say.sentence('paper.judgedFrom', { inspectionDistanceM })
  const words = [job.finishWords, judged].filter((part) => part !== '')
  if (words.length === 0) return []
  return [
    {
      gap: 6,
      heading: heading(say.label('paperPart.finish'), of),
      units: words.map((text) => paragraph(text, 'body', of)),
    },
  ]
}

function price(kit: Kit, money: Estimate): Flowing {
  const { say, setter } = kit
  const lines: readonly SumLine[] = [
    ...quoteLines(money).map(
      (line): SumLine => ({
        label: lineLabel(kit, line),
        amount: line.hours === undefined ? '' : say.hours(line.hours),
        coins: line.coins,
        weight: 'line',
      }),
    ),
    { label: say.label('paper.net'), amount: '', coins: money.netCoins, weight: 'total' },
    {
      label: say.label('money.tax'),
      amount: say.figure('taxShare', money.taxShare),
      coins: money.taxCoins,
      weight: 'line',
    },
    { label: say.label('money.total'), amount: '', coins: money.totalCoins, weight: 'total' },
    ...(money.depositCoins > 0
      ? [
          {
            label: say.label('paper.deposit'),
            amount: say.figure('depositShare', money.depositShare),
            coins: money.depositCoins,
            weight: 'line' as const,
          },
        ]
      : []),
  ]
  return {
    gap: 7,
    heading: heading(say.label('paperPart.price'), { ...measureOf(kit.page), setter }),
    units: sumUnits(kit, lines),
  }
}

const lineLabel = ({ say }: Kit, { kind, name }: QuoteLine): string =>
  kind === 'cost' ? name : say.label(`paperMoney.${kind}`)

/** Agreed beforehand, since nobody sees through a laminate. */
function hidden(kit: Kit, money: Estimate): readonly Flowing[] {
  const { say, setter } = kit
  if (money.unitPrices.length === 0) return []
  const measure = measureOf(kit.page)
  const table: TableAt = {
    ...measure,
    setter,
    columns: [
      { head: '', align: 'left', share: 92 },
      { head: '', align: 'right', share: 36 },
      { head: '', align: 'right', share: 42 },
    ],
  }
  const rows = money.unitPrices.map(({ name, per, coins }) =>
    tableRow(table, [
      strongCell(name),
      cell(per),
      figureCell({ text: say.figure('priceCoins', coins), certainty: 'worked' }),
    ]),
  )
  return [
    {
      gap: 7,
      heading: heading(say.label('paperPart.hidden'), { ...measure, setter }),
      units: [
        [...paragraph(say.sentence('paper.hiddenDamage'), 'body', { ...measure, setter }), space(1)],
        ...rows,
      ],
    },
  ]
}

function exclusions(kit: Kit, { exclusions: text }: Estimate): readonly Flowing[] {
  const of = { ...measureOf(kit.page), setter: kit.setter }
  if (text === '') return []
  return [
    {
      gap: 7,
      heading: heading(kit.say.label('paperPart.exclusions'), of),
      units: [paragraph(text, 'body', of)],
    },
  ]
}

function signing(kit: Kit, money: Estimate): Flowing {
  const { say, job, setter } = kit
  const of = { ...measureOf(kit.page), setter }
  const code = money.depositCoins > 0 ? 'paper.quoteAcceptDeposit' : 'paper.quoteAccept'
  return {
    gap: 8,
    units: [
      [
        ...paragraph(
          say.sentence(code, { totalCoins: money.totalCoins, depositCoins: money.depositCoins }),
          'body',
          of,
        ),
        space(3),
        signatures(kit, [
          { role: say.label('paper.owner'), name: job.owner },
          { role: say.label('paper.shop'), name: job.shop },
        ]),
      ],
    ],
  }
}
