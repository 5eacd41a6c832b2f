/** Small drawings beside words, from the line table: 24 px box, 2 px stroke, square ends. Words first. */
import type { ReactNode } from 'react'

export type IconKind =
  | 'tick'
  | 'cross'
  | 'plus'
  | 'minus'
  | 'back'
  | 'on'
  | 'print'
  | 'photo'
  | 'undo'
  | 'redo'
  | 'move'

export const Icon = ({ kind }: { readonly kind: IconKind }) => (
  <svg
    width="24"
    height="24"
    viewBox="0 0 24 24"
    fill="none"
    stroke="currentColor"
    strokeWidth="2"
    aria-hidden="true"
  >
    {drawings[kind]}
  </svg>
)

const drawings: Readonly<Record<IconKind, ReactNode>> = {
  tick: <path d="m4 12.5 5.5 5.5L20 7" />,
  cross: <path d="m5 5 14 14M19 5 5 19" />,
  plus: <path d="M12 4v16M4 12h16" />,
  minus: <path d="M4 12h16" />,
  back: <path d="m14 5-7 7 7 7" />,
  on: <path d="m10 5 7 7-7 7" />,
  print: <path d="M7 9V4h10v5M7 16H4V9h16v7h-3M7 13h10v7H7Z" />,
  photo: (
    <>
      <path d="M3 8h5l2-3h4l2 3h5v11H3Z" />
      <circle cx="12" cy="13" r="3.5" />
    </>
  ),
  undo: <path d="M8 5 4 9l4 4M4 9h11a5 5 0 0 1 0 10H9" />,
  redo: <path d="m16 5 4 4-4 4M20 9H9a5 5 0 0 0 0 10h6" />,
  move: <path d="M8 6h8M8 12h8M8 18h8" />,
}
