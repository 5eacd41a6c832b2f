/** Puts a frame and a title block round every page of a paper. */
import { frameDrawing } from './frame.ts'
import type { Kit } from './kit.ts'
import { pageSizes } from './page.ts'
import type { Drawing } from './shapes.ts'
import { titleBlock } from './title-block.ts'
import type { PdfSheets } from './to-pdf.ts'

export type PaperPages = {
  /** The paper's name as people read it. */
  readonly title: string
  readonly date: string
  readonly pages: readonly Drawing[]
}

export function sheetsOf(kit: Kit, { title, date, pages }: PaperPages): PdfSheets {
  return {
    info: {
      title: `${kit.job.boatName}, ${title}`,
      madeMs: kit.plan.stamp.nowMs,
      language: 'en',
    },
    size: pageSizes[kit.page],
    pages: pages.map((page, index) => [
      ...page,
      ...frameDrawing(kit.page),
      ...titleBlock(kit, { title, date, number: index + 1, of: pages.length }),
    ]),
  }
}
