/** Figures, moved figures, notes and cautions. */
import { useState } from 'react'
import {
  Button,
  CautionPanel,
  Figure,
  type FigureDetail,
  FigureKey,
  FigureText,
  LinkButton,
  MovedFigure,
  NoteFlag,
  NoteList,
  Part,
  PartBlock,
  SignalLine,
} from '../../parts/index.ts'

const detail: FigureDetail = {
  other: '106 ft²',
  formula: '7.70 m × 1.28 m',
  parts: [
    { label: 'Length of the side', text: '7.70\u2009m', certainty: 'measured' },
    { label: 'Height of the side', text: '1.28\u2009m', certainty: 'assumed' },
  ],
  source: 'Surface of the hull, worked out from its sizes',
  firmUp: <LinkButton href="#boat">Measure the freeboard</LinkButton>,
}

export const Figures = () => (
  <Part title="Figures" aside="The more a line is broken, the less we know" notes={<Notes />}>
    <div className="parts-page-stack">
      <p className="parts-page-row">
        <Figure text={'7.70\u2009m'} certainty="measured" label="Length" />
        <Figure text={'40\u2009µm'} certainty="sheet" label="Dry film" />
        <Figure text={'14.6\u2009m²'} certainty="typical" label="Deck" />
        <Figure text={'6.2\u2009mm'} certainty="assumed" label="Laminate" />
        <Figure text={'1.02\u2009L'} certainty="worked" label="Finish" />
        <Figure text={'24\u2009ft\u00a07\u00a01/4\u2009in'} certainty="measured" label="Length" />
        <Figure text={'9.84\u2009m²'} certainty="assumed" label="Area of the port topsides" detail={detail} />
      </p>
      <p className="parts-page-row">
        <FigureText text="09:46" certainty="worked" size="clock" />
        <Figure text={'130\u2009ml'} certainty="worked" size="mix" label="Hardener" />
        <Figure text={'17.4\u2009°C'} certainty="measured" size="part" label="Skin" />
        <FigureText text={'−3\u2009°C'} certainty="typical" size="small" />
      </p>
      <Moving />
      <FigureKey />
    </div>
  </Part>
)

const Moving = () => {
  const [litres, setLitres] = useState<readonly [string, string]>(['4.86\u2009L', '4.86\u2009L'])
  const [change, setChange] = useState(41)
  return (
    <div className="parts-page-row">
      <MovedFigure text={litres[1]} was={litres[0]} change={change} certainty="worked" label="Primer" />
      <Button
        onClick={() => {
          setLitres([litres[1], litres[1].startsWith('4') ? '5.20\u2009L' : '4.86\u2009L'])
          setChange(change + 1)
        }}
      >
        Add a coat
      </Button>
    </div>
  )
}

const Notes = () => (
  <>
    <PartBlock title="Notes">
      <NoteList
        notes={[
          {
            kind: 'note',
            mark: 1,
            text: 'Laminate 6.2 mm is assumed from the boat’s length. Drill core at F2 will tell.',
            id: 'notes',
          },
          {
            kind: 'missing',
            mark: 2,
            text: 'Missing: what was painted on the transom. Do the solvent rub; until then the careful way is planned.',
            action: <LinkButton href="#survey">Do the solvent rub</LinkButton>,
          },
          { kind: 'change', mark: 41, text: 'Coat 3, port: Saturday to Sunday 06:48.' },
        ]}
      />
    </PartBlock>
    <CautionPanel signal="warning" discs={['suppliedAir', 'gloves']}>
      Hardener of the two-part finish holds isocyanates. Air-fed mask; nobody else in the shed. The product’s
      own safety sheet decides.
    </CautionPanel>
    <CautionPanel signal="caution">Saturday: gusts to 22 kn. Take the cover down before 14:00.</CautionPanel>
    <CautionPanel signal="danger" discs={['must']}>
      A fuel tank stands behind this skin. Find out where it runs before the first cut.
    </CautionPanel>
    <SignalLine signal="warning" first="Two-part paint with isocyanate.">
      Two-part paint with isocyanate. Wear air-fed breathing gear where it is sprayed.
    </SignalLine>
    <CautionPanel signal="notice" discs={['mask', 'eyes', 'ears']}>
      The yard moves the stands, nobody else. A flag by itself: <NoteFlag kind="note" mark="F1" small />
    </CautionPanel>
  </>
)
