/** The answers to the twelve questions as they stand in the form, and what they make. */
import { catalogueIds } from '#catalogue'
import { type NewJobAnswers, newJob, type Problem, project, type RawDocument } from '#job'

export type Person = {
  readonly name: string
  readonly days: string
  readonly from: string
  readonly until: string
}

/** Texts as typed; an empty one is no answer. */
export type Answers = {
  readonly name: string
  readonly boatName: string
  readonly units: 'metric' | 'us'
  readonly kind: NewJobAnswers['kind']
  readonly length: string
  readonly beam: string
  readonly freeboard: string
  readonly shelter: NewJobAnswers['shelter']
  readonly timeZone: string
  readonly latitude: string
  readonly longitude: string
  readonly start: string
  readonly launch: string
  readonly crew: readonly Person[]
  readonly topsides: boolean
  readonly transom: boolean
  readonly deck: boolean
  readonly existing: string
  readonly paint: NewJobAnswers['paint']
  readonly finish: string
  readonly colour: string
  readonly shade: 'light' | 'medium' | 'dark'
  readonly nonSkid: boolean
  readonly stripe: boolean
}

export const onePerson: Person = { name: '', days: 'Mon-Fri', from: '08:00', until: '16:30' }

export const firstAnswers = ({
  today,
  timeZone,
}: {
  readonly today: string
  readonly timeZone: string
}): Answers => ({
  name: '',
  boatName: '',
  units: 'metric',
  kind: 'open powerboat',
  length: '',
  beam: '',
  freeboard: '',
  shelter: 'cover',
  timeZone,
  latitude: '',
  longitude: '',
  start: today,
  launch: '',
  crew: [onePerson],
  topsides: true,
  transom: true,
  deck: false,
  existing: 'unknown',
  paint: 'one-part',
  finish: 'tidy',
  colour: '',
  shade: 'light',
  nonSkid: true,
  stripe: true,
})

const optional = ['boatName', 'latitude', 'longitude', 'launch', 'colour'] as const

export function documentOf(answers: Answers, nameOfPerson: string): RawDocument {
  const { crew, boatName, latitude, longitude, launch, colour, ...rest } = answers
  const texts = { boatName, latitude, longitude, launch, colour }
  const given = Object.fromEntries(
    optional.filter((key) => texts[key].trim() !== '').map((key) => [key, texts[key].trim()]),
  )
  return newJob({
    ...rest,
    ...given,
    name: answers.name.trim() || boatName.trim(),
    crew: crew.map((person) => ({ ...person, name: person.name.trim() || nameOfPerson })),
  })
}

export type Wrong = Pick<Problem, 'code' | 'data' | 'pointer'>

const sizes = { length: 'lengthOverall', beam: 'beam', freeboard: 'freeboardStem' } as const

/** A document may be without these; a drawing of the boat may not. */
const missing = ({ work }: RawDocument): readonly string[] =>
  Object.entries(sizes)
    .filter(([, cell]) => String(work.boat?.[cell] ?? '').trim() === '')
    .map(([field]) => field)

/** Problems of the answers, by the field of the form where each is mended. */
export function wrongAnswers(raw: RawDocument): ReadonlyMap<string, Wrong> {
  const { problems } = project(raw, { strict: true, catalogueIds: catalogueIds.sheets })
  const found = new Map<string, Wrong>(
    missing(raw).map((field) => [field, { code: 'newjob.needed', data: {}, pointer: '' }]),
  )
  const timeZone = String(raw.work.place?.timeZone ?? '')
  if (!isZone(timeZone))
    found.set('timeZone', { code: 'calendar.unknownTimeZone', data: { timeZone }, pointer: '' })
  for (const problem of problems) {
    const field = fieldOf(problem.pointer)
    if (problem.severity === 'error' && !found.has(field)) found.set(field, problem)
  }
  return found
}

const isZone = (name: string): boolean => {
  try {
    return name !== '' && new Intl.DateTimeFormat('en', { timeZone: name }).format(0) !== ''
  } catch {
    return false
  }
}

const fields: Readonly<Record<string, string>> = {
  '/work/job/name': 'name',
  '/work/boat/lengthOverall': 'length',
  '/work/boat/beam': 'beam',
  '/work/boat/freeboardStem': 'freeboard',
  '/work/place/timeZone': 'timeZone',
  '/work/place/latitude': 'latitude',
  '/work/place/longitude': 'longitude',
  '/work/job/start': 'start',
  '/work/job/launch': 'launch',
}

/** `/work/shifts/shift-2/from` is the second person's; what no field stands for is told at the top. */
function fieldOf(pointer: string): string {
  const shift = /^\/work\/shifts\/shift-(\d+)\/(days|from|until)$/.exec(pointer)
  return shift ? `crew.${Number(shift[1]) - 1}.${shift[2]}` : (fields[pointer] ?? pointer)
}
