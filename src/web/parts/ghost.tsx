/** An empty place: what will be drawn, ghosted in thin dots, one sentence, one button. */
import type { ReactNode } from 'react'
import './ghost.css'

export type GhostKind = 'hull' | 'section' | 'days' | 'table' | 'sheet'

export type GhostProps = {
  readonly kind: GhostKind
  /** One sentence: what comes here, and what to give. */
  readonly children: ReactNode
  readonly action?: ReactNode
}

export const Ghost = ({ kind, children, action }: GhostProps) => (
  <div className="ghost">
    <svg className="ghost-drawing" viewBox="0 0 320 120" aria-hidden="true">
      <path d={drawings[kind]} />
    </svg>
    <p className="ghost-text">{children}</p>
    {action}
  </div>
)

const drawings: Readonly<Record<GhostKind, string>> = {
  hull:
    'M12 38 22 92H210C262 92 286 66 308 14 240 30 140 40 12 38ZM20 74C120 76 220 72 290 40M4 66H316' +
    'M70 38V92M128 38V92M186 36V92M244 29V86',
  section:
    'M40 14H280V106H40ZM40 36H280M40 58H280M40 80H280M52 14V36M64 14V36M76 14V36M88 14V36M100 14V36' +
    'M112 14V36M124 14V36M136 14V36M148 14V36M160 14V36M172 14V36M184 14V36M196 14V36M208 14V36M220 14V36' +
    'M232 14V36M244 14V36M256 14V36M268 14V36M46 58 68 36M76 58 98 36M106 58 128 36M136 58 158 36' +
    'M166 58 188 36M196 58 218 36M226 58 248 36M256 58 278 36',
  days:
    'M8 16H312V36H8ZM8 16V36M84 16V36M160 16V36M236 16V36M27 30V36M46 26V36M65 30V36M103 30V36M122 26V36' +
    'M141 30V36M179 30V36M198 26V36M217 30V36M255 30V36M274 26V36M293 30V36M24 50H64V66H24ZM64 58H104' +
    'M100 74H150V90H100ZM150 82H200M196 96H246V112H196Z',
  table:
    'M8 20H312M8 44H312M8 68H312M8 92H312M16 32H110M16 56H84M16 80H124M16 104H96M252 32H304M268 56H304M244 80H304M260 104H304',
  sheet:
    'M40 8H280V112H40ZM40 40H280M200 40V112M40 94H280M56 24H180M56 56H160M56 68H172M56 80H140M212 56H268M212 68H260',
}
