/** Where the newest edits are kept: on this device (one box), or on the server too (two boxes joined). */
import { labelOf } from '#words'
import './kept-mark.css'

export type KeptMarkProps = {
  readonly where: 'writing' | 'device' | 'both' | 'fault'
  /** Worded: how many wait, since when the server is out of reach, what went wrong. */
  readonly detail?: string | undefined
}

export const KeptMark = ({ where, detail }: KeptMarkProps) => (
  <p className="kept-mark" role="status">
    <svg width="36" height="24" viewBox="0 0 36 24" aria-hidden="true">
      <rect x="1" y="4" width="12" height="16" {...boxLook(where !== 'writing' && where !== 'fault')} />
      <path
        d="M13 12H22"
        stroke="var(--ink)"
        strokeWidth="2"
        strokeDasharray={where === 'both' ? undefined : '2 2'}
      />
      <rect x="22" y="4" width="12" height="16" {...boxLook(where === 'both')} />
      {where === 'fault' ? (
        <>
          <rect x="-1" y="2" width="16" height="20" fill="var(--fault)" />
          <path d="m2 7 10 10m0-10-10 10" stroke="var(--mark)" strokeWidth="2.5" />
        </>
      ) : null}
    </svg>
    <span>
      {labelOf(`keptMark.${where}`)}
      {detail === undefined ? null : <span className="kept-mark-detail">{detail}</span>}
    </span>
  </p>
)

const boxLook = (full: boolean) =>
  full
    ? { fill: 'var(--ink)', stroke: 'var(--ink)', strokeWidth: 2 }
    : { fill: 'none', stroke: 'var(--ink)', strokeWidth: 2, strokeDasharray: '2 2' }
