/** The rooms of a job in the order of the road, each with its screen, which is fetched when it is first opened. */
import { type ComponentType, lazy } from 'react'
import type { ScreenProps } from './screen.ts'

export type Room = {
  /** In the address; its name is the label `room.<id>`. */
  readonly id: string
  readonly Screen: ComponentType<ScreenProps>
}

/** Fetches a screen when it is first opened. */
const screen = (load: () => Promise<ComponentType<ScreenProps>>): ComponentType<ScreenProps> =>
  lazy(() => load().then((found) => ({ default: found })))

export const rooms: readonly Room[] = [
  { id: 'boat', Screen: screen(async () => (await import('./boat/boat-screen.tsx')).BoatScreen) },
  { id: 'survey', Screen: screen(async () => (await import('./survey/survey-screen.tsx')).SurveyScreen) },
  {
    id: 'build-up',
    Screen: screen(async () => (await import('./build-up/build-up-screen.tsx')).BuildUpScreen),
  },
  { id: 'marks', Screen: screen(async () => (await import('./marks/marks-screen.tsx')).MarksScreen) },
  { id: 'stores', Screen: screen(async () => (await import('./stores/stores-screen.tsx')).StoresScreen) },
  { id: 'money', Screen: screen(async () => (await import('./money/money-screen.tsx')).MoneyScreen) },
  { id: 'papers', Screen: screen(async () => (await import('./papers/papers-screen.tsx')).PapersScreen) },
  { id: 'log', Screen: screen(async () => (await import('./log/log-screen.tsx')).LogScreen) },
  {
    id: 'what-now',
    Screen: screen(async () => (await import('./what-now/what-now-screen.tsx')).WhatNowScreen),
  },
]

/** Sheets that no mark on the stick leads to. */
export const besides: readonly Room[] = [
  { id: 'open', Screen: screen(async () => (await import('./open/open-screen.tsx')).OpenScreen) },
]
