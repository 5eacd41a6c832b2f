// The address of every screen there is.
import { sums } from '#sums'
import { besides, rooms } from '../../../src/web/screens/rooms.ts'

export const jobPath = (room: string): string => `/job/open-powerboat/${room}`

export const screens: readonly string[] = [
  '/',
  '/new',
  '/parts',
  '/sums',
  ...Object.keys(sums).map((id) => `/sums/${id}`),
  ...[...rooms, ...besides].map(({ id }) => jobPath(id)),
]
