/** Air and humidity as they were read, written in the log as an entry of their own. */
import { useState } from 'react'
import { type Dimension, read } from '#units'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { tellLog } from '../../job/tell-log.ts'
import { Button, Dialog, QuantityField } from '../../parts/index.ts'

export type TakeReadingProps = { readonly view: JobView; readonly onClose: () => void }

export const TakeReading = ({ view, onClose }: TakeReadingProps) => {
  const [air, setAir] = useState('')
  const [humidity, setHumidity] = useState('')
  const airWrong = isWrong(air, 'temperature')
  const humidityWrong = isWrong(humidity, 'share')
  const empty = air.trim() === '' && humidity.trim() === ''
  const keep = (): void => {
    const cells = {
      kind: 'reading',
      ...(air.trim() === '' ? {} : { air: air.trim() }),
      ...(humidity.trim() === '' ? {} : { humidity: humidity.trim() }),
    }
    tellLog(view, { cells, nowMs: Date.now() })
    onClose()
  }
  const problem = (wrong: boolean, code: string) => (wrong ? view.words.sentence(code) : undefined)
  return (
    <Dialog
      title={labelOf('today.readingTitle')}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{labelOf('today.cancel')}</Button>
          <Button next disabled={empty || airWrong || humidityWrong} onClick={keep}>
            {labelOf('today.keep')}
          </Button>
        </>
      }
    >
      <QuantityField
        label={labelOf('today.air')}
        value={air}
        onCommit={setAir}
        onType={setAir}
        placeholder={view.system === 'us' ? '64 °F' : '18 °C'}
        problem={problem(airWrong, 'todayscreen.readingWrong')}
      />
      <QuantityField
        label={labelOf('today.humidity')}
        value={humidity}
        onCommit={setHumidity}
        onType={setHumidity}
        placeholder="65 %"
        problem={problem(humidityWrong, 'todayscreen.humidityWrong')}
      />
    </Dialog>
  )
}

const isWrong = (text: string, dimension: Dimension): boolean => {
  if (text.trim() === '') return false
  const found = read(text, dimension)
  return !found.ok || (dimension === 'share' && found.quantity.value > 1)
}
