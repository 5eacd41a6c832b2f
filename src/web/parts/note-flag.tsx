/** The flag of a note: a number in a circle; missing, in a dashed square; a change, in a triangle. */
import { labelOf } from '#words'
import './note-flag.css'

export type NoteKind = 'note' | 'missing' | 'change'

export type NoteFlagProps = {
  readonly kind: NoteKind
  readonly mark: number | string
  readonly small?: boolean
}

export const NoteFlag = ({ kind, mark, small = false }: NoteFlagProps) => (
  <svg
    className="note-flag"
    role="img"
    aria-label={`${labelOf(`noteFlag.${kind}`)} ${mark}`}
    width={small ? 20 : 28}
    height={small ? 20 : 28}
    viewBox="0 0 28 28"
  >
    {outlines[kind]}
    <text
      x="14"
      y={kind === 'change' ? 22 : 19}
      textAnchor="middle"
      style={{ fontSize: kind === 'change' ? 12 : 15 }}
      textLength={wide(kind, mark) ? 15 : undefined}
      lengthAdjust="spacingAndGlyphs"
    >
      {mark}
    </text>
  </svg>
)

const wide = (kind: NoteKind, mark: number | string): boolean =>
  String(mark).length > (kind === 'change' ? 2 : 3)

const outlines = {
  note: <circle cx="14" cy="14" r="12.75" fill="var(--paper)" stroke="var(--ink)" strokeWidth="1.5" />,
  missing: (
    <rect
      x="1.5"
      y="1.5"
      width="25"
      height="25"
      fill="var(--paper)"
      stroke="var(--ink)"
      strokeWidth="1.5"
      strokeDasharray="4 2.25"
    />
  ),
  change: (
    <path
      d="M14 2 26.6 25.5H1.4Z"
      fill="var(--paper)"
      stroke="var(--ink)"
      strokeWidth="1.5"
      strokeLinejoin="round"
    />
  ),
} as const
