/** Dates, times of day and instants as they stand in a document; shape and calendar are checked, no clock is read. */

const daysIn = (year: number, month: number): number =>
  month === 2
    ? (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
      ? 29
      : 28
    : [4, 6, 9, 11].includes(month)
      ? 30
      : 31

/** `2027-04-12`, a day of the Gregorian calendar from 1900 to 2199. */
export const isDate = (text: string): boolean => {
  const found = /^((?:19|20|21)\d\d)-(\d\d)-(\d\d)$/.exec(text)
  if (!found) return false
  const [year, month, day] = found.slice(1).map(Number) as [number, number, number]
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month)
}

/** Date and time with offset, seconds optional: `2027-04-14T09:30+02:00`. SOURCE: ISO 8601-1:2019, 5.4.2. */
export const isInstant = (text: string): boolean => {
  const found = /^(\d{4}-\d\d-\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.\d{1,9})?)?(?:Z|[+-](\d\d):(\d\d))$/.exec(
    text,
  )
  if (!found || !isDate(found[1] as string)) return false
  const [hour, minute, second, offsetHour, offsetMinute] = found.slice(2).map((part) => Number(part ?? 0))
  return (
    within(hour, 23) &&
    within(minute, 59) &&
    within(second, 59) &&
    within(offsetHour, 14) &&
    within(offsetMinute, 59)
  )
}

const within = (value: number | undefined, most: number): boolean => value !== undefined && value <= most
