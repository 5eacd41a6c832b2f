import { describe, expect, it } from 'vitest'
import { type Plan, plan } from '#plan'
import { clashes, outside } from '../../test/support/extent.ts'
import { emptyPlan, paperJob, paperPlan } from '../../test/support/paper-plan.ts'
import { testPress } from '../../test/support/paper-press.ts'
import { projectRaw, type SampleName, sampleInput, sampleRaw } from '../../test/support/samples.ts'
import { changeOrderSheets } from './change-order/change-order.ts'
import { daySheetSheets } from './day-sheet/day-sheet.ts'
import { createKit, type Kit } from './kit.ts'
import { nodePress } from './node-press.ts'
import { frameOf } from './page.ts'
import { papersFrom } from './papers-for.ts'
import { planSummarySheets } from './plan-summary/plan-summary.ts'
import { quoteSheets } from './quote/quote.ts'
import { createSetter } from './setter.ts'
import type { PdfSheets } from './to-pdf.ts'
import type { PageSize, PaperInput, PaperJob } from './types.ts'

/** Whole jobs are set here, page by page: slow on a busy machine, never wrong for it. */
const slow = { timeout: 60_000 }

const press = await testPress()
const setter = createSetter(press)
const samples: readonly SampleName[] = ['open-powerboat', 'deck-only', 'cruiser-topsides']
const pages: readonly PageSize[] = ['A4', 'Letter']

function sample(name: SampleName): { readonly plan: Plan; readonly job: PaperJob } {
  const { work } = projectRaw(sampleRaw(name))
  return {
    plan: plan(sampleInput(name)),
    job: {
      name: work.job.name,
      boatName: work.job.boatName ?? '',
      owner: work.job.owner ?? '',
      shop: work.job.shop ?? '',
      place: work.place.name ?? '',
      finishWords: work.job.finishWords ?? '',
      people: work.people.map(({ id, name: own }) => ({ id, name: own })),
      units: work.job.units ?? 'metric',
      locale: work.job.locale ?? 'en-GB',
    },
  }
}

/** Grid letters and centring marks stand in the margin of the frame, nothing else does. */
function expectTidy(sheets: PdfSheets, page: PageSize): void {
  const frame = frameOf(page)
  const margin = { x: frame.x - 5, y: frame.y - 5, width: frame.width + 8, height: frame.height + 8 }
  for (const drawing of sheets.pages) {
    expect(outside(drawing, margin, setter)).toEqual([])
    expect(clashes(drawing, setter)).toEqual([])
  }
}

const everySheet = (kit: Kit): readonly PdfSheets[] => {
  const { money, days } = kit.plan
  return [
    planSummarySheets(kit),
    ...days.days.map((day) => daySheetSheets(kit, day.date)),
    ...(money
      ? [quoteSheets(kit, money), ...money.changes.map((change) => changeOrderSheets(kit, change))]
      : []),
  ]
}

describe.each(samples)('the papers of %s', slow, (name) => {
  const input = sample(name)

  it.each(pages)('stay inside the frame with no text on another, on %s', (page) => {
    const kit = createKit({ ...input, page }, setter)
    for (const sheets of everySheet(kit)) expectTidy(sheets, page)
  })

  it.each(pages)(
    'have one page for every day of the job, and one more at most for laying off, on %s',
    (page) => {
      const kit = createKit({ ...input, page }, setter)
      expect(input.plan.days.days.length).toBeGreaterThan(5)
      for (const day of input.plan.days.days) {
        const sheets = daySheetSheets(kit, day.date)
        expect(sheets.pages.length).toBeLessThan(3)
        const paints = input.plan.pours.pours.some(({ step, nr, useFromMinute: at }) => {
          const planned = input.plan.steps.steps.find(({ id }) => id === step)
          return nr === 1 && planned?.kind === 'coat' && at >= day.startMinute && at < day.endMinute
        })
        const laid = textsOf(sheets.pages).filter((text) => text === 'Laying off')
        expect(laid).toHaveLength(paints ? 1 : 0)
      }
    },
  )
})

const textsOf = (pages: ReturnType<typeof daySheetSheets>['pages']): readonly string[] =>
  pages.flat().flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))

describe('papersFrom', slow, () => {
  const input: PaperInput = { plan: paperPlan, job: paperJob, page: 'A4' }

  it('makes every paper there is something to put on', async () => {
    const names = (await papersFrom(input, press)).map((paper) => paper.name)
    expect(names).toEqual([
      'plan-summary.pdf',
      'day-sheet.pdf',
      'quote.pdf',
      'change-order-locker.pdf',
      'shopping-list.csv',
    ])
  })

  it.each(pages)('makes the same bytes when it is asked again, on %s', async (page) => {
    const made = await papersFrom({ ...input, page }, press)
    const again = await papersFrom({ ...input, page }, await nodePress())
    expect(made.map((paper) => paper.name)).toEqual(again.map((paper) => paper.name))
    made.forEach((paper, index) => {
      expect(Buffer.compare(paper.bytes, again[index]!.bytes), paper.name).toBe(0)
    })
  })

  it('makes no quote and no change order without money', async () => {
    const { money: _money, ...without } = paperPlan
    const kinds = (await papersFrom({ ...input, plan: without }, press)).map((paper) => paper.kind)
    expect(kinds).toEqual(['plan-summary', 'day-sheet', 'shopping-list'])
  })

  it('lets nobody sign a quote in which prices are missing', () => {
    const kitWith = (complete: boolean) =>
      createKit({ ...input, plan: { ...paperPlan, money: { ...paperPlan.money!, complete } } }, setter)
    const textOf = (complete: boolean): string => {
      const kit = kitWith(complete)
      return JSON.stringify(quoteSheets(kit, kit.plan.money!).pages)
    }
    const signature = kitWith(true).say.label('paper.signature')
    expect(textOf(true)).toContain(signature)
    expect(textOf(true)).toContain('This offer holds until')
    expect(textOf(false)).not.toContain(signature)
    expect(textOf(false)).not.toContain('This offer holds until')
    expect(textOf(false)).toContain('Draft, not an offer yet')
  })

  it('begins every PDF as one and ends it', async () => {
    for (const { name, bytes } of await papersFrom(input, press)) {
      if (!name.endsWith('.pdf')) continue
      const text = new TextDecoder('latin1').decode(bytes)
      expect(text.slice(0, 5)).toBe('%PDF-')
      expect(text.trimEnd().endsWith('%%EOF')).toBe(true)
    }
  })

  it('dates the files with the plan, not with the clock', async () => {
    const [summary] = await papersFrom(input, press)
    expect(new TextDecoder('latin1').decode(summary!.bytes)).toContain('D:20270501080000Z')
  })

  it.each(pages)('says that nothing is planned when nothing is, on %s', async (page) => {
    const papers = await papersFrom({ plan: emptyPlan, job: { ...paperJob, people: [] }, page }, press)
    expect(papers.map((paper) => paper.kind)).toEqual(['plan-summary', 'day-sheet', 'shopping-list'])
    const kit = createKit({ plan: emptyPlan, job: paperJob, page }, setter)
    expectTidy(planSummarySheets(kit), page)
    expectTidy(daySheetSheets(kit, '2027-05-10'), page)
  })
})

describe('papers of a plan that is hard to set', slow, () => {
  const long = 'Saltwater-and-sunshine '.repeat(12)
  const unbroken = 'x'.repeat(300)

  /** Every name as long as it may be, with and without a space. */
  const renamed = (text: string): Plan => {
    const plain = JSON.parse(JSON.stringify(paperPlan)) as Plan
    return {
      ...plain,
      surfaces: {
        ...plain.surfaces,
        zones: plain.surfaces.zones.map((zone) => ({ ...zone, name: `${text} ${zone.name}` })),
      },
      buildUps: {
        ...plain.buildUps,
        sheets: plain.buildUps.sheets.map((sheet) => ({ ...sheet, name: `${text} ${sheet.name}` })),
        layers: plain.buildUps.layers.map((layer) => ({ ...layer, name: `${text} ${layer.name}` })),
      },
    }
  }

  it.each([
    ['long', long],
    ['unbroken', unbroken],
  ])('wraps %s names and stays inside the frame', (_name, text) => {
    const job = {
      ...paperJob,
      name: text,
      boatName: text,
      owner: text,
      shop: text,
      place: text,
      people: [{ id: 'ada', name: text }],
    }
    for (const page of pages) {
      const kit = createKit({ plan: renamed(text), job, page }, setter)
      for (const sheets of everySheet(kit)) expectTidy(sheets, page)
      expect(daySheetSheets(kit, '2027-05-10').pages.length).toBeLessThan(3)
    }
  })

  it('goes on over pages with notes of thousands of letters', () => {
    const notes = Array.from({ length: 5 }, () => ({
      code: 'unknown.code',
      severity: 'info' as const,
      data: { about: long.repeat(30) },
    }))
    const kit = createKit({ plan: { ...paperPlan, notes }, job: paperJob, page: 'Letter' }, setter)
    const sheets = planSummarySheets(kit)
    expect(sheets.pages.length).toBeGreaterThan(6)
    expectTidy(sheets, 'Letter')
  })

  it('keeps a day of sixty steps, forty people and thirty pours on one page and says what is left out', () => {
    const crowded = crowd({ steps: 60, people: 40, pours: 30 })
    for (const page of pages) {
      const kit = createKit({ ...crowded, page }, setter)
      const sheets = daySheetSheets(kit, '2027-05-10')
      expectTidy(sheets, page)
      const texts = textsOf(sheets.pages.slice(0, 1))
      expect(texts.join(' ')).toMatch(/more people: see the plan/)
      expect(texts.join(' ')).toMatch(/more pours: see the plan/)
    }
  })

  it('draws the sheet without a hull and without weather', () => {
    const { outline: _outline, ...surfaces } = paperPlan.surfaces
    const bare: Plan = { ...paperPlan, surfaces, conditions: emptyPlan.conditions }
    const kit = createKit({ plan: bare, job: paperJob, page: 'A4' }, setter)
    expectTidy(planSummarySheets(kit), 'A4')
    const [day] = daySheetSheets(kit, '2027-05-10').pages
    expect(
      day!.some((shape) => shape.kind === 'text' && shape.text.includes('No weather covers this day')),
    ).toBe(true)
  })

  it('leaves out signs that no typeface has and control signs, and does not stop', async () => {
    const job = { ...paperJob, boatName: 'Łódź \u0007\u202eΑΒ 帆船 →≥⅛' }
    const papers = await papersFrom({ plan: paperPlan, job, page: 'A4' }, press)
    expect(papers[0]!.bytes.length).toBeGreaterThan(10_000)
  })
})

function crowd(of: {
  readonly steps: number
  readonly people: number
  readonly pours: number
}): Omit<PaperInput, 'page'> {
  const people = Array.from({ length: of.people }, (_, index) => ({
    id: `p${index}`,
    name: `Person ${index}`,
  }))
  const ids = people.map(({ id }) => id)
  const [day] = paperPlan.days.days
  const [, coat] = paperPlan.steps.steps
  const steps = Array.from({ length: of.steps }, (_, index) => ({
    ...coat!,
    id: `coat:port:primer:${index}`,
  }))
  const pieces = steps.map(({ id }, index) => ({
    step: id,
    startMinute: day!.startMinute + 480 + index * 8,
    endMinute: day!.startMinute + 487 + index * 8,
    people: ids,
    part: 1,
    parts: 1,
  }))
  const [pour] = paperPlan.pours.pours
  const plan: Plan = {
    ...paperPlan,
    steps: { steps, notes: [] },
    days: {
      ...paperPlan.days,
      days: [{ ...day!, pieces, people: ids.map((person) => ({ person, minutes: 300 })) }],
    },
    pours: {
      pours: Array.from({ length: of.pours }, (_, index) => ({
        ...pour!,
        step: steps[index]!.id,
        nr: 1,
        of: 1,
      })),
      notes: [],
    },
    cautions: {
      cautions: Array.from({ length: 20 }, (_, index) => ({
        ...paperPlan.cautions.cautions[index % 2]!,
        steps: steps.slice(index).map(({ id }) => id),
      })),
    },
  }
  return { plan, job: { ...paperJob, people } }
}
