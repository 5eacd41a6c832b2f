/** The frame with its grid letters and centring marks: "look at C4" works by telephone. SOURCE: after ISO 5457. */
import { frameOf } from './page.ts'
import { box, type Drawing, line, textAt } from './shapes.ts'
import type { PageSize } from './types.ts'

const columns = 4
const rows = 6
const off = 2

export function frameDrawing(page: PageSize): Drawing {
  const frame = frameOf(page)
  const [right, bottom] = [frame.x + frame.width, frame.y + frame.height]
  const across = (k: number) => frame.x + (frame.width * k) / columns
  const down = (k: number) => frame.y + (frame.height * k) / rows
  return [
    ...Array.from({ length: columns }, (_, k) =>
      textAt([across(k + 0.5), frame.y - 1.6], String(k + 1), 'grid', { align: 'centre', ink: 'ink2' }),
    ),
    ...Array.from({ length: rows }, (_, k) =>
      textAt([frame.x - 2.6, down(k + 0.5) + 0.9], letter(k), 'grid', { align: 'centre', ink: 'ink2' }),
    ),
    ...Array.from({ length: columns - 1 }, (_, k) =>
      line('thin', [across(k + 1), frame.y - off], [across(k + 1), frame.y]),
    ),
    ...Array.from({ length: rows - 1 }, (_, k) =>
      line('thin', [frame.x - off, down(k + 1)], [frame.x, down(k + 1)]),
    ),
    line('thin', [frame.x + frame.width / 2, bottom], [frame.x + frame.width / 2, bottom + off]),
    line('thin', [right, frame.y + frame.height / 2], [right + off, frame.y + frame.height / 2]),
    box(frame, 'thick'),
  ]
}

const letter = (index: number): string => 'ABCDEFGH'.charAt(index)
