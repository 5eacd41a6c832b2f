import { describe, expect, it } from 'vitest'
import { expectKeptDrawing } from '../../test/support/kept-drawing.ts'
import { paperJob, paperPlan } from '../../test/support/paper-plan.ts'
import { testPress } from '../../test/support/paper-press.ts'
import { buildUpPart } from './build-up/build-up-part.ts'
import { section } from './build-up/section.ts'
import { stacksOf } from './build-up/stacks.ts'
import { cup } from './day-sheet/cup.ts'
import { dayData } from './day-sheet/day-data.ts'
import { hoursAxis } from './day-sheet/hours-axis.ts'
import { cardSizes, mixCard } from './day-sheet/mix-card.ts'
import { paintHoursOf, paintStrip, verdictKey } from './day-sheet/paint-strips.ts'
import { readingsChart, readingsOf, readingsTable } from './day-sheet/readings.ts'
import { tape } from './day-sheet/tape.ts'
import { bodyFigure, figureDrawing } from './figure.ts'
import { frameDrawing } from './frame.ts'
import { createKit } from './kit.ts'
import { linesPlan, noLinesPlan } from './lines-plan/lines-plan.ts'
import { createSetter } from './setter.ts'
import { moved } from './shapes.ts'
import { signalPanel } from './signal-panel.ts'
import { titleBlock } from './title-block.ts'

const folder = new URL('./__drawings__/', import.meta.url)
const setter = createSetter(await testPress())
const kit = createKit({ plan: paperPlan, job: paperJob, page: 'A4' }, setter)
const usKit = createKit(
  { plan: paperPlan, job: { ...paperJob, units: 'us', locale: 'en-US' }, page: 'Letter' },
  setter,
)
const kept = (name: string, drawing: readonly unknown[]) => expectKeptDrawing(folder, name, drawing)

describe('drawings are the ones that are kept', () => {
  it('the boat in lines, to scale, bow right', () => {
    kept('lines-plan', linesPlan(kit, { x: 25, width: 170, mostHeight: 92 })!.draw(0))
    kept('lines-plan-us', linesPlan(usKit, { x: 25, width: 176, mostHeight: 92 })!.draw(0))
    kept('lines-plan-none', noLinesPlan(kit, { x: 25, width: 170 }).draw(0))
  })

  it('a build-up as section, and its rows joined to it', () => {
    const [port, transom] = stacksOf(paperPlan)
    kept('section', section(port!, 50).drawing)
    kept('section-unknown', section(transom!, 50).drawing)
    const part = buildUpPart(kit, port!, { x: 25, width: 170, mostHeight: 240 })
    kept('build-up', [...part.heading!.draw(0), ...part.units[0]![0]!.draw(20)])
  })

  it('the tape, the strips, the curves and their figures', () => {
    const data = dayData(kit, '2027-05-10')
    const axis = hoursAxis(kit, data)
    kept('tape', tape(kit, data, { axis, mostPeople: 8 }).draw(0))
    kept('paint-strip', [
      ...paintHoursOf(kit, data, axis).flatMap((hours) => paintStrip(kit, hours, axis).draw(0)),
      ...verdictKey(kit, axis).draw(10),
    ])
    const readings = readingsOf(kit, data, axis)!
    kept('readings', [
      ...readingsChart(kit, readings, { axis, height: 26 }).draw(0),
      ...readingsTable(kit, readings, axis).draw(30),
    ])
  })

  it('a cup and a mix card', () => {
    kept(
      'cup',
      cup([{ share: 0.5, hatch: 'epoxy-primer' }, { share: 0.25, hatch: 'epoxy-finish' }, { share: 0.1 }], {
        width: 15,
        height: 26,
      }).drawing,
    )
    const pour = dayData(kit, '2027-05-10').pours[0]!
    kept('mix-card', mixCard(kit, pour, { x: 0, width: 54, height: 52, size: cardSizes.large }).draw(0))
    kept(
      'mix-card-small',
      mixCard(usKit, pour, { x: 0, width: 40, height: 46, size: cardSizes.small }).draw(0),
    )
  })

  it('figures, each with the line that says how sure it is', () => {
    const certainties = ['measured', 'sheet', 'typical', 'assumed', 'worked'] as const
    kept(
      'figures',
      certainties.flatMap((certainty, index) =>
        moved(
          figureDrawing(
            { text: '3 × 25\u2009µm', certainty },
            { at: [20, 0], align: 'right', style: bodyFigure },
            setter,
          ),
          [0, index * 6],
        ),
      ),
    )
  })

  it('frame, title block and signal panels', () => {
    kept('frame', frameDrawing('Letter'))
    kept('title-block', titleBlock(kit, { title: 'Plan', date: 'Mon, 10 May 2027', number: 2, of: 9 }))
    const panel = (signal: 'danger' | 'warning' | 'caution' | 'notice') =>
      signalPanel(
        { signal, word: signal.toUpperCase(), body: [{ text: 'Stand clear.', style: 'small' }] },
        { x: 0, width: 60, setter },
      ).draw(0)
    kept('signal-panels', (['danger', 'warning', 'caution', 'notice'] as const).flatMap(panel))
  })
})

describe('the scale of the lines plan', () => {
  it('draws a length to the printed scale', () => {
    const drawing = linesPlan(kit, { x: 25, width: 170, mostHeight: 92 })!.draw(0)
    const scale = drawing.flatMap((shape) =>
      shape.kind === 'text' ? (/1:(\d+)/.exec(shape.text)?.[1] ?? []) : [],
    )
    const sheer = drawing.flatMap((shape) =>
      shape.kind === 'line' && shape.pen === 'outline' ? [shape.points] : [],
    )
    const reach = Math.max(...sheer.map((points) => points.at(-1)![0] - points[0]![0]))
    expect(reach).toBeCloseTo((6 * 1000) / Number(scale[0]), 6)
  })
})
