/** Binds a server to its address, with the reason when that cannot be. */
import type { Server } from 'node:http'
import { ServerError } from './server-error.ts'

const reasons: Readonly<Record<string, string>> = {
  EADDRINUSE: 'server.portTaken',
  EACCES: 'server.portForbidden',
  EADDRNOTAVAIL: 'server.hostNotHere',
  ENOTFOUND: 'server.hostNotHere',
  EAI_AGAIN: 'server.hostNotHere',
}

export function listening(
  server: Server,
  { host, port }: { readonly host: string; readonly port: number },
): Promise<void> {
  return new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException): void => {
      const code = reasons[error.code ?? '']
      const message = `address: cannot be had, got ${host} port ${port} (${error.code}), expected a free one`
      reject(code === undefined ? error : new ServerError(code, { host, port: String(port) }, message))
    }
    server.once('error', failed)
    server.listen(port, host, () => {
      server.off('error', failed)
      resolve()
    })
  })
}
