/** Colours that get so hot in the weather at hand that the weave of the laminate may print through their gloss. */
import {
  absorptanceOf,
  darkestUnder,
  type HourlySeries,
  hourMs,
  type PrintThrough,
  printThrough,
  type Shade,
  skinTemperature,
  softening,
} from '#core/climate'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Runner, Stage } from '../remember.ts'
import type { MeasuredHull } from '../surfaces.ts'
import type { BuildUps, Marks, ResolvedSheet, Surfaces, ZoneArea } from '../types.ts'
import { type OpenSkinInput, openSky, skinQuestion } from './open-skin.ts'
import { placeFaces } from './place-faces.ts'
import { skinPlaceOf } from './skin-places.ts'

export type PrintThroughInput = {
  readonly weather: HourlySeries | undefined
  readonly place: Work['place']
  readonly boat: Work['boat']
  readonly hull: MeasuredHull
  readonly buildUps: BuildUps
  readonly surfaces: Surfaces
  readonly marks: Marks
}

/** Whatever stands over the boat now, later it lies in the sun: decks level, sides turned to every quarter. */
type Lie = 'deck' | 'side'

type Finish = {
  readonly key: string
  readonly lie: Lie
  readonly absorptance: number
  readonly zone: string
  readonly name: string
  readonly colour: string
}

type Finishes = { readonly list: readonly Finish[] }

/** Smooth last coats that have a colour, each once a lie. What is mostly in the water stays cool; beads hide a weave. */
const finishesOf: Stage<Pick<PrintThroughInput, 'buildUps' | 'surfaces' | 'marks'>, Finishes> = {
  name: 'print-through finishes',
  run: ({ buildUps, surfaces, marks }) => {
    const sheets = new Map(buildUps.sheets.map((sheet) => [sheet.id, sheet]))
    const outer = new Map(buildUps.layers.map((layer) => [layer.zone, layer.sheet]))
    const found = [...surfaces.zones, ...marks.zones].flatMap((zone) => {
      const sheet = sheets.get(outer.get(zone.id) ?? '')
      return sheet ? finishOf(zone, sheet) : []
    })
    return { list: [...new Map([...found].reverse().map((one) => [one.key, one])).values()].reverse() }
  },
}

function finishOf(zone: ZoneArea, { id, colour, shade }: ResolvedSheet): readonly Finish[] {
  const place = skinPlaceOf({ ...zone, indoors: false }, 'open')
  if (place === 'bottom' || zone.kind === 'boot-top' || zone.kind === 'non-skid') return []
  const absorptance = absorptanceOf({ colour, shade: shade === '' ? undefined : (shade as Shade) })
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

const hottestOf = ({
  lie,
  absorptance,
}: Finish): Stage<OpenSkinInput, { readonly at: Hottest | undefined }> => ({
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
export function printThroughNotes(
  run: Runner,
  input: PrintThroughInput,
): { readonly notes: readonly Note[] } {
  const { weather, place, boat, hull, buildUps, surfaces, marks } = input
  if (!weather || !place.latitude || !place.longitude) return { notes: [] }
  const { list } = run(finishesOf, { buildUps, surfaces, marks })
  const sky = run(openSky, { weather, place })
  const faces = run(placeFaces, { hull, rake: boat.transomRake })
  const skin = { weather, sky, faces, bowBearing: undefined, laminate: boat.laminate }
  return {
    notes: list.flatMap((finish) => noteOf(finish, run(hottestOf(finish), skin).at, weather)),
  }
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
