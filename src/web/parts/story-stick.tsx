/** The rooms of the program as marks on a pine batten: down the left, and on a phone along the bottom. */
import { type MouseEvent, type ReactNode, useState } from 'react'
import { labelOf } from '#words'
import './story-stick.css'
import { classes } from './classes.ts'
import { StickPanel } from './stick-panel.tsx'
import { PhoneTicks, StickTicks } from './stick-ticks.tsx'

export type StickRoom = {
  readonly id: string
  readonly href: string
  readonly label: string
  /** A word or a count, only where something waits: "4 zones". */
  readonly count?: string | undefined
  readonly here?: boolean | undefined
  /** Hangs at the foot of the stick. */
  readonly foot?: boolean
}

export type StoryStickProps = {
  readonly rooms: readonly StickRoom[]
  /** Ids of the four rooms a phone shows; the rest stand under More. */
  readonly phone: readonly string[]
  /** Under More, below the rooms: the title block and what stands at its side on a wide screen. */
  readonly more?: ReactNode
  /** Takes a plain click on a room instead of the browser. */
  readonly onGo?: ((href: string) => void) | undefined
}

export const StoryStick = (props: StoryStickProps) => (
  <>
    <nav className="story-stick off-paper" aria-label={labelOf('screenPart.rooms')}>
      <StickList {...props} />
    </nav>
    <PhoneStick {...props} />
  </>
)

export type StickListProps = Pick<StoryStickProps, 'rooms' | 'onGo'>

/** Every room, upright. */
export const StickList = ({ rooms, onGo }: StickListProps) => (
  <ul className="story-stick-list">
    {rooms.map((room) => (
      <li
        key={room.id}
        className={classes(
          'story-stick-mark',
          room.here && 'story-stick-here',
          room.foot && 'story-stick-foot',
        )}
      >
        <RoomLink room={room} onGo={onGo}>
          <StickTicks here={room.here === true} />
          <span className="story-stick-name">{room.label}</span>
          {room.count === undefined ? null : <span className="story-stick-count">{room.count}</span>}
        </RoomLink>
      </li>
    ))}
  </ul>
)

const PhoneStick = ({ rooms, phone, more, onGo }: StoryStickProps) => {
  const [standing, setStanding] = useState(false)
  const shown = phone.flatMap((id) => rooms.filter((room) => room.id === id))
  const elsewhere = rooms.some((room) => room.here) && !shown.some((room) => room.here)
  const go = (href: string): void => {
    setStanding(false)
    onGo?.(href)
  }
  return (
    <nav className="phone-stick off-paper" aria-label={labelOf('screenPart.rooms')}>
      <ul className="phone-stick-list">
        {shown.map((room) => (
          <li key={room.id} className={classes('phone-stick-mark', room.here && 'phone-stick-here')}>
            <RoomLink room={room} onGo={onGo}>
              <PhoneTicks here={room.here === true} />
              {room.label}
            </RoomLink>
          </li>
        ))}
        <li className={classes('phone-stick-mark', elsewhere && 'phone-stick-here')}>
          <button type="button" aria-haspopup="dialog" onClick={() => setStanding(true)}>
            <PhoneTicks here={elsewhere} />
            {labelOf('screenPart.more')}
          </button>
        </li>
      </ul>
      {standing ? (
        <StickPanel onClose={() => setStanding(false)} more={more}>
          <StickList rooms={rooms} onGo={onGo === undefined ? undefined : go} />
        </StickPanel>
      ) : null}
    </nav>
  )
}

type RoomLinkProps = {
  readonly room: StickRoom
  readonly onGo: ((href: string) => void) | undefined
  readonly children: ReactNode
}

const RoomLink = ({ room, onGo, children }: RoomLinkProps) => (
  <a
    href={room.href}
    aria-current={room.here === true ? 'page' : undefined}
    onClick={(event) => {
      if (onGo === undefined || !isPlain(event)) return
      event.preventDefault()
      onGo(room.href)
    }}
  >
    {children}
  </a>
)

/** Not one that asks for a new tab or window. */
const isPlain = (event: MouseEvent): boolean =>
  event.button === 0 && !(event.metaKey || event.ctrlKey || event.shiftKey || event.altKey)
