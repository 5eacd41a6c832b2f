/** How the boat stands in the shop, and the stripe's heights over its floor. */
import { type Attitude, attitudeFrom, heightOverLevel, type LevelMark } from '#core/boat'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Stage } from './remember.ts'
import type { Standing, StripeMark, StripeOverFloor } from './types.ts'

export type StandingInput = {
  readonly stance: Work['stance']
  readonly levels: Work['levels']
  readonly stripes: readonly StripeMark[]
}

export const standing: Stage<StandingInput, Standing> = { name: 'standing', run: standOn }

function standOn({ stance, levels, stripes }: StandingInput): Standing {
  if (levels.length === 0) return { notes: [] }
  const marks = levels.flatMap((level) => markOf(level, stance))
  const unread = levels.length - marks.length
  const left: readonly Note[] =
    unread > 0 ? [{ code: 'boat.levelsWithoutHeight', severity: 'missing', data: { count: unread } }] : []
  const lasered = levels.some(({ overFloor, belowLaser }) => !overFloor && belowLaser)
  const noFloor: readonly Note[] =
    lasered && !stance.laserHeight ? [{ code: 'boat.laserHeightMissing', severity: 'missing', data: {} }] : []
  const result = attitudeFrom(marks)
  const about = result.notes.map((note) => named(note, levels))
  if (!result.ok) return { notes: [...left, ...about] }
  const { attitude, marks: residuals, rms } = result.fit
  return {
    fit: {
      trimRad: attitude.trim,
      heelRad: attitude.heel,
      heightM: attitude.height,
      rmsM: rms,
      over: noFloor.length > 0 ? 'laser' : 'floor',
      marks: residuals.map(({ id, residual }) => ({ mark: id, residualM: residual })),
      certainty: marks.some(({ sure }) => !sure) || fromTraces(stance) ? 'assumed' : 'measured',
      ...(stance.date === undefined ? {} : { date: stance.date }),
      stripes: stripes.map((stripe) => overFloor(stripe, attitude)),
    },
    notes: [...left, ...noFloor, ...about, ...sinks(stance), ...waterlineNotes(stance)],
  }
}

type Mark = LevelMark & { readonly sure: boolean }

function markOf(level: Work['levels'][number], stance: Work['stance']): readonly Mark[] {
  const { id, fromStern, offCentre, height, overFloor: over, belowLaser } = level
  const measured = over?.value ?? (belowLaser && (stance.laserHeight?.value ?? 0) - belowLaser.value)
  if (measured === undefined) return []
  const figures = [fromStern, offCentre, height, over ?? belowLaser]
  const sure = figures.every((figure) => figure?.certainty !== 'assumed')
  return [{ id, x: fromStern.value, y: offCentre.value, z: height?.value ?? 0, height: measured, sure }]
}

/** What dried on the hull shows where she floated, loaded as she was. */
const fromTraces = ({ waterline }: Work['stance']): boolean => waterline !== 'marked afloat'

const waterlineNotes = (stance: Work['stance']): readonly Note[] =>
  fromTraces(stance)
    ? [
        {
          code: 'boat.waterlineFromTraces',
          severity: 'assumed',
          data: { from: stance.waterline ?? 'unknown' },
          source: 'assumed',
        },
      ]
    : []

const sinks = ({ date }: Work['stance']): readonly Note[] => [
  {
    code: 'boat.standsSink',
    severity: 'notice',
    data: date === undefined ? {} : { measuredDate: date },
    source: 'assumed',
  },
]

const named = (note: Note, levels: Work['levels']): Note => {
  const level = levels.find(({ id }) => id === note.data.mark)
  return level ? { ...note, data: { ...note.data, name: level.name ?? level.id } } : note
}

/** Each edge on either side: a boat that leans has its port and starboard heights apart. */
function overFloor({ id, table }: StripeMark, attitude: Attitude): StripeOverFloor {
  const over = (x: number, y: number, z: number): number => heightOverLevel(attitude, { x, y, z })
  return {
    mark: id,
    rows: table.rows.map((row) => ({
      xM: row.xM,
      portLowerM: over(row.xM, row.lowerHalfBreadthM, row.lowerM),
      portUpperM: over(row.xM, row.upperHalfBreadthM, row.upperM),
      starboardLowerM: over(row.xM, -row.lowerHalfBreadthM, row.lowerM),
      starboardUpperM: over(row.xM, -row.upperHalfBreadthM, row.upperM),
    })),
  }
}
