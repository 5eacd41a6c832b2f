/** A change order on one sheet: what was found, what it adds in hours, material and days, what it costs, who agrees. */
import type { Plan } from '#plan'
import { heading, paragraph } from '../blocks.ts'
import { flow } from '../flow.ts'
import type { Kit } from '../kit.ts'
import { columnOf, measureOf } from '../page.ts'
import { box, inked, textAt } from '../shapes.ts'
import { sheetsOf } from '../sheets.ts'
import { signatures } from '../signature.ts'
import { type Flowing, type Strip, space } from '../strips.ts'
import { type SumLine, sumUnits } from '../sums.ts'
import type { PdfSheets } from '../to-pdf.ts'

type Change = NonNullable<Plan['money']>['changes'][number]

export function changeOrderSheets(kit: Kit, change: Change): PdfSheets {
  const { say, plan } = kit
  const date = change.date === '' ? say.dateOf(Math.floor(plan.stamp.nowMs / 60_000)) : change.date
  return sheetsOf(kit, {
    title: say.label('paperTitle.changeOrder'),
    date: say.date(date),
    pages: flow(
      [
        opening(kit, change),
        ...found(kit, change),
        photo(kit, change),
        adds(kit, change),
        signing(kit, change),
      ],
      columnOf(kit.page),
    ),
  })
}

function opening(kit: Kit, change: Change): Flowing {
  const { say, setter, job } = kit
  const of = { ...measureOf(kit.page), setter }
  const about = [job.name, job.owner, job.shop].filter((part) => part !== '').join(' \u00b7 ')
  return {
    gap: 0,
    units: [
      [
        ...paragraph(
          say.sentence('paper.changeHeadline', {
            name: change.name,
            totalCoins: change.totalCoins,
            work: say.hours(change.hours),
          }),
          'sheet',
          of,
        ),
        space(1),
        ...paragraph(say.sentence('paper.changeDays', { count: change.days }), 'say', of),
        ...paragraph(about, 'small', of, { ink: 'ink2' }),
        ...(change.complete
          ? []
          : [space(1.5), ...paragraph(say.sentence('paper.quoteDraft'), 'strong', of)]),
      ],
    ],
  }
}

function found(kit: Kit, change: Change): readonly Flowing[] {
  const { say, setter, plan } = kit
  const of = { ...measureOf(kit.page), setter }
  const zone = [...plan.surfaces.zones, ...plan.marks.zones].find((one) => one.id === change.zone)
  const words = [change.found, ...(zone ? [say.sentence('paper.inZone', { zone: zone.name })] : [])].filter(
    (part) => part !== '',
  )
  if (words.length === 0) return []
  return [
    {
      gap: 7,
      heading: heading(say.label('paperPart.found'), of),
      units: words.map((text) => paragraph(text, 'body', of)),
    },
  ]
}

/** A frame to stick the photograph in, named by its number when there is one. */
function photo(kit: Kit, { photo: name }: Change): Flowing {
  const { x } = measureOf(kit.page)
  const size = { width: 100, height: 66 }
  const words = name === '' ? kit.say.label('paper.photoNone') : kit.say.sentence('paper.photo', { name })
  const frame: Strip = {
    height: size.height,
    draw: (top) => [
      inked(box({ x, y: top, ...size }, 'ghost'), 'ink'),
      textAt(
        [x + size.width / 2, top + size.height / 2 + 1],
        kit.setter.fit(words, 'body', size.width - 6),
        'body',
        { align: 'centre', ink: 'ink2' },
      ),
    ],
  }
  return { gap: 5, units: [[frame]] }
}

function adds(kit: Kit, change: Change): Flowing {
  const { say, setter, plan } = kit
  const sheet = plan.buildUps.sheets.find((one) => one.id === change.sheet)
  const material = sheet
    ? say.sentence('paper.materialOf', { name: sheet.name })
    : say.label('paperMoney.materials')
  const lines: readonly SumLine[] = [
    {
      label: say.label('paperMoney.labour'),
      amount: say.hours(change.hours),
      coins: change.labourCoins,
      weight: 'line',
    },
    ...(change.volumeM3 > 0 || change.materialsCoins !== 0
      ? [
          {
            label: material,
            amount: change.volumeM3 > 0 ? say.figure('volumeM3', change.volumeM3) : '',
            coins: change.materialsCoins,
            weight: 'line' as const,
          },
        ]
      : []),
    { label: say.label('paper.net'), amount: '', coins: change.netCoins, weight: 'total' },
    {
      label: say.label('money.tax'),
      amount: plan.money ? say.figure('taxShare', plan.money.taxShare) : '',
      coins: change.taxCoins,
      weight: 'line',
    },
    { label: say.label('money.total'), amount: '', coins: change.totalCoins, weight: 'total' },
  ]
  return {
    gap: 7,
    heading: heading(say.label('paperPart.adds'), { ...measureOf(kit.page), setter }),
    units: sumUnits(kit, lines),
  }
}

function signing(kit: Kit, change: Change): Flowing {
  const { say, job, setter } = kit
  const of = { ...measureOf(kit.page), setter }
  return {
    gap: 8,
    units: [
      [
        ...paragraph(
          say.sentence('paper.changeAccept', { totalCoins: change.totalCoins, count: change.days }),
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
