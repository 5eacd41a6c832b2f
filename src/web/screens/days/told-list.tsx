/** Figures or facts under their names, as a list of pairs. */
import { labelOf } from '#words'

/** A label of the words, and what is told under it. */
export type Told = readonly (readonly [label: string, value: string])[]

export const ToldList = ({ className, told }: { readonly className: string; readonly told: Told }) => (
  <dl className={className}>
    {told.map(([label, value]) => (
      <div key={label}>
        <dt>{labelOf(label)}</dt>
        <dd>{value}</dd>
      </div>
    ))}
  </dl>
)
