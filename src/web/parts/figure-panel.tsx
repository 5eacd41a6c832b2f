/** The panel of an opened figure: value in both systems, formula, its parts with their own lines, source, what helps. */
import type { ReactNode, RefObject } from 'react'
import { createPortal } from 'react-dom'
import { labelOf } from '#words'
import './figure-panel.css'
import { Button } from './button.tsx'
import type { FigureDetail, FigurePart, FigureProps } from './figure-detail.ts'
import { FigureText } from './figure-text.tsx'
import { useModal } from './use-modal.ts'

export type FigurePanelProps = FigureProps & {
  readonly detail: FigureDetail
  readonly beside: RefObject<HTMLElement | null>
  readonly onClose: () => void
}

export const FigurePanel = ({ text, certainty, label, detail, beside, onClose }: FigurePanelProps) => {
  const dialog = useModal({ beside, onClose })
  // A figure may stand in a paragraph, where no dialog may.
  return createPortal(
    <dialog ref={dialog} className="figure-panel" aria-label={label ?? labelOf('screenPart.figure')}>
      <div className="figure-panel-body">
        <p className="figure-panel-title">{label ?? labelOf('screenPart.figure')}</p>
        <p className="figure-panel-value">
          <FigureText text={text} certainty={certainty} size="part" />
          <span className="figure-panel-sure">{labelOf(`certainty.${certainty}`)}</span>
        </p>
        <dl className="figure-panel-list">
          <Row label={labelOf('screenPart.otherUnits')}>{detail.other}</Row>
          <Row label={labelOf('screenPart.formula')}>{detail.formula}</Row>
          <Row label={labelOf('screenPart.parts')}>
            {detail.parts === undefined ? undefined : <Parts parts={detail.parts} />}
          </Row>
          <Row label={labelOf('screenPart.source')}>{detail.source}</Row>
          <Row label={labelOf('screenPart.firmUp')}>{detail.firmUp}</Row>
        </dl>
        <Button onClick={onClose}>{labelOf('screenPart.close')}</Button>
      </div>
    </dialog>,
    document.body,
  )
}

const Row = ({ label, children }: { readonly label: string; readonly children: ReactNode }) =>
  children === undefined ? null : (
    <div className="figure-panel-row">
      <dt>{label}</dt>
      <dd>{children}</dd>
    </div>
  )

const Parts = ({ parts }: { readonly parts: readonly FigurePart[] }) => (
  <ul className="figure-panel-parts">
    {parts.map(({ label, text, certainty }) => (
      <li key={label}>
        <span>{label}</span>
        <FigureText text={text} certainty={certainty} />
        <span className="figure-panel-sure">{labelOf(`certainty.${certainty}`)}</span>
      </li>
    ))}
  </ul>
)
