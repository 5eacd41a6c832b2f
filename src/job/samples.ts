/** The sample jobs that ship with the program; the files are in `samples/` beside it. */
export const sampleNames = ['open-powerboat', 'deck-only', 'cruiser-topsides'] as const

export type SampleName = (typeof sampleNames)[number]
