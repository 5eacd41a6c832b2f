/** A small drawing for each sum, so that a thumb finds its row without reading. */
import type { SumId } from '#sums'

export const SumIcon = ({ id }: { readonly id: SumId }) => (
  <svg
    className="sums-icon"
    width="40"
    height="40"
    viewBox="0 0 40 40"
    fill="none"
    stroke="var(--ink)"
    strokeWidth="2"
    aria-hidden="true"
  >
    <path d={drawings[id]} />
  </svg>
)

const drawings: Readonly<Record<SumId, string>> = {
  dew: 'M20 6c6 8 9 12 9 17a9 9 0 0 1-18 0c0-5 3-9 9-17ZM4 36H36',
  spread: 'M6 8H28V16H6ZM28 12H34V21H18V26M15 26H21V36H15Z',
  wet: 'M4 34H36M4 34V26H36V34M9 26V12H31V26M14 12V18M20 12V22M26 12V18',
  mix: 'M9 5 13 36H27L31 5M11.4 24H28.6M10.4 16H29.6',
  catalyst: 'M16 5H24V12L29 18V36H11V18L16 12ZM11 26H29',
  ply: 'M4 12Q12 6 20 12T36 12M4 20Q12 14 20 20T36 20M4 28Q12 22 20 28T36 28',
  bevel: 'M2 10H6L16 32H24L34 10H38M10 18H30M13 25H27',
  vent: 'M4 14H24a5 5 0 1 0-5-5M4 21H32a5 5 0 1 1-5 5M4 28H18a4 4 0 1 1-4 4',
  sun: 'M20 12a8 8 0 1 1 0 16 8 8 0 0 1 0-16ZM20 3V8M20 32V37M3 20H8M32 20H37M8 8l3.5 3.5M28.5 28.5 32 32M32 8l-3.5 3.5M11.5 28.5 8 32',
  cure: 'M20 5a15 15 0 1 1 0 30 15 15 0 0 1 0-30ZM20 11V20L27 24',
}
