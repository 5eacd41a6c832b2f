/** Documents for the tests of this room. */
import { readFileSync } from 'node:fs'
import type { SampleName } from '#job'
import { parseJob, project } from '#job'

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)

export const sampleBytes = (name: SampleName): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../samples/${name}.yaml`, import.meta.url)))

export const sampleText = (name: SampleName): string => new TextDecoder().decode(sampleBytes(name))

/** The shortest document without a problem, with more lines put at the end of `work`. */
export const least = (more = ''): string =>
  [
    'hardstand: 1',
    'work:',
    '  job: {name: Teal Wren, start: 2027-04-12}',
    '  boat: {kind: open powerboat}',
    '  place: {shelter: cover, timeZone: Europe/Stockholm}',
    more,
  ].join('\n')

/** Codes with their places, from file and cells together. */
export const problemsIn = (text: string, name = 'job.yaml'): readonly string[] => {
  const { document, problems, locate } = parseJob(bytesOf(text), { name })
  const more = document ? project(document, { strict: true, locate }).problems : []
  return [...problems, ...more].map(
    ({ code, pointer, line, column }) => `${line}:${column} ${code} ${pointer}`,
  )
}
