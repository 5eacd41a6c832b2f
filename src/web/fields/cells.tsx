/** Cells of one map, side by side as the width allows. */
import type { ReactNode } from 'react'
import type { CellPlace, JobView } from '../job/job-view.ts'
import { CellField } from './cell-field.tsx'
import './fields.css'

export type CellsProps = {
  readonly view: JobView
  readonly place: Omit<CellPlace, 'key'>
  readonly keys: readonly string[]
  readonly helped?: boolean
  readonly hintOf?: ((key: string) => string | undefined) | undefined
}

export const Cells = ({ view, place, keys, helped, hintOf }: CellsProps) => (
  <div className="cells">
    {keys.map((key) => (
      <CellField key={key} view={view} place={{ ...place, key }} helped={helped} hint={hintOf?.(key)} />
    ))}
  </div>
)

/** What is seldom set, behind a line that opens it. */
export const Fold = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <details className="fold">
    <summary className="fold-title">{title}</summary>
    {children}
  </details>
)
