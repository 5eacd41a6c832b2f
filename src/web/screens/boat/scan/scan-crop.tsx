/** The box that holds the hull and nothing else, typed; drawn dashed in the views. */
import type { Box } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../../job/job-view.ts'
import { inMetres, LengthField, metresOf } from './length-field.tsx'

const sides = ['leastX', 'mostX', 'leastY', 'mostY', 'leastZ', 'mostZ'] as const
type CropSide = (typeof sides)[number]

export type CropText = Readonly<Partial<Record<CropSide, string>>>

const edgeOf = ({ least, most }: Box, side: CropSide): number => {
  const axis = side.at(-1)!.toLowerCase() as 'x' | 'y' | 'z'
  return (side.startsWith('least') ? least : most)[axis]
}

/** The box as typed, what is left open as the scan has it; undefined while nothing is typed. */
export function cropOf(text: CropText, box: Box): Box | undefined {
  const at = (side: CropSide): number => metresOf(text[side] ?? '') ?? edgeOf(box, side)
  if (sides.every((side) => metresOf(text[side] ?? '') === undefined)) return undefined
  return {
    least: { x: at('leastX'), y: at('leastY'), z: at('leastZ') },
    most: { x: at('mostX'), y: at('mostY'), z: at('mostZ') },
  }
}

export type ScanCropProps = {
  readonly view: JobView
  readonly text: CropText
  readonly box: Box | undefined
  readonly onText: (text: CropText) => void
}

export const ScanCrop = ({ view, text, box, onText }: ScanCropProps) => (
  <>
    <p>{view.words.sentence('scan.cropSay')}</p>
    <div className="cells">
      {sides.map((side) => (
        <LengthField
          key={side}
          view={view}
          label={labelOf(`scanCrop.${side}`)}
          value={text[side] ?? (box ? inMetres(edgeOf(box, side)) : '')}
          onCommit={(typed) => onText({ ...text, [side]: typed })}
        />
      ))}
    </div>
  </>
)
