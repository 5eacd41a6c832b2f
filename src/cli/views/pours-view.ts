/** The mix cards: what goes in each cup, when it is mixed and until when it is used, and what it covers. */
import type { Work } from '#job'
import {
  describeCover,
  describeHandling,
  describeLaying,
  describeStep,
  type MixPart,
  mixAmounts,
  type Plan,
  type Pour,
  partKey,
} from '#plan'
import { writeAs } from '#units'
import type { Words } from '#words'
import { dateOfMinute } from './days-view.ts'
import { section, wrap } from './table.ts'

export function poursLines(plan: Plan, work: Work, words: Words): readonly string[] {
  const locale = work.job.locale ?? 'en-GB'
  const dates = new Map<string, Pour[]>()
  for (const pour of plan.pours.pours.toSorted((a, b) => a.useFromMinute - b.useFromMinute)) {
    const date = words.date(dateOfMinute(plan, pour.useFromMinute))
    dates.set(date, [...(dates.get(date) ?? []), pour])
  }
  return section(
    words.label('heading.pours'),
    [...dates].flatMap(([date, pours]) => [
      date,
      ...pours.flatMap((pour) => cardLines(plan, pour, { words, locale })),
    ]),
  )
}

type Setting = { readonly words: Words; readonly locale: string }

function cardLines(plan: Plan, pour: Pour, { words, locale }: Setting): readonly string[] {
  // A cup is measured in millilitres and weighed in grams, whatever the boat is measured in.
  const inCup = (ml: number, decimals: number): string => writeAs(ml * 1e-6, 'ml', { locale, decimals })
  const onScales = (g: number): string => writeAs(g * 1e-3, 'g', { locale, decimals: g < 20 ? 1 : 0 })
  const { parts, readyMl, decimals } = mixAmounts(pour)
  const clock = (minute: number): string => words.time(minute * 60_000, plan.days.timeZone)
  const { code, data } = describeStep(plan, pour.step)
  const named = ({ part, ml, g }: MixPart): string => {
    const weight = g === undefined ? '' : ` (${onScales(g)})`
    return `${words.label(`paperMix.${partKey(pour, part)}`)} ${inCup(ml, decimals)}${weight}`
  }
  // What is stirred in on top is no part of what the cup reads.
  const liquids = parts.filter(({ toMl }) => toMl !== undefined)
  const cup = liquids.map(named).join(' + ')
  const sum = liquids.length > 1 ? ` = ${inCup(readyMl, decimals)}` : ''
  const onTop = parts.filter(({ toMl }) => toMl === undefined).map((part) => `; ${named(part)}`)
  const cover = describeCover(pour)
  const said = [...(cover ? [cover] : []), ...describeHandling(pour), ...describeLaying(plan, pour)]
  return [
    `  ${words.sentence(code, data)}, ${pour.nr}/${pour.of}`,
    `    ${pour.times > 1 ? `${pour.times} × (${cup}${sum})` : `${cup}${sum}`}${onTop.join('')}`,
    `    ${words.sentence('pour.clocks', {
      mixClock: clock(pour.mixAtMinute),
      fromClock: clock(pour.useFromMinute),
      untilClock: pour.useUntilMinute === undefined ? 'none' : clock(pour.useUntilMinute),
      airC: pour.airC,
    })}`,
    ...wrap(said.map((one) => words.sentence(one.code, one.data)).join(' '), '').map((line) => `    ${line}`),
  ]
}

const partKeys = { A: 'base', B: 'hardener', thinner: 'thinner', bead: 'additive' } as const

export const poursJson = ({ pours: { pours } }: Plan) => ({
  pours: pours.map((pour) => {
    const { parts, readyMl, trayMl } = mixAmounts(pour)
    return {
      step: pour.step,
      zone: pour.zone,
      sheet: pour.sheet,
      nr: pour.nr,
      of: pour.of,
      times: pour.times,
      ...(pour.everyMinutes === undefined ? {} : { everyMinutes: pour.everyMinutes }),
      areaM2: pour.areaM2,
      runs: pour.runs,
      intoWet: pour.intoWet,
      ...Object.fromEntries(parts.map(({ part, ml }) => [`${partKeys[part]}Ml`, ml])),
      ...Object.fromEntries(
        parts.flatMap(({ part, g }) => (g === undefined ? [] : [[`${partKeys[part]}G`, g]])),
      ),
      readyMl,
      trayMl,
      ...(pour.stirMinutes === undefined ? {} : { stirMinutes: pour.stirMinutes }),
      airC: pour.airC,
      mixAtMs: pour.mixAtMinute * 60_000,
      useFromAtMs: pour.useFromMinute * 60_000,
      ...(pour.useUntilMinute === undefined ? {} : { useUntilAtMs: pour.useUntilMinute * 60_000 }),
      certainty: pour.certainty,
    }
  }),
})
