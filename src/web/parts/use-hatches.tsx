/** Hatches for one drawing: `defs` goes into its `svg`, `fill(name)` gives what to fill a shape with. */
import { type ReactNode, useId } from 'react'
import { HatchDefs, type HatchName, type HatchUnit, hatchUrl } from './hatch-defs.tsx'

export type Hatches = {
  readonly defs: ReactNode
  /** `none` without a name: of an unknown family the outline is dotted and nothing is hatched. */
  readonly fill: (name: HatchName | undefined) => string
}

export function useHatches(names: readonly (HatchName | undefined)[], unit: HatchUnit = 'px'): Hatches {
  const id = `hatch${useId()}`
  const known = names.filter((name) => name !== undefined)
  return {
    defs: <HatchDefs id={id} names={known} unit={unit} />,
    fill: (name) => (name === undefined ? 'none' : hatchUrl(id, name)),
  }
}
