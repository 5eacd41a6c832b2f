/** Length, width and area of one panel, each to be opened. */
import type { PanelMark } from '#plan'
import { labelOf } from '#words'
import { WayFigure } from '../../figures/way-figure.tsx'
import type { JobView } from '../../job/job-view.ts'

export type PanelFiguresProps = { readonly view: JobView; readonly panel: PanelMark }

export const PanelFigures = ({ view, panel }: PanelFiguresProps) => {
  const { words } = view
  const figures = [
    ['length', words.figure('lengthM', panel.lengthM), 'wayPart.panelLength'],
    ['width', words.figure('widthM', panel.widthM), 'wayPart.panelWidth'],
    ['area', words.figure('areaM2', panel.panelAreaM2), 'wayPart.panelArea'],
  ] as const
  return (
    <dl className="marks-figures">
      {figures.map(([of, text, label]) => (
        <div key={of}>
          <dt>{labelOf(label)}</dt>
          <dd>
            <WayFigure
              view={view}
              of={{ kind: 'panel', mark: panel.id, of }}
              text={text}
              certainty={panel.certainty}
              label={labelOf(label)}
            />
          </dd>
        </div>
      ))}
    </dl>
  )
}
