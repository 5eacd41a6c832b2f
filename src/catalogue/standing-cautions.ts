/** What holds whatever is painted: the stands, the tank, the flame, the wet floor, the people near, what is left alone. */
import { type Hazard, hazard } from './hazard-type.ts'

const practice = 'assumed'

const stands: readonly Hazard[] = [
  hazard('standCover', {
    severity: 'danger',
    stands: 'job',
    flags: ['covered', 'on stands'],
    source: practice,
  }),
  hazard('standMove', { severity: 'danger', stands: 'job', flags: ['on stands'], source: practice }),
  hazard('standCheck', { severity: 'warning', stands: 'job', flags: ['on stands'], source: practice }),
]

const fires: readonly Hazard[] = [
  hazard('fuelTank', {
    severity: 'danger',
    stands: 'step',
    flags: ['fuel and cutting'],
    protection: ['noSpark', 'draught', 'extinguisher'],
    source: practice,
  }),
  hazard('unventedFlame', {
    severity: 'danger',
    stands: 'job',
    flags: ['unvented flame'],
    protection: ['noSpark', 'draught', 'extinguisher'],
    data: { waterPerGas: 1.6 },
    source: 'water from burning worked out; rule assumed',
  }),
  hazard('wetFloorPower', {
    severity: 'danger',
    stands: 'step',
    flags: ['wet floor'],
    protection: ['residualCurrentBreaker'],
    source: practice,
  }),
]

const places: readonly Hazard[] = [
  hazard('wetFloorDust', {
    severity: 'notice',
    stands: 'step',
    flags: ['floor wetted over dust'],
    source: practice,
  }),
  hazard('drains', { severity: 'caution', stands: 'job', flags: ['drains masked'], source: practice }),
  hazard('neighbours', { severity: 'caution', stands: 'job', flags: ['neighbours'], source: practice }),
  hazard('leaveAlone', { severity: 'notice', stands: 'job', flags: ['left alone'], source: practice }),
  hazard('structure', {
    severity: 'warning',
    stands: 'job',
    flags: ['structural finding'],
    source: 'surveyors’ lists',
  }),
]

export const standingCautions: readonly Hazard[] = [...stands, ...fires, ...places]
