/** Page sizes and where things stand on them. SOURCE: frame after ISO 5457 (20 mm at the filing edge, 10 mm elsewhere). */
import type { Measure } from './blocks.ts'
import type { Column } from './flow.ts'
import type { Box } from './shapes.ts'
import type { PageSize } from './types.ts'

export const pageSizes: Readonly<Record<PageSize, readonly [width: number, height: number]>> = {
  A4: [210, 297],
  Letter: [215.9, 279.4],
}

const margins = { left: 20, right: 10, top: 10, bottom: 10 }

export const titleBlockHeight = 20

/** Between the frame and what stands in it. */
const padding = { side: 5, top: 5, bottom: 3 }

export function frameOf(page: PageSize): Box {
  const [width, height] = pageSizes[page]
  return {
    x: margins.left,
    y: margins.top,
    width: width - margins.left - margins.right,
    height: height - margins.top - margins.bottom,
  }
}

export function measureOf(page: PageSize): Measure {
  const frame = frameOf(page)
  return { x: frame.x + padding.side, width: frame.width - 2 * padding.side }
}

/** From under the frame to over the title block. */
export function columnOf(page: PageSize): Column {
  const frame = frameOf(page)
  return { top: frame.y + padding.top, bottom: frame.y + frame.height - titleBlockHeight - padding.bottom }
}
