/** The drawing of a sum that has one. */
import type { SumId } from '#sums'
import { BevelSection } from './draw-bevel.tsx'
import { DewTape } from './draw-dew.tsx'
import { MixCup } from './draw-mix.tsx'
import { SunCompass } from './draw-sun.tsx'
import type { SumDrawingProps } from './sum-props.ts'

export const hasDrawing = (id: SumId): boolean => ['mix', 'bevel', 'dew', 'sun'].includes(id)

export const SumDrawing = ({ id, ...props }: SumDrawingProps & { readonly id: SumId }) => {
  if (id === 'mix') return <MixCup {...props} />
  if (id === 'bevel') return <BevelSection {...props} />
  if (id === 'dew') return <DewTape {...props} />
  if (id === 'sun') return <SunCompass {...props} />
  return null
}
