/** Air, humidity and skin as they were read, held against the dew point while one types, written in the log as an entry. */
import { useState } from 'react'
import type { RawCells } from '#job'
import { readingFadesHours } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import {
  type AirKey,
  type AirRead,
  type AirTexts,
  airKeys,
  readAir,
  usualLimitK,
} from '../../job/read-air.ts'
import { tellLog } from '../../job/tell-log.ts'
import { Button, ChoiceField, Dialog, FigureText, QuantityField } from '../../parts/index.ts'
import './reading.css'

export type TakeReadingProps = {
  readonly view: JobView
  /** What the reading is taken for: step and hands, where there are any. */
  readonly of: RawCells
  /** Least margin over dew of the product in hand. */
  readonly leastK: number | undefined
  /** The boat stands in the open, where each side has a skin of its own: it is asked which was read. */
  readonly sides?: boolean
  readonly onClose: () => void
}

type Side = 'deck' | 'port' | 'starboard' | 'transom' | 'bottom'

const sideChoices = (['deck', 'port', 'starboard', 'transom', 'bottom'] as const).map((value) => ({
  value,
  label: labelOf(`litPlace.${value}`),
}))

const none: AirTexts = { air: '', humidity: '', skin: '' }

export const TakeReading = ({ view, of, leastK, sides, onClose }: TakeReadingProps) => {
  const [typed, setTyped] = useState(none)
  // What is still being typed is not called wrong yet.
  const [left, setLeft] = useState<readonly AirKey[]>([])
  const [readAt, setReadAt] = useState<Side | ''>('')
  const asked = { system: view.system, limitK: leastK }
  const read = readAir(typed, asked)
  const where = read.cells.skin === undefined || readAt === '' ? {} : { readAt }
  const keep = (): void => {
    tellLog(view, { cells: { kind: 'reading', ...of, ...read.cells, ...where }, nowMs: Date.now() })
    onClose()
  }
  return (
    <Dialog
      title={labelOf('today.readingTitle')}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{labelOf('today.cancel')}</Button>
          <Button
            next
            disabled={Object.keys(read.cells).length === 0 || read.wrong.length > 0}
            onClick={keep}
          >
            {labelOf('today.keep')}
          </Button>
        </>
      }
    >
      <div className="reading-boxes">
        {airKeys.map((key) => (
          <div key={key} onBlur={() => setLeft([...left, key])}>
            <QuantityField
              label={labelOf(`today.${key}`)}
              value={typed[key]}
              onCommit={(text) => setTyped({ ...typed, [key]: text })}
              onType={(text) => setTyped({ ...typed, [key]: text })}
              unit={unitOf(key, view.system)}
              digits
              problem={
                left.includes(key) && read.wrong.includes(key)
                  ? view.words.sentence(
                      key === 'humidity' ? 'todayscreen.humidityWrong' : 'todayscreen.readingWrong',
                    )
                  : undefined
              }
            />
          </div>
        ))}
      </div>
      {sides && read.cells.skin !== undefined ? (
        <ChoiceField<Side>
          as="list"
          label={labelOf('today.readAt')}
          help={labelOf('today.readAtHelp')}
          none={labelOf('today.readAtUnsaid')}
          choices={sideChoices}
          value={readAt}
          onChange={setReadAt}
        />
      ) : null}
      <Verdict view={view} read={read} limitK={leastK ?? usualLimitK} />
      <p className="reading-shifts">
        {view.words.sentence('todayscreen.readingShifts', { fadeHours: readingFadesHours })}
      </p>
    </Dialog>
  )
}

const unitOf = (key: AirKey, system: JobView['system']): string =>
  key === 'humidity' ? '%' : system === 'us' ? '°F' : '°C'

const verdicts = {
  noSkin: 'todayscreen.dewNoSkin',
  enough: 'todayscreen.dewEnough',
  close: 'todayscreen.dewClose',
  wet: 'todayscreen.dewWet',
} as const

type VerdictProps = {
  readonly view: Pick<JobView, 'words'>
  readonly read: AirRead
  readonly limitK: number
}

/** Stands there from the first, so that nothing jumps while one types. */
export const Verdict = ({ view: { words }, read, limitK }: VerdictProps) => {
  const { dewC, marginK, leastSkinC, verdict } = read
  const figures = [
    ['dew', dewC === undefined ? undefined : words.figure('dewC', dewC)],
    ['margin', marginK === undefined ? undefined : words.figure('marginK', marginK)],
  ] as const
  return (
    <div role="status">
      <dl className="today-air reading-dew">
        {figures.map(([of, text]) => (
          <div key={of}>
            <dt>{labelOf(`today.${of}`)}</dt>
            <dd>{text === undefined ? '…' : <FigureText text={text} certainty="worked" size="part" />}</dd>
          </div>
        ))}
      </dl>
      <p className="reading-verdict">
        {dewC === undefined
          ? words.sentence('todayscreen.dewAsks', { limitK })
          : words.sentence(verdicts[verdict ?? 'noSkin'], { marginK, limitK, leastSkinC })}
      </p>
    </div>
  )
}
