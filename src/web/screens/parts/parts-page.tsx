/** Every part in its states, with invented data: what a screen is built from, and what is looked at when the look changes. */
import {
  Button,
  Desk,
  FigureKey,
  KeptMark,
  Sheet,
  StoryStick,
  Switch2,
  TitleBlock,
} from '../../parts/index.ts'
import './parts-page.css'
import { useState } from 'react'
import { Drawings } from './drawings.tsx'
import { Fields } from './fields.tsx'
import { Figures } from './figures.tsx'
import { Hours } from './hours.tsx'
import { rooms } from './sample.ts'
import { States } from './states.tsx'
import { Tables } from './tables.tsx'

export const PartsPage = () => (
  <Desk stick={<StoryStick rooms={rooms} phone={['today', 'days', 'buildup', 'log']} more={<Block />} />}>
    <Sheet
      title="Port side: now to 11:00, and again tomorrow from 07:00"
      say="Dew margin closes at 18:40 tonight. Rain shuts every zone on Saturday; sand the deck then, under the tent."
      head={{ title: 'Friday 14 May', aside: 'Teal Wren' }}
      action={
        <>
          <Light />
          <Button onClick={() => print()}>Print week</Button>
          <Button next>It rained: plan again</Button>
        </>
      }
      block={<Block />}
    >
      <Hours />
      <Figures />
      <Fields />
      <Tables />
      <Drawings />
      <States />
    </Sheet>
  </Desk>
)

const Block = () => (
  <TitleBlock
    cells={[
      {
        label: 'Boat',
        value: (
          <>
            <strong>Teal Wren</strong>, 7.70 m
          </>
        ),
      },
      {
        label: 'Sheet',
        value: (
          <>
            <strong>Parts</strong> of the look
          </>
        ),
      },
      { label: 'Change', value: 'No. 41, today 08:12' },
      { label: 'How sure a figure is', value: <FigureKey /> },
      { label: 'Kept', value: <KeptMark where="both" /> },
      { label: 'Open', value: '14 assumed, 1 missing', href: '#notes' },
    ]}
  />
)

type LightName = 'day' | 'night'

/** Puts the whole page by day or by night. */
const Light = () => {
  const [light, setLight] = useState<LightName>(readLight)
  return (
    <Switch2<LightName>
      label="Light"
      choices={[
        { value: 'day', label: 'Day' },
        { value: 'night', label: 'Night' },
      ]}
      value={light}
      onChange={(chosen) => {
        document.documentElement.dataset.theme = chosen
        setLight(chosen)
      }}
    />
  )
}

const readLight = (): LightName =>
  typeof document !== 'undefined' && document.documentElement.dataset.theme === 'night' ? 'night' : 'day'
