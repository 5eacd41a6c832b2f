/** Words for what is said before any job is read: metric, in English. */
import { createWords, type Words } from '#words'

export const plainWords: Words = createWords({ locale: 'en-GB', system: 'metric' })
