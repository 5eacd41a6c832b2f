/** How much room shapes take: to check that nothing leaves its sheet and no text lies on another. */
import type { Setter } from '../../src/papers/setter.ts'
import type { Box, Drawing, Point, Shape, TextShape } from '../../src/papers/shapes.ts'
import { capHeight } from '../../src/papers/type-styles.ts'

export function textBox({ at, text, style, align }: TextShape, setter: Setter): Box {
  const width = setter.width(text, style)
  const height = capHeight(style)
  return { x: at[0] - width * { left: 0, centre: 0.5, right: 1 }[align], y: at[1] - height, width, height }
}

const around = (points: readonly Point[]): Box => {
  const xs = points.map(([x]) => x)
  const ys = points.map(([, y]) => y)
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}

export function shapeBox(shape: Shape, setter: Setter): Box {
  switch (shape.kind) {
    case 'text':
      return textBox(shape, setter)
    case 'circle':
      return {
        x: shape.at[0] - shape.radius,
        y: shape.at[1] - shape.radius,
        width: 2 * shape.radius,
        height: 2 * shape.radius,
      }
    case 'hatch':
      return around(shape.within)
    case 'line':
    case 'area':
      return around(shape.points)
  }
}

/** Shapes that reach outside the box by more than a line's width. */
export const outside = (drawing: Drawing, box: Box, setter: Setter): Drawing =>
  drawing.filter((shape) => {
    const own = shapeBox(shape, setter)
    const slack = 0.4
    return (
      own.x < box.x - slack ||
      own.y < box.y - slack ||
      own.x + own.width > box.x + box.width + slack ||
      own.y + own.height > box.y + box.height + slack
    )
  })

/** Pairs of texts that lie on each other by more than a hair. */
export function clashes(drawing: Drawing, setter: Setter): readonly (readonly [string, string])[] {
  const texts = drawing.flatMap((shape) =>
    shape.kind === 'text' && shape.text.trim() !== ''
      ? [{ text: shape.text, box: textBox(shape, setter) }]
      : [],
  )
  return texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .flatMap((other): readonly (readonly [string, string])[] =>
        overlap(one.box, other.box) ? [[one.text, other.text]] : [],
      ),
  )
}

function overlap(a: Box, b: Box): boolean {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return across > 0.3 && down > 0.3
}
