/** A section of a sheet with its heading; parts are divided by ink, and notes stand beside, or below where it is narrow. */
import { type ReactNode, useId } from 'react'
import './part.css'
import { classes } from './classes.ts'

export type PartProps = {
  readonly title?: ReactNode
  /** Said after the heading, in secondary ink. */
  readonly aside?: ReactNode
  /** A switch or a button at the right of the heading. */
  readonly action?: ReactNode
  /** The column at the right: zones, notes, cautions. May hold `PartBlock`s. */
  readonly notes?: ReactNode
  /** Name for screen readers where no heading stands. */
  readonly label?: string
  /** The step in hand stands on raised. */
  readonly raised?: boolean
  /** Drawings that run from edge to edge. */
  readonly flush?: boolean
  readonly id?: string
  readonly children?: ReactNode
}

export const Part = ({ notes, raised, flush, id, label, ...block }: PartProps) => {
  const headingId = useId()
  const named = block.title === undefined ? { 'aria-label': label } : { 'aria-labelledby': headingId }
  return (
    <section
      className={classes('part', notes !== undefined && 'part-with-notes', raised && 'part-raised')}
      id={id}
      {...named}
    >
      <div className={classes('part-main', flush && 'part-flush')}>
        <PartBlock headingId={headingId} {...block} />
      </div>
      {notes === undefined ? null : <div className="part-notes">{notes}</div>}
    </section>
  )
}

export type PartBlockProps = Pick<PartProps, 'title' | 'aside' | 'action' | 'children'> & {
  readonly headingId?: string
  readonly level?: 2 | 3
}

/** A heading and what stands under it. */
export const PartBlock = ({ title, aside, action, headingId, level = 2, children }: PartBlockProps) => {
  const Heading = level === 2 ? 'h2' : 'h3'
  return (
    <div className="part-block">
      {title === undefined && action === undefined ? null : (
        <div className="part-heading">
          {title === undefined ? null : (
            <Heading className="part-title" id={headingId}>
              {title}
            </Heading>
          )}
          {aside === undefined ? null : <div className="part-aside">{aside}</div>}
          {action === undefined ? null : <div className="part-action">{action}</div>}
        </div>
      )}
      {children}
    </div>
  )
}

/** Parts side by side, of equal width; one below the other where it is narrow. */
export const PartRow = ({ children }: { readonly children: ReactNode }) => (
  <div className="part-row">{children}</div>
)
