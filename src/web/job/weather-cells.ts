/** Which cells of a job change when a person gives a weather: a typical year stands behind the forecast, never in its place. */
export const weatherKeys = [
  'hash',
  'file',
  'read',
  'typicalHash',
  'typicalFile',
  'loggerHash',
  'logger',
] as const
export type WeatherKey = (typeof weatherKeys)[number]
export type WeatherCells = Partial<Readonly<Record<WeatherKey, string>>>

export type GivenInto = {
  readonly hash: string
  readonly file: string
  readonly typicalYear: boolean
  /** As a moment of the document. */
  readonly nowAt: string
  /** What the job names as its weather is a typical year itself: from when a job had but one. */
  readonly soleTypical: boolean
}

/** The cells to set, empty where one is cleared. */
export function cellsWith(before: WeatherCells, given: GivenInto): WeatherCells {
  const { hash, file, typicalYear, nowAt, soleTypical } = given
  if (!typicalYear) {
    const moved = soleTypical && !before.typicalHash
    return {
      hash,
      file,
      read: nowAt,
      ...(moved ? { typicalHash: before.hash ?? '', typicalFile: before.file ?? '' } : {}),
    }
  }
  const alone = soleTypical || !before.hash
  return {
    typicalHash: hash,
    typicalFile: file,
    ...(soleTypical ? { hash: '', file: '' } : {}),
    ...(alone ? { read: nowAt } : {}),
  }
}

export const weatherPlace = (key: WeatherKey) => ({ part: 'work', section: 'weather', key }) as const
