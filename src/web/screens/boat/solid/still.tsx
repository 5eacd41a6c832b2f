/** The boat as a still drawing, where the page cannot draw space or has lost what it drew with. */
import type { Solid } from '#plan'
import type { Fill, LineLook, Picture } from './picture.ts'
import { stillShapes } from './still-shapes.ts'
import { type Camera, projected } from './view.ts'

export type StillProps = {
  readonly solid: Solid
  readonly picture: Picture
  readonly outline: LineLook
  readonly camera: Camera
}

const paintOf = (fill: Fill): string => ('paint' in fill ? fill.paint : `var(--${fill.ink})`)

export const Still = ({ solid, picture, outline, camera }: StillProps) => {
  const at = projected(solid.positions, camera)
  const points = projected(solid.points, camera)
  const { width, height } = camera.size
  const lines = [
    ...picture.lines.filter(({ over }) => !over),
    outline,
    ...picture.lines.filter(({ over }) => over),
  ]
  const shapes = stillShapes({ ...picture, lines, at, points, camera })
  return (
    <svg
      className="solid-still"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
    >
      {shapes.faces.map(({ look, path }, n) => (
        <path
          key={String(n)}
          d={path}
          fill={paintOf(look.fill)}
          stroke={paintOf(look.fill)}
          strokeWidth={0.6}
        />
      ))}
      {shapes.lines.map(({ look, path }) => (
        <path
          key={look.key}
          d={path}
          fill="none"
          stroke={paintOf(look.fill)}
          strokeWidth={look.width}
          strokeLinecap="round"
          strokeDasharray={look.dash?.join(' ')}
        />
      ))}
      {shapes.dots.map(([x, y], n) => (
        <circle key={String(n)} className="solid-point" cx={x} cy={y} r={2.5} />
      ))}
    </svg>
  )
}
