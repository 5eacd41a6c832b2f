/** The units that answers are given in; boxes take any unit whatever stands here. */
import { labelOf } from '#words'
import { Switch2 } from '../../parts/index.ts'
import type { SumSystem } from './kept-sums.ts'

export type UnitSwitchProps = { readonly system: SumSystem; readonly onSystem: (system: SumSystem) => void }

export const UnitSwitch = ({ system, onSystem }: UnitSwitchProps) => (
  <Switch2<SumSystem>
    label={labelOf('sumScreen.units')}
    choices={[
      { value: 'metric', label: labelOf('sumScreen.metric') },
      { value: 'us', label: labelOf('sumScreen.us') },
    ]}
    value={system}
    onChange={onSystem}
  />
)
