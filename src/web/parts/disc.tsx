/** Mandatory action (pattern of ISO 3864): a white figure on a blue disc. The figures are our own. */
import type { ReactNode } from 'react'
import { labelOf } from '#words'

export type DiscKind = 'suppliedAir' | 'mask' | 'gloves' | 'eyes' | 'ears' | 'must'

export const Disc = ({ kind }: { readonly kind: DiscKind }) => (
  <svg
    className="disc"
    width="48"
    height="48"
    viewBox="0 0 48 48"
    role="img"
    aria-label={labelOf(`disc.${kind}`)}
  >
    <circle cx="24" cy="24" r="23" fill="var(--notice)" stroke="var(--ink)" strokeWidth="1.5" />
    <g fill="var(--notice-on)" stroke="none">
      {figures[kind]}
    </g>
  </svg>
)

const blue = 'var(--notice)'
const head = <path d="M24 8c6 0 9.5 4.2 9.5 10.5 0 7.5-3.6 14-9.5 14s-9.5-6.5-9.5-14C14.5 12.2 18 8 24 8Z" />
const shoulders = (
  <path d="M9 40.5c1-6 5.5-8 9-8.7 3.5 3 8.5 3 12 0 3.5.7 8 2.7 9 8.7-4.2 2.7-25.8 2.7-30 0Z" />
)

const figures: Readonly<Record<DiscKind, ReactNode>> = {
  suppliedAir: (
    <>
      <path d="M24 7.5c7.5 0 11 5.5 11 12.5v12.5H13V20C13 13 16.5 7.5 24 7.5Z" />
      {shoulders}
      <rect x="17" y="15" width="14" height="7.5" rx="1" fill={blue} />
      <circle cx="24" cy="28" r="3.6" fill={blue} />
      <circle cx="24" cy="28" r="1.5" />
    </>
  ),
  mask: (
    <>
      {head}
      {shoulders}
      <path d="M16.5 21.5h15v5c0 4-3.5 7-7.5 7s-7.5-3-7.5-7Z" fill={blue} />
      <circle cx="20.5" cy="27.5" r="2.6" />
      <circle cx="27.5" cy="27.5" r="2.6" />
    </>
  ),
  gloves: (
    <path d="M17 41V28l-5.5-6.5c-1.5-2 .8-4 2.6-2.6L18 22.5V11.5c0-2.6 3.4-2.6 3.5 0V9c0-2.7 3.7-2.7 3.7 0v2c.1-2.6 3.6-2.6 3.6 0v2.5c.2-2.3 3.4-2.3 3.4 0V30l-2 4v7Z" />
  ),
  eyes: (
    <>
      {head}
      {shoulders}
      <path
        d="M13 16h22v6c0 2.5-1.5 4-4 4h-2.5c-2 0-3.2-1.5-4.5-1.5S21.5 26 19.5 26H17c-2.5 0-4-1.5-4-4Z"
        fill={blue}
      />
      <path d="M16 18h6.5v5.5H18c-1.2 0-2-.8-2-2ZM25.5 18H32v3.5c0 1.2-.8 2-2 2h-4.5Z" />
    </>
  ),
  ears: (
    <>
      {head}
      {shoulders}
      <path
        d="M12.5 17C13 9.5 18 5.5 24 5.5S35 9.5 35.5 17"
        fill="none"
        stroke="var(--notice-on)"
        strokeWidth="2.5"
      />
      <rect x="9.5" y="15.5" width="7" height="11" rx="3" stroke={blue} strokeWidth="1.5" />
      <rect x="31.5" y="15.5" width="7" height="11" rx="3" stroke={blue} strokeWidth="1.5" />
    </>
  ),
  must: (
    <>
      <path d="M20.5 9h7l-1.4 19h-4.2Z" />
      <circle cx="24" cy="35" r="3.8" />
    </>
  ),
}
