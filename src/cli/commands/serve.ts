/** `hardstand serve`: says plainly that the web app is not built yet, and what there is instead. */
import type { Command } from '../command.ts'
import { CliFault } from '../fault.ts'
import { plainWords } from '../plain-words.ts'

export const serve: Command = {
  name: 'serve',
  summary: 'the web app; not built yet',
  flags: [
    { flags: '--port <number>', doc: 'port to listen on' },
    { flags: '--host <name>', doc: 'address to bind to' },
    { flags: '--data <folder>', doc: 'where the data is kept' },
  ],
  run: async () => {
    throw new CliFault([plainWords.sentence('cli.noServer')])
  },
}
