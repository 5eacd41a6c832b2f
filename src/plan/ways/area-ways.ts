/** How areas came about: typed in, length by width, panels in their borders, or the surface of the hull. */
import type { Figure } from '#job'
import type { PanelMark, ZoneArea } from '../types.ts'
import { shapeArea, shapeOf, withPads } from './shape-ways.ts'
import { counted, type Told, workCell, written, zoneOf } from './told.ts'
import { given, minus, number, type Part, plus, times, type Way, wayOf, worked } from './way.ts'

export function zoneAreaWay(told: Told, id: string): Way | undefined {
  const zone = zoneOf(told, id)
  return zone && areaWay(told, zone)
}

/** The area of a zone as a part of something else. */
export const areaPart = (told: Told, zone: ZoneArea): Part => areaWay(told, zone).figure

function areaWay(told: Told, zone: ZoneArea): Way {
  const base = {
    name: 'area',
    of: zone.name,
    key: 'areaM2',
    certainty: zone.certainty,
    at: workCell('zones', zone.id, 'area'),
  }
  if (zone.padsM2) return withPads(told, zone, base, (whole) => areaWay(told, whole))
  const item = told.work.zones.find((one) => one.id === zone.id)
  const shape = shapeOf(told, zone)
  if (shape) return shapeArea(told, shape, base)
  if (isMarked(told, zone)) return marksArea(told, zone, base)
  if (zone.how === 'share' || zone.how === 'marks') return sharedArea(told, zone, base)
  if (zone.how === 'girths') return girthArea(told, given({ ...base, value: zone.areaM2 }))
  if (zone.how === 'surface' || !item) return surfaceArea(told, given({ ...base, value: zone.areaM2 }))
  const cell = (key: string) => workCell('zones', zone.id, key)
  const count = item.count === undefined ? [] : [counted('pieces', item.count, { at: cell('count') })]
  // Typed in for a single piece: nothing was worked out.
  if (item.area && count.length === 0) return wayOf(written({ ...base }, item.area))
  const sizes = item.area
    ? [written({ name: 'areaGiven', key: 'areaM2', at: cell('area') }, item.area)]
    : (['length', 'width'] as const).flatMap((key) => {
        const figure = item[key]
        return figure ? [written({ name: key, key: `${key}M`, at: cell(key) }, figure)] : []
      })
  return wayOf(worked(base, times(...count, ...sizes)))
}

type Base = Omit<Part, 'kind' | 'value' | 'term'>

const isMarked = ({ plan: { marks } }: Told, { id, how }: ZoneArea): boolean =>
  how === 'marks' && [...marks.panels, ...marks.stripes].some((mark) => mark.zone === id)

/** What such a zone usually has of the area inside the sheer. */
function sharedArea(told: Told, zone: ZoneArea, base: Base): Way {
  const insideM2 = told.plan.surfaces.rules.find((rule) => rule.zone === 'deck')?.workedArea
  if (insideM2 === undefined) return wayOf(given({ ...base, value: zone.areaM2 }))
  const inside = given({
    name: 'insideSheer',
    key: 'areaM2',
    value: insideM2,
    certainty: 'assumed',
    at: workCell('boat', undefined, 'beam'),
  })
  const share = given({
    name: 'deckShare',
    key: 'share',
    value: zone.areaM2 / insideM2,
    certainty: 'assumed',
    source: 'assumed',
  })
  return wayOf(worked(base, times(inside, share)))
}

function marksArea(told: Told, zone: ZoneArea, base: Base): Way {
  const panels = told.plan.marks.panels.filter((panel) => panel.zone === zone.id)
  const stripes = told.plan.marks.stripes.filter((stripe) => stripe.zone === zone.id)
  const at = workCell('marks', [...panels, ...stripes][0]?.id, 'length')
  const terms = [
    ...panels.map((panel) => {
      const count = counted('pieces', panel.count, {
        of: panel.name,
        at: workCell('marks', panel.id, 'count'),
      })
      return panel.count === 1 ? panelArea(told, panel) : times(count, panelArea(told, panel))
    }),
    ...stripes.map((stripe) =>
      given({
        name: 'stripeArea',
        of: stripe.name,
        key: 'areaM2',
        value: stripe.table.areaM2,
        certainty: zone.certainty,
        at: workCell('marks', stripe.id, 'heightStem'),
      }),
    ),
  ]
  const how = stripes.length > 0 ? { how: { code: 'way.stripeSurface' } } : {}
  return wayOf(worked({ ...base, at }, plus(...terms)), how)
}

/** One panel: its field less a border all round, less what the round corners take. */
export function panelArea(told: Told, panel: PanelMark): Part {
  const [length, width] = [panelSide(told, panel, 'length'), panelSide(told, panel, 'width')]
  const radius = markSize(told, panel, 'cornerRadius', panel.cornerRadiusM)
  return worked(
    { name: 'panelArea', of: panel.name, key: 'areaM2', certainty: panel.certainty },
    minus(times(length, width), times(minus(number(4), number(Math.PI)), radius, radius)),
  )
}

/** Inside the border. */
export function panelSide(told: Told, panel: PanelMark, side: 'length' | 'width'): Part {
  const field = told.work.marks.find(({ id }) => id === panel.id)?.[side]
  const border = markSize(told, panel, 'border', panel.borderM)
  const inner = panel[`${side}M`]
  const outer = markSize(told, panel, side, field?.value ?? inner + 2 * panel.borderM)
  return worked(
    {
      name: side === 'length' ? 'panelLength' : 'panelWidth',
      of: panel.name,
      key: `${side}M`,
      certainty: panel.certainty,
    },
    minus(outer, times(number(2), border)),
  )
}

const sizeNames = {
  border: 'border',
  cornerRadius: 'cornerRadius',
  length: 'fieldLength',
  width: 'fieldWidth',
}

function markSize(told: Told, { id }: PanelMark, key: keyof typeof sizeNames, valueM: number): Part {
  const figure: Figure | undefined = told.work.marks.find((mark) => mark.id === id)?.[key]
  return given({
    name: sizeNames[key],
    key: 'sizeM',
    value: valueM,
    certainty: figure?.certainty ?? 'assumed',
    at: workCell('marks', id, key),
    ...(figure ? {} : { source: 'assumed' }),
  })
}

const chief = ['lengthOverall', 'beam', 'freeboardStem', 'freeboardMid', 'freeboardStern', 'draft'] as const

function girthArea(told: Told, figure: Part): Way {
  const girths = counted('girths', told.work.girths.length, {
    at: workCell('girths', told.work.girths[0]?.id, 'sheerToWater'),
  })
  return wayOf(figure, { parts: [girths, ...hullSizes(told)], how: { code: 'way.girthSurface' } })
}

/** A surface has no formula: it is measured on the hull that the sizes or stations draw. */
function surfaceArea(told: Told, figure: Part): Way {
  const { work } = told
  if (work.stations.length > 0) {
    const stations = counted('stations', work.stations.length)
    const points = counted('points', work.points.length)
    return wayOf(figure, { parts: [stations, points], how: { code: 'way.stationSurface' } })
  }
  return wayOf(figure, { parts: hullSizes(told), how: { code: 'way.sizeSurface' } })
}

/** The chief sizes, given or taken from the others. */
export function hullSizes({ plan, work }: Told): readonly Part[] {
  const hull = plan.surfaces.hull?.particulars
  return chief.flatMap((key) => {
    const figure: Figure | undefined = work.boat[key]
    const value = figure?.value ?? hull?.[key === 'beam' ? 'beamOverall' : key]
    if (value === undefined) return []
    return [
      given({
        name: key,
        key: 'sizeM',
        value,
        certainty: figure?.certainty ?? 'assumed',
        at: workCell('boat', undefined, key),
      }),
    ]
  })
}

export function panelWay(told: Told, mark: string, of: 'length' | 'width' | 'area'): Way | undefined {
  const panel = told.plan.marks.panels.find(({ id }) => id === mark)
  if (!panel) return undefined
  return wayOf(of === 'area' ? panelArea(told, panel) : panelSide(told, panel, of))
}

export function ruleWay(told: Told, id: string): Way | undefined {
  const rule = told.plan.surfaces.rules.find((one) => one.id === id)
  if (!rule) return undefined
  const figure = given({
    name: 'ruleArea',
    key: 'areaM2',
    value: rule.area,
    certainty: 'typical',
    source: rule.source,
  })
  return wayOf(figure, { parts: hullSizes(told), how: { code: 'way.rule', data: { rule: id } } })
}
