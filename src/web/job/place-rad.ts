/** Where the boat stands, as far as the job says it in a way that can be read. */
import { readCell, workFields } from '#job'
import { cellOf, type JobView } from './job-view.ts'

/** Radians; nothing while one of the two is missing or cannot be read. */
export function placeRad(
  view: Pick<JobView, 'raw'>,
): { readonly latitude: number; readonly longitude: number } | undefined {
  const angle = (key: 'latitude' | 'longitude'): number | undefined => {
    const text = cellOf(view, { part: 'work', section: 'place', key })
    if (text === '') return undefined
    const reading = readCell(workFields.place.fields[key], text, { currency: undefined })
    return reading.ok ? (reading.value as { readonly value: number }).value : undefined
  }
  const [latitude, longitude] = [angle('latitude'), angle('longitude')]
  return latitude === undefined || longitude === undefined ? undefined : { latitude, longitude }
}
