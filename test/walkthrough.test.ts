/** The walk through the sample by hand: each sum in it is worked again, and its results are those of the plan. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Plan, plan } from '#plan'
import { sampleInput } from './support/samples.ts'

const text = readFileSync(new URL('../docs/walkthrough.md', import.meta.url), 'utf8')
const made = plan(sampleInput('open-powerboat'))

type Sum = {
  readonly line: string
  readonly expression: string
  readonly result: string
  readonly of: string | undefined
}

const sums: readonly Sum[] = [...text.matchAll(/```sum\n([\s\S]*?)```/g)].flatMap((block) =>
  block[1]!
    .trim()
    .split('\n')
    .map((line) => {
      const match = /^(.*) = ([−-]?[\d.]+)[^‹]*(?:‹(.*)›)?$/.exec(line)
      if (!match) throw new Error(`walkthrough: not a sum, got "${line}"`)
      return { line, expression: match[1]!, result: match[2]!, of: match[3] }
    }),
)

/** Works a sum as a calculator does; nothing but figures, brackets, the four operations, powers, ln and π gets in. */
function work(expression: string): number {
  const script = expression
    .replaceAll('×', '*')
    .replaceAll('÷', '/')
    .replaceAll('−', '-')
    .replaceAll('^', '**')
    .replaceAll('π', 'Math.PI')
    .replaceAll('ln', 'Math.log')
  if (!/^(?:[\d.\s+\-*/()]|Math\.PI|Math\.log)+$/.test(script))
    throw new Error(`walkthrough: not a sum, got "${expression}"`)
  return Function(`return (${script})`)() as number
}

/** Half a unit of the last digit shown, and a little for figures that were rounded on the way. */
const allowed = (shown: string): number => 0.6 * 10 ** -(shown.split('.')[1]?.length ?? 0)

const layer = (zone: string, id: string) => made.quantities.layers.find((one) => one.id === `${zone}:${id}`)!
const pour = (zone: string, id: string) =>
  made.pours.pours.find((one) => one.step === `coat:${zone}:${id}:1`)!
const placed = (step: string) => made.days.placed.find((one) => one.step === step)!
const zone = (id: string) => [...made.surfaces.zones, ...made.marks.zones].find((one) => one.id === id)!
const left = (sheet: string) => made.stores.items.find((one) => one.sheet === sheet)!.leftoverM3 * 1000
const line = (id: string) => made.money!.lines.find((one) => one.id === id)!.coins! / 100
const change = (id: string) => made.money!.changes.find((one) => one.id === id)!

/** Hours since midnight of the place; the sample's days have no clock change. */
function clock(minute: number): number {
  const day = made.days.days.find((one) => one.startMinute <= minute && minute < one.endMinute)!
  return (minute - day.startMinute) / 60
}

function dewAt(local: string): number {
  const minute = (Date.parse(`${local}:00Z`) - 2 * 3_600_000) / 60_000
  const air = made.conditions.air.find((one) => one.key === 'boat')!
  return air.dewC[(minute - air.firstMinute) / 60]!
}

const primer = placed('coat:foredeck:prime:1')
const setUpSlots = Math.ceil(made.steps.steps.find((one) => one.id === primer.step)!.setUpMinutes / 15) * 15

const values: Readonly<Record<string, (plan: Plan) => number>> = {
  'area side-decks': () => zone('side-decks').areaM2,
  'mixed side-decks deck-gloss': () => layer('side-decks', 'deck-gloss').mixedM3 * 1000,
  'thinner side-decks deck-gloss': () => layer('side-decks', 'deck-gloss').thinnerM3 * 1000,
  'part A of one pour side-decks deck-gloss': () => pour('side-decks', 'deck-gloss').partsM3[0]! * 1000,
  'part B of one pour side-decks deck-gloss': () => pour('side-decks', 'deck-gloss').partsM3[1]! * 1000,
  'spread cockpit-sole fair-deck': (of) =>
    of.buildUps.layers.find((one) => one.id === 'cockpit-sole:fair-deck')!.spreadM2PerM3!.value / 1000,
  'mixed cockpit-sole fair-deck': () => layer('cockpit-sole', 'fair-deck').mixedM3 * 1000,
  'area panels-sole': () => zone('panels-sole').areaM2,
  'mixed panels-sole grip': () => layer('panels-sole', 'grip').mixedM3 * 1000,
  'left over non-skid': () => left('non-skid'),
  'end survey': () => clock(placed('survey').endMinute),
  'ready sand topsides-port': () => clock(placed('sand:topsides-port:prime:1').heldBy!.untilMinute),
  'dew 2027-05-17T08:00': () => dewAt('2027-05-17T08:00'),
  'first primer touches foredeck': () => clock(primer.startMinute + setUpSlots),
  'left over high-build': () => left('high-build'),
  'line high-build:high-build-5': () => line('high-build:high-build-5'),
  'hours helper': (of) => of.money!.lines.find((one) => one.id === 'helper')!.quantity,
  'line helper': () => line('helper'),
  'change net locker-floor': () => change('locker-floor').netCoins / 100,
  'change total locker-floor': () => change('locker-floor').totalCoins / 100,
  margin: (of) => of.money!.marginCoins / 100,
  net: (of) => of.money!.netCoins / 100,
  total: (of) => of.money!.totalCoins / 100,
}

describe('the walk through by hand', () => {
  it.each(sums)('$line', ({ expression, result, of }) => {
    expect(Math.abs(work(expression) - Number(result))).toBeLessThanOrEqual(allowed(result))
    if (of === undefined) return
    const value = values[of]
    if (!value) throw new Error(`walkthrough: nothing to hold it against, got "${of}"`)
    expect(Math.abs(value(made) - Number(result))).toBeLessThanOrEqual(allowed(result))
  })

  it('follows three volumes, three dates and three sums of money', () => {
    const followed = new Set(sums.map((sum) => sum.of).filter((of) => of !== undefined))
    expect([...followed].sort()).toEqual(Object.keys(values).sort())
    expect(text.match(/^### /gm)).toHaveLength(9)
  })
})
