/** Fields in their states, buttons, switches. */
import { useState } from 'react'
import {
  Button,
  ChoiceField,
  DateField,
  LinkButton,
  Part,
  QuantityField,
  Switch2,
  TextField,
  TimeField,
  YesField,
} from '../../parts/index.ts'

export const Fields = () => (
  <Part title="Fields" aside="Boxed is yours, bare is ours" action={<View />}>
    <div className="parts-page-fields">
      <Texts />
      <Choices />
      <Wrongs />
    </div>
    <div className="parts-page-row parts-page-after">
      <Button big next>
        Mixed now
      </Button>
      <Button big>Take reading</Button>
      <Button disabled>Lay out panels</Button>
      <LinkButton href="#papers">Go to the papers</LinkButton>
    </div>
  </Part>
)

const View = () => {
  const [view, setView] = useState<'readable' | 'true'>('readable')
  return (
    <Switch2
      label="Scale of the section"
      choices={[
        { value: 'readable', label: 'Readable' },
        { value: 'true', label: 'True scale' },
      ]}
      value={view}
      onChange={setView}
    />
  )
}

const Texts = () => {
  const [name, setName] = useState('Teal Wren')
  const [length, setLength] = useState('25 ft 4 in')
  const [note, setNote] = useState('Stands in the second row, bow to the gate.')
  const [date, setDate] = useState('2027-05-29')
  const [time, setTime] = useState('07:30')
  return (
    <>
      <TextField label="Name of the boat" value={name} onCommit={setName} />
      <QuantityField label="Length" value={length} onCommit={setLength} unit="m or ft in" />
      <QuantityField
        label="Beam of the transom"
        value=""
        onCommit={setLength}
        placeholder="2.31"
        unit="m"
        help="Taken as a share of the beam until it is measured."
      />
      <QuantityField label="Area" value="9.84" onCommit={setLength} unit="m²" readOnly />
      <DateField label="Wanted launch" value={date} onCommit={setDate} />
      <TimeField label="Work begins" value={time} onCommit={setTime} />
      <TextField label="Remarks" value={note} onCommit={setNote} lines />
    </>
  )
}

const Choices = () => {
  const [shelter, setShelter] = useState<'none' | 'tent' | 'shed' | ''>('tent')
  const [family, setFamily] = useState('')
  const [tape, setTape] = useState(true)
  return (
    <>
      <ChoiceField
        label="Shelter"
        choices={[
          { value: 'none', label: 'None' },
          { value: 'tent', label: 'Tent' },
          { value: 'shed', label: 'Shed' },
        ]}
        value={shelter}
        onChange={setShelter}
      />
      <ChoiceField
        label="What is on the hull"
        choices={['Gelcoat', 'Epoxy', 'Two-part', 'One-part', 'Water-borne'].map((label) => ({
          value: label,
          label,
        }))}
        value={family}
        onChange={setFamily}
      />
      <YesField label="The solvent rub is done" value={tape} onChange={setTape} />
      <YesField label="Wipe, tack, wet the floor" value={!tape} onChange={() => setTape(!tape)} boxLast />
    </>
  )
}

const keep = () => undefined

const Wrongs = () => (
  <>
    <QuantityField
      label="Draft"
      value="a lot"
      onCommit={keep}
      unit="m"
      problem="“a lot” is no length. Write it as 0.42 m or 16 1/2 in."
    />
    <ChoiceField
      label="Side"
      choices={[
        { value: 'port', label: 'Port' },
        { value: 'starboard', label: 'Starboard' },
      ]}
      value=""
      onChange={keep}
      problem="Choose a side: the sun reaches them at different hours."
    />
  </>
)
