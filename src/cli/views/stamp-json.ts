/** The stamp of a plan for programs: on every JSON answer. */
import type { Plan } from '#plan'

export const stampJson = ({ stamp: { nowMs, ...rest } }: Plan) => ({ ...rest, madeAtMs: nowMs })
