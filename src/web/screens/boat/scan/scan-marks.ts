/** The marks that a person may set on a scan, and what is known of each. */
import type { Pick3, Point3, ScanAnswers, ScanSides } from '#plan'

export type MarkId =
  | 'stemWater'
  | 'portWater'
  | 'starboardWater'
  | 'keelAft'
  | 'stemHead'
  | 'midWater'
  | 'tapeA'
  | 'tapeB'

export type MarkKind = {
  readonly id: MarkId
  /** In its balloon. */
  readonly sign: string
  readonly centred: boolean
  readonly onWater: boolean
  /** Which side is meant where a touch goes through the boat. */
  readonly side: Pick3['side']
}

export const frameMarks: readonly MarkKind[] = [
  { id: 'stemWater', sign: '1', centred: true, onWater: true, side: 'middle' },
  { id: 'portWater', sign: '2', centred: false, onWater: true, side: 'port' },
  { id: 'starboardWater', sign: '3', centred: false, onWater: true, side: 'starboard' },
  { id: 'keelAft', sign: '4', centred: true, onWater: false, side: 'middle' },
  { id: 'stemHead', sign: '5', centred: true, onWater: false, side: 'middle' },
  { id: 'midWater', sign: '6', centred: false, onWater: true, side: 'port' },
]

export const tapeMarks: readonly MarkKind[] = [
  { id: 'tapeA', sign: 'A', centred: false, onWater: false, side: 'port' },
  { id: 'tapeB', sign: 'B', centred: false, onWater: false, side: 'port' },
]

export type Places = Readonly<Partial<Record<MarkId, Point3>>>

/** With one side scanned there is nothing to set on the other. */
export const marksFor = (sides: ScanSides): readonly MarkKind[] =>
  frameMarks.filter(
    ({ id, side }) => sides === 'both' || id === 'midWater' || side === 'middle' || side === sides,
  )

export const sideFor = ({ side }: MarkKind, sides: ScanSides): Pick3['side'] =>
  side !== 'middle' && sides !== 'both' ? sides : side

/** Those that are set, as the fit takes them. */
export const answersOf = (
  places: Places,
  sides: ScanSides,
  nameOf: (id: MarkId) => string,
): ScanAnswers['marks'] =>
  marksFor(sides).flatMap(({ id, centred, onWater }) => {
    const at = places[id]
    return at ? [{ id: nameOf(id), at, centred, ...(onWater ? { height: 0 } : {}) }] : []
  })
