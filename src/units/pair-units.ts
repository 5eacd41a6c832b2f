/** Puts one unit over another: `g` over `m²` is an areic mass, `kg` over `s` is nothing that is read here. */

import type { Kind } from './dimension.ts'
import type { Unit } from './unit-table.ts'

/** `over` brings a length per hour to m/s; every other pair is already in the unit of its result. */
const pairs: Readonly<Record<string, { readonly kind: Kind; readonly over: number }>> = {
  'mass/area': { kind: 'areicMass', over: 1 },
  'mass/volume': { kind: 'density', over: 1 },
  'mass/mass': { kind: 'massShare', over: 1 },
  'area/volume': { kind: 'coverage', over: 1 },
  'volume/area': { kind: 'areicVolume', over: 1 },
  'volume/volume': { kind: 'volumeShare', over: 1 },
  'volume/time': { kind: 'volumeRate', over: 1 },
  'length/time': { kind: 'speed', over: 3600 },
  'area/time': { kind: 'pace', over: 1 },
  'time/area': { kind: 'workRate', over: 1 },
  'energy/time': { kind: 'power', over: 1 },
}

/** The unit `top/bottom`, `bottom` taken `count` times (`ml/100 ml`); the name of the pair when it has no kind. */
export const pairUnits = (top: Unit, bottom: Unit, count: number): Unit | string => {
  const name = `${top.kind}/${bottom.kind}`
  const pair = pairs[name]
  if (!pair) return name
  return {
    id: `${pair.kind === 'areicMass' && top.id === 'oz av' ? 'oz' : top.id}/${bottom.id}`,
    kind: pair.kind,
    times: top.times * bottom.over,
    over: top.over * bottom.times * pair.over * count,
    zero: 0,
    spellings: [],
    simple: false,
  }
}
