import { expect, it } from 'vitest'
import { localDate, localInstant } from './local-date.ts'

it('the date is that of the boat, not of the machine', () => {
  const minute = Date.parse('2027-04-10T23:30Z') / 60_000
  expect(localDate(minute, 'Europe/Oslo')).toBe('2027-04-11')
  expect(localDate(minute, 'America/New_York')).toBe('2027-04-10')
  expect(localDate(minute, 'UTC')).toBe('2027-04-10')
})

it('an instant carries the offset of its day, summer time and half hours included', () => {
  const ms = Date.parse('2027-07-10T22:05Z')
  expect(localInstant(ms, 'Europe/Oslo')).toBe('2027-07-11T00:05+02:00')
  expect(localInstant(ms, 'UTC')).toBe('2027-07-10T22:05+00:00')
  expect(localInstant(ms, 'Asia/Kolkata')).toBe('2027-07-11T03:35+05:30')
  expect(Date.parse(localInstant(ms, 'America/St_Johns'))).toBe(ms)
})
