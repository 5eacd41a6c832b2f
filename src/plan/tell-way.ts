/** How a figure came about, told on demand: code that no plan needs, fetched when somebody first asks. */
import type { TellInput } from './ways/index.ts'
import type { FigureRef, Way } from './ways/way.ts'

/** Undefined for a figure that the plan does not have. */
export const tellWay = async (input: TellInput, figure: FigureRef): Promise<Way | undefined> =>
  (await import('./ways/index.ts')).tellWay(input, figure)
