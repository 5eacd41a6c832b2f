/** `hardstand serve`: the web app and its data, until it is stopped. */
import { fileURLToPath } from 'node:url'
import { memoryCache } from '#feeds'
import { createServer, type HardstandServer, isLoopback, ServerError, serverLimits } from '#server'
import type { Store } from '#store'
import { type Command, type Flags, textFlag } from '../command.ts'
import { CliFault } from '../fault.ts'
import { feedOptions } from '../fetch-weather.ts'
import { appVersion } from '../make-plan.ts'
import { plainWords } from '../plain-words.ts'
import { dataFolder, openData, sessionKey, storeFault } from '../serving/data-folder.ts'
import { passphrases } from '../serving/passphrases.ts'
import { seedSamples } from '../serving/seed-samples.ts'

const ownHost = '127.0.0.1'
const usualPort = '4573'
const webFolder = fileURLToPath(new URL('../../web/', import.meta.url))

export const serve: Command = {
  name: 'serve',
  summary: 'the web app and its data, until it is stopped',
  flags: [
    { flags: '--port <number>', doc: `port to listen on; ${usualPort} when left out` },
    { flags: '--host <name>', doc: `address to bind to; ${ownHost}, this computer alone, when left out` },
    { flags: '--data <folder>', doc: 'where the data is kept; the folder for your data when left out' },
    { flags: '--name <names>', doc: 'names by which others reach this computer, with commas between' },
    { flags: '--passphrase-file <file>', doc: 'passphrase for everything; readable by you alone' },
    {
      flags: '--work-passphrase-file <file>',
      doc: 'passphrase for the work without prices; readable by you alone',
    },
    { flags: '--samples', doc: 'put the sample jobs into a data folder that has no jobs' },
  ],
  run: async ({ flags }) => {
    const stopped = stopSignal()
    const host = textFlag(flags, 'host') ?? ownHost
    const port = portOf(textFlag(flags, 'port') ?? usualPort)
    const folder = dataFolder(textFlag(flags, 'data'))
    const store = await openData(folder)
    const server = await started(store, { flags, folder, host, port })
    const url = `http://${isLoopback(host) ? nameOf(host) : 'localhost'}:${server.port}/`
    const more = isLoopback(host) ? [] : [plainWords.sentence('cli.servingOthers')]
    return {
      lines: [plainWords.sentence('cli.serving', { url, folder }), ...more],
      json: { url, host, port: server.port, folder },
      until: async () => {
        await stopped
        await server.close()
        await store.close()
        return plainWords.sentence('cli.served')
      },
    }
  },
}

type Started = Pick<HardstandServer, 'close'> & { readonly port: number }

type Wish = {
  readonly flags: Flags
  readonly folder: string
  readonly host: string
  readonly port: number
}

async function started(store: Store, { flags, folder, host, port }: Wish): Promise<Started> {
  const files = { all: textFlag(flags, 'passphraseFile'), work: textFlag(flags, 'workPassphraseFile') }
  try {
    if (flags.samples === true) await seedSamples(store, Date.now())
    const server = createServer({
      store,
      app: appVersion(),
      webFolder,
      passphrases: await passphrases(files, process.env),
      sessionKey: await sessionKey(folder),
      names: (textFlag(flags, 'name') ?? '').split(',').filter((name) => name !== ''),
      limits: serverLimits,
      feeds: feedOptions(memoryCache()),
      nowMs: Date.now,
      tell: ({ code, data }) => void process.stderr.write(`${plainWords.sentence(code, data)}\n`),
    })
    return { close: server.close, port: (await server.listen({ host, port })).port }
  } catch (error) {
    await store.close()
    if (error instanceof ServerError) throw new CliFault([plainWords.sentence(error.code, error.data)])
    throw storeFault(error, folder)
  }
}

function portOf(text: string): number {
  if (/^\d{1,5}$/.test(text) && Number(text) <= 65_535) return Number(text)
  throw new CliFault([plainWords.sentence('cli.badPort', { text })], 2)
}

const nameOf = (host: string): string => (host.includes(':') ? `[${host}]` : host)

/** The first of the two ends the server; a second ends the process at once, as usual. */
const stopSignal = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve())
  })
