/** Colours that get so hot in the weather at hand that the weave of the laminate may print through their gloss. */
import {
  darkestUnder,
  type HourlySeries,
  hourMs,
  type PrintThrough,
  printThrough,
  skinTemperature,
  softening,
} from '#core/climate'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Runner, Stage } from '../remember.ts'
import type { BuildUps, Marks, ResolvedSheet, Surfaces, ZoneArea } from '../types.ts'
import { type OpenSkinInput, openSky, skinQuestion } from './open-skin.ts'
import { usualFaces } from './place-faces.ts'
import { sheetAbsorptance } from './sheet-absorptance.ts'
import { skinPlaceOf } from './skin-places.ts'

export type PrintThroughInput = {
  readonly weather: HourlySeries | undefined
  readonly place: Work['place']
  readonly boat: Work['boat']
  readonly buildUps: BuildUps
  readonly surfaces: Surfaces
  readonly marks: Marks
}

/** Whatever stands over the boat now, later it lies in the sun: decks level, sides upright and turned to every quarter. */
type Lie = 'deck' | 'side'

type Finish = {
  readonly key: string
  readonly lie: Lie
  readonly absorptance: number
  readonly zone: string
  readonly name: string
  readonly colour: string
}

type FinishesInput = Pick<BuildUps, 'layers' | 'sheets'> & {
  readonly zones: Surfaces['zones']
  readonly onTop: Marks['zones']
}
type Finishes = { readonly list: readonly Finish[] }

/** Smooth last coats that have a colour, each once a lie. What is mostly in the water stays cool; beads hide a weave. */
const finishesOf: Stage<FinishesInput, Finishes> = {
  name: 'print-through finishes',
  run: ({ layers, sheets: all, zones, onTop }) => {
    const sheets = new Map(all.map((sheet) => [sheet.id, sheet]))
    const outer = new Map(layers.map((layer) => [layer.zone, layer.sheet]))
    const found = [...zones, ...onTop].flatMap((zone) => {
      const sheet = sheets.get(outer.get(zone.id) ?? '')
      return sheet ? finishOf(zone, sheet) : []
    })
    return { list: [...new Map([...found].reverse().map((one) => [one.key, one])).values()].reverse() }
  },
}

function finishOf(zone: ZoneArea, { id, colour, shade }: ResolvedSheet): readonly Finish[] {
  const place = skinPlaceOf({ ...zone, indoors: false }, 'open')
  if (place === 'bottom' || zone.kind === 'boot-top' || zone.kind === 'non-skid') return []
  const absorptance = sheetAbsorptance({ colour, shade })
  if (absorptance === undefined) return []
  const lie = place === 'deck' ? 'deck' : 'side'
  const called = colour === '' ? shade : colour
  return [{ key: `${lie}|${id}`, lie, absorptance, zone: zone.id, name: zone.name, colour: called }]
}

const quarters = [0, 1, 2, 3].map((turn) => (turn * Math.PI) / 2)
const softens = softening.unknown

type Hottest = PrintThrough & {
  /** The darkest that stays under, where there is one. */
  readonly coolShare?: number
}

type HottestOf = { readonly at: Hottest | undefined }

const hottestOf = ({ lie, absorptance }: Finish): Stage<Omit<OpenSkinInput, 'behind'>, HottestOf> => ({
  name: `print-through ${lie} ${absorptance}`,
  run: (input) => {
    const lies = lie === 'deck' ? [0] : quarters
    const all = lies.flatMap((value) => {
      const question = skinQuestion(lie === 'deck' ? 'deck' : 'port', { ...input, bowBearing: { value } })
      const judged = printThrough({ skinC: skinTemperature({ ...question, absorptance }), softens })
      return judged ? [{ question, judged }] : []
    })
    const [first, ...rest] = all
    if (!first) return { at: undefined }
    const worst = rest.reduce((most, one) => (one.judged.hottestC > most.judged.hottestC ? one : most), first)
    const isHot = worst.judged.hottestC >= softens.fromC
    const cool = isHot ? darkestUnder(worst.question, softens.fromC) : undefined
    return { at: { ...worst.judged, ...(cool === undefined ? {} : { coolShare: cool }) } }
  },
})

/** A note for each finish under which its laminate softens; none where nobody knows the sun of the place. */
export function printThroughNotes(run: Runner, input: PrintThroughInput): Noted {
  const { weather, place, boat, buildUps, surfaces, marks } = input
  if (!weather || !place.latitude || !place.longitude) return run(silent, {})
  const { list } = run(finishesOf, {
    layers: buildUps.layers,
    sheets: buildUps.sheets,
    zones: surfaces.zones,
    onTop: marks.zones,
  })
  const sky = run(openSky, { weather, place })
  const skin = { weather, sky, faces: usualFaces, bowBearing: undefined, laminate: boat.laminate }
  const hottest = list.map(
    (finish) => [`${finish.lie} ${finish.absorptance}`, run(hottestOf(finish), skin)] as const,
  )
  return run(noted, { weather, list, ...Object.fromEntries(hottest) })
}

type Noted = { readonly notes: readonly Note[] }

const silent: Stage<Readonly<Record<string, never>>, Noted> = {
  name: 'print-through',
  run: () => ({ notes: [] }),
}

type NotedInput = { readonly weather: HourlySeries; readonly list: readonly Finish[] } & Readonly<
  Record<string, unknown>
>

const noted: Stage<NotedInput, Noted> = {
  name: 'print-through',
  run: ({ weather, list, ...hottest }) => ({
    notes: list.flatMap((finish) => {
      const { at } = hottest[`${finish.lie} ${finish.absorptance}`] as HottestOf
      return noteOf(finish, at, weather)
    }),
  }),
}

function noteOf(finish: Finish, hottest: Hottest | undefined, weather: HourlySeries): readonly Note[] {
  if (hottest?.verdict !== 'soft' && hottest?.verdict !== 'over') return []
  const { zone, name, colour } = finish
  return [
    {
      code: 'conditions.printThrough',
      severity: 'notice',
      data: {
        zone,
        name,
        colour,
        verdict: hottest.verdict,
        hottestC: hottest.hottestC,
        hottestAtMs: weather.startMs + hottest.hottestHour * hourMs,
        softensC: softens.fromC,
        ...(hottest.coolShare === undefined
          ? { remedy: 'none' }
          : { remedy: 'colour', coolShare: hottest.coolShare }),
      },
      source: softens.source,
    },
  ]
}
