/** The panel of an opened figure: value in both systems, formula, its parts with their own lines, source, what helps. */
import { type ReactNode, type RefObject, useEffect, useState } from 'react'
import { createPortal } from 'react-dom'
import { labelOf } from '#words'
import './figure-panel.css'
import { Button } from './button.tsx'
import type { FigureAsk, FigureDetail, FigurePart, FigureProps } from './figure-detail.ts'
import { FigureText } from './figure-text.tsx'
import { useModal } from './use-modal.ts'

export type FigurePanelProps = FigureProps & {
  readonly detail: FigureDetail | FigureAsk
  readonly beside: RefObject<HTMLElement | null>
  readonly onClose: () => void
}

export const FigurePanel = ({ text, certainty, label, detail, beside, onClose }: FigurePanelProps) => {
  const dialog = useModal({ beside, onClose })
  const told = useDetail(detail)
  // A figure may stand in a paragraph, where no dialog may.
  return createPortal(
    <dialog ref={dialog} className="figure-panel" aria-label={label ?? labelOf('screenPart.figure')}>
      <div className="figure-panel-body">
        <p className="figure-panel-title">{label ?? labelOf('screenPart.figure')}</p>
        <p className="figure-panel-value">
          <FigureText text={text} certainty={certainty} size="part" />
          <span className="figure-panel-sure">{labelOf(`certainty.${certainty}`)}</span>
        </p>
        <div aria-busy={told === 'asking'} aria-live="polite">
          {told === 'asking' ? null : told === undefined ? (
            <p className="figure-panel-none">{labelOf('screenPart.notTold')}</p>
          ) : (
            <Told detail={told} />
          )}
        </div>
        <div className="figure-panel-foot">
          <Button onClick={onClose}>{labelOf('screenPart.close')}</Button>
        </div>
      </div>
    </dialog>,
    document.body,
  )
}

/** Asked again when the plan it is told from is another. */
function useDetail(detail: FigureDetail | FigureAsk): FigureDetail | 'asking' | undefined {
  const [told, setTold] = useState<FigureDetail | 'asking' | undefined>('asking')
  useEffect(() => {
    if (typeof detail !== 'function') return
    let here = true
    detail().then(
      (found) => here && setTold(found),
      () => here && setTold(undefined),
    )
    return () => {
      here = false
    }
  }, [detail])
  return typeof detail === 'function' ? told : detail
}

const Told = ({ detail }: { readonly detail: FigureDetail }) => (
  <dl className="figure-panel-list">
    <Row label={labelOf('screenPart.otherUnits')}>{detail.other}</Row>
    <Row label={labelOf('screenPart.formula')}>{detail.formula}</Row>
    <Row label={labelOf('screenPart.how')}>{detail.how}</Row>
    <Row label={labelOf('screenPart.parts')}>
      {detail.parts === undefined || detail.parts.length === 0 ? undefined : <Parts parts={detail.parts} />}
    </Row>
    <Row label={labelOf('screenPart.source')}>{detail.source}</Row>
    <Row label={labelOf('screenPart.firmUp')}>{detail.firmUp}</Row>
  </dl>
)

const Row = ({ label, children }: { readonly label: string; readonly children: ReactNode }) =>
  children === undefined ? null : (
    <div className="figure-panel-row">
      <dt>{label}</dt>
      <dd>{children}</dd>
    </div>
  )

const Parts = ({ parts }: { readonly parts: readonly FigurePart[] }) => (
  <ul className="figure-panel-parts">
    {parts.map(({ label, text, certainty, formula, source }) => (
      <li key={`${label} ${text}`}>
        <span>{label}</span>
        <FigureText text={text} certainty={certainty} />
        <span className="figure-panel-sure">{labelOf(`certainty.${certainty}`)}</span>
        {formula === undefined ? null : <span className="figure-panel-beside">= {formula}</span>}
        {source === undefined ? null : <span className="figure-panel-beside">{source}</span>}
      </li>
    ))}
  </ul>
)
