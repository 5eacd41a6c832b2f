/** Tapes, hours, pot bar. */
import {
  HoursKey,
  HoursStrip,
  NowLine,
  Part,
  PartBlock,
  PotBar,
  TimeTape,
  UprightTape,
  uprightHeight,
} from '../../parts/index.ts'
import { nowMs, portHours, week, workday } from './sample.ts'

const zone = { timeZone: 'UTC', locale: 'en-GB' }
const label = 'Topsides, port: can be painted 07:00 to 11:00, risky until 13:00'

export const Hours = () => (
  <>
    <Part flush label="Hours of the week">
      <div className="parts-page-hour">
        <TimeTape
          {...week}
          {...zone}
          days
          label="Friday 14 to Tuesday 18 May"
          nowMs={nowMs}
          nowLabel="now 09:08"
        />
      </div>
      {['Topsides, port', 'Transom'].map((name) => (
        <div className="parts-page-zone" key={name}>
          <strong>{name}</strong>
          <HoursStrip {...week} spans={portHours} label={label} />
        </div>
      ))}
      <div className="part-main">
        <HoursKey />
      </div>
    </Part>
    <Part
      title="One day"
      raised
      notes={
        <>
          <PartBlock title="Pot life" aside="port, st 7 to 4">
            <PotBar usedShare={0.36} label="38 min left of 60 min" />
          </PartBlock>
          <PartBlock title="The same, on a phone">
            <div className="parts-page-upright" style={{ height: uprightHeight(workday) }}>
              <UprightTape {...workday} {...zone} label="06:00 to 20:00" nowMs={nowMs} />
              <HoursStrip {...workday} spans={portHours} label={label} height={48} upright />
            </div>
          </PartBlock>
        </>
      }
    >
      <div className="parts-page-now">
        <HoursStrip {...workday} spans={portHours} label={label} height={28} />
        <NowLine {...workday} nowMs={nowMs} overTape />
        <TimeTape
          {...workday}
          {...zone}
          every={2}
          label="06:00 to 20:00"
          nowMs={nowMs}
          nowLabel="now 09:08"
        />
      </div>
    </Part>
  </>
)
