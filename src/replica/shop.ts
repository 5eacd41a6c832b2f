/** The list of jobs: a shared document with one map a job, holding what the job was last called. */
import * as Y from 'yjs'

export type ShopJob = {
  readonly id: string
  readonly name: string
  readonly boatName: string
  /** When it was begun, milliseconds since 1970; 0 when nothing says. */
  readonly madeMs: number
}

const section = 'jobs'

/** Jobs that were not taken off the list, the newest first. */
export function shopJobs(doc: Y.Doc): readonly ShopJob[] {
  const jobs: ShopJob[] = []
  for (const [id, cells] of doc.getMap(section)) {
    if (!(cells instanceof Y.Map) || cells.get('gone') === 'true') continue
    jobs.push({
      id,
      name: text(cells.get('name')),
      boatName: text(cells.get('boatName')),
      madeMs: Number(text(cells.get('madeMs'))) || 0,
    })
  }
  return jobs.sort((a, b) => b.madeMs - a.madeMs || (a.id < b.id ? -1 : 1))
}

const text = (value: unknown): string => (typeof value === 'string' ? value : '')

/** Puts a job on the list, or changes what it is called there. */
export function putShopJob(doc: Y.Doc, id: string, facts: Partial<Omit<ShopJob, 'id'>>): void {
  doc.transact(() => {
    const jobs = doc.getMap<Y.Map<string>>(section)
    const known = jobs.get(id)
    const cells = known instanceof Y.Map ? known : new Y.Map<string>()
    if (cells !== known) jobs.set(id, cells)
    for (const [key, value] of Object.entries(facts)) {
      if (cells.get(key) !== String(value)) cells.set(key, String(value))
    }
  })
}

/** Takes a job off the list, or puts it back; its documents stay. */
export function setShopJobGone(doc: Y.Doc, id: string, gone: boolean): void {
  const cells = doc.getMap(section).get(id)
  if (!(cells instanceof Y.Map)) return
  if (gone) cells.set('gone', 'true')
  else cells.delete('gone')
}
