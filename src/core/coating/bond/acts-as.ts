/** The acts of one joint as the layer is planned. */
import { actsOf, type Preparation } from './joint.ts'
import type { Act } from './rule.ts'
import { isGrit, type Sanding } from './stack.ts'

/** What is done before a coat, in order; sanded when a grit is planned or the surface always asks for one. */
export const actsAs = (preparation: Preparation, sanding: Sanding): readonly Act[] =>
  actsOf(preparation, { sanded: isGrit(sanding) || preparation.key === 'always' })
