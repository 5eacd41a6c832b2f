/** The outbox of this device: what its database has marked as unsent, and what another run of the server may have lost. */
import type { Sees } from '#replica'
import type { Connection } from './connection.ts'
import type { DeviceDb } from './device-db.ts'
import type { OutboxPort } from './outbox.ts'
import { sendJob } from './send-job.ts'
import { unsentNames } from './unsent-mark.ts'

export type OutboxPlace = {
  readonly db: DeviceDb
  readonly connection: Connection
  readonly sees: () => Sees
}

const comparedFact = 'compared with run'

export function outboxPort({ db, connection, sees }: OutboxPlace): OutboxPort {
  let comparing: { readonly run: string; readonly done: Set<string> } | undefined
  return {
    nowMs: Date.now,
    online: () => connection.online() && !connection.mustSignIn(),
    unsent: async () => {
      const names = await unsentNames(db)
      // What a person may not see any more is not theirs to send.
      return jobsOf(sees() === 'all' ? names : names.filter((name) => !name.startsWith('money:')))
    },
    unsure: async () => {
      const run = connection.hello()?.run
      if (run === undefined || (await db.get('facts', comparedFact)) === run) return []
      if (comparing?.run !== run) comparing = { run, done: new Set() }
      const { done } = comparing
      return jobsOf(await keptNames(db)).filter((job) => !done.has(job))
    },
    compared: async () => {
      if (comparing) await db.put('facts', comparing.run, comparedFact)
    },
    send: async (job, stop) => {
      const sent = await sendJob({ db, connection, sees: sees() }, { job, stop })
      if (sent) comparing?.done.add(job)
      return sent
    },
  }
}

/** `work:a1` and `log:a1` are of the job `a1`; the list of jobs is of none. */
export const jobsOf = (names: readonly string[]): readonly string[] => [
  ...new Set(names.filter((name) => name.includes(':')).map((name) => name.slice(name.indexOf(':') + 1))),
]

/** Names of all documents in the database. */
async function keptNames(db: DeviceDb): Promise<readonly string[]> {
  const names: string[] = []
  const index = db.transaction('updates').store.index('name')
  for (let at = await index.openKeyCursor(null, 'nextunique'); at; at = await at.continue())
    names.push(String(at.key))
  return names
}
