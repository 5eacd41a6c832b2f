/** Invented data for the page of parts. */
import type { Drawing, Point } from '#papers'
import type { HourSpan, LedgerColumn, StickRoom, TimeSpan } from '../../parts/index.ts'

const hour = 3_600_000
export const startMs = Date.UTC(2027, 4, 14, 0)
export const week: TimeSpan = { fromMs: startMs, toMs: startMs + 120 * hour }
export const workday: TimeSpan = { fromMs: startMs + 6 * hour, toMs: startMs + 20 * hour }
export const nowMs = startMs + 9.13 * hour

const spanOf = (kind: HourSpan['kind'], from: number, to: number): HourSpan => ({
  kind,
  fromMs: startMs + from * hour,
  toMs: startMs + to * hour,
})

export const portHours: readonly HourSpan[] = [
  spanOf('go', 7, 11),
  spanOf('risky', 11, 13),
  spanOf('go', 31, 35),
  spanOf('risky', 35, 37),
  spanOf('no', 48, 72),
  spanOf('go', 79, 83),
  spanOf('risky', 83, 85),
  spanOf('go', 103, 107),
  spanOf('risky', 107, 109),
  spanOf('unknown', 110, 114),
]

export const rooms: readonly StickRoom[] = [
  { id: 'today', href: '#today', label: 'Today', here: true },
  { id: 'jobs', href: '#jobs', label: 'Jobs' },
  { id: 'boat', href: '#boat', label: 'Boat', count: '4 zones' },
  { id: 'survey', href: '#survey', label: 'Survey', count: '9 findings' },
  { id: 'buildup', href: '#buildup', label: 'Build-up', count: '1 to settle' },
  { id: 'marks', href: '#marks', label: 'Marks' },
  { id: 'days', href: '#days', label: 'Days', count: '13 days' },
  { id: 'stores', href: '#stores', label: 'Stores' },
  { id: 'money', href: '#money', label: 'Money' },
  { id: 'papers', href: '#papers', label: 'Papers' },
  { id: 'log', href: '#log', label: 'Log', count: 'today 3' },
  { id: 'sums', href: '#sums', label: 'Quick sums', foot: true },
]

export const zoneColumns: readonly LedgerColumn[] = [
  { key: 'zone', label: 'Zone' },
  { key: 'area', label: 'Area', align: 'right' },
  { key: 'buildUp', label: 'Build-up' },
]

const corner = (x: number, y: number, width: number, height: number): readonly Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
]

/** As the papers would draw it: a small section of three layers. */
export const paperDrawing: Drawing = [
  { kind: 'hatch', within: corner(4, 6, 52, 8), hatch: 'twoPart-finish', ink: 'ink2' },
  { kind: 'hatch', within: corner(4, 14, 52, 8), hatch: 'epoxy-primer', ink: 'ink2' },
  { kind: 'hatch', within: corner(4, 22, 52, 12), hatch: 'glass', ink: 'ink2' },
  { kind: 'area', points: corner(4, 6, 52, 28), pen: 'medium', ink: 'ink' },
  {
    kind: 'line',
    points: [
      [4, 6],
      [56, 6],
    ],
    pen: 'thick',
    ink: 'ink',
  },
  {
    kind: 'line',
    points: [
      [4, 14],
      [56, 14],
    ],
    pen: 'thin',
    ink: 'ink',
  },
  {
    kind: 'line',
    points: [
      [4, 22],
      [56, 22],
    ],
    pen: 'medium',
    ink: 'ink',
  },
  {
    kind: 'line',
    points: [
      [52, 10],
      [60, 10],
    ],
    pen: 'thin',
    ink: 'ink',
  },
  { kind: 'circle', at: [52, 10], radius: 0.6, fill: 'ink' },
  { kind: 'text', at: [4, 4.4], text: 'Weather side', style: 'label', align: 'left', ink: 'ink' },
  { kind: 'text', at: [61, 11], text: 'Finish, 3 coats', style: 'strong', align: 'left', ink: 'ink' },
]
