/** The rooms of a job in the order of the road, each with its screen, which is fetched when it is first opened. */
import { type ComponentType, lazy } from 'react'
import type { ScreenProps } from './screen.ts'

export type Room = {
  /** In the address; its name is the label `room.<id>`. */
  readonly id: string
  readonly Screen: ComponentType<ScreenProps>
}

export const rooms: readonly Room[] = []

/** Fetches a screen when it is first opened. */
export const screen = (load: () => Promise<ComponentType<ScreenProps>>): ComponentType<ScreenProps> =>
  lazy(() => load().then((found) => ({ default: found })))
