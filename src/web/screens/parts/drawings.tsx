/** Hatches, a drawing of the papers, dimensions. */
import {
  Dimension,
  Disc,
  type DiscKind,
  HatchDefs,
  type HatchName,
  hatchFor,
  hatchUrl,
  Icon,
  type IconKind,
  Part,
  PartBlock,
  ShapesSvg,
} from '../../parts/index.ts'
import { paperDrawing } from './sample.ts'

const families: readonly (readonly [string, HatchName | undefined])[] = [
  ['Polyester', hatchFor('polyester', 'primer')],
  ['Epoxy primer', hatchFor('epoxy', 'primer')],
  ['Epoxy filler', hatchFor('epoxy', 'filler')],
  ['Two-part finish', hatchFor('two-part', 'finish')],
  ['One-part', hatchFor('one-part', 'finish')],
  ['Acrylic', hatchFor('acrylic', 'finish')],
  ['Glass laminate', 'glass'],
  ['Balsa core', 'balsa'],
  ['Foam core', 'foam'],
  ['Wait', 'wait'],
  ['Risky', 'risky'],
  ['Unknown', hatchFor('nobody knows', 'finish')],
]

const discs: readonly DiscKind[] = ['suppliedAir', 'mask', 'gloves', 'eyes', 'ears', 'must']

const icons: readonly IconKind[] = [
  'tick',
  'cross',
  'plus',
  'minus',
  'back',
  'on',
  'print',
  'photo',
  'undo',
  'redo',
  'move',
]

export const Drawings = () => (
  <Part
    title="Hatch is chemistry"
    notes={
      <>
        <PartBlock title="As on paper">
          <ShapesSvg drawing={paperDrawing} width={90} height={36} label="Section of three layers" />
        </PartBlock>
        <PartBlock title="Must be worn" level={3}>
          <div className="parts-page-row">
            {discs.map((kind) => (
              <Disc key={kind} kind={kind} />
            ))}
          </div>
        </PartBlock>
        <PartBlock title="Icons" level={3}>
          <div className="parts-page-row">
            {icons.map((kind) => (
              <Icon key={kind} kind={kind} />
            ))}
          </div>
        </PartBlock>
      </>
    }
  >
    <ul className="parts-page-hatches">
      {families.map(([label, hatch], index) => (
        <li key={label}>
          <Swatch id={`swatch-${index}`} hatch={hatch} />
          {label}
        </li>
      ))}
    </ul>
    <svg className="parts-page-sizes" width="300" height="150" role="img" aria-label="Hull with its sizes">
      <path d="M40 20H260L230 90H60Z" fill="none" stroke="var(--ink)" strokeWidth="2.5" />
      <Dimension from={40} to={260} at={125} extendFrom={30} text={'7.70\u2009m'} certainty="measured" />
      <Dimension from={20} to={90} at={22} upright extendFrom={50} text={'0.42\u2009m'} certainty="assumed" />
    </svg>
  </Part>
)

const Swatch = ({ id, hatch }: { readonly id: string; readonly hatch: HatchName | undefined }) => (
  <svg width="100%" height="72" aria-hidden="true">
    {hatch === undefined ? (
      <>
        <rect width="100%" height="72" fill="none" strokeDasharray="2 3" />
        <text x="50%" y="42" textAnchor="middle">
          ?
        </text>
      </>
    ) : (
      <>
        <HatchDefs id={id} names={[hatch]} />
        <rect width="100%" height="72" fill={hatchUrl(id, hatch)} />
      </>
    )}
  </svg>
)
