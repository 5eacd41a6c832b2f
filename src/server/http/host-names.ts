/** The names under which a server may be asked: a page elsewhere can make its own name lead here, but not these. */
import { networkInterfaces } from 'node:os'

export type HostNames = {
  readonly allows: (host: string) => boolean
}

const own = ['localhost', '127.0.0.1', '::1']
const everywhere = ['0.0.0.0', '::']

/** Whether only this machine reaches what is bound there. */
export const isLoopback = (host: string): boolean =>
  host === 'localhost' || host === '::1' || /^127\.\d{1,3}\.\d{1,3}\.\d{1,3}$/.test(host)

/** `Host` of a request: a name or address with or without a port. Undefined when it is neither. */
export function hostName(header: string): string | undefined {
  const match = /^(?:\[([0-9a-f:.]+)\]|([a-z0-9][a-z0-9.-]*))(?::(\d{1,5}))?$/i.exec(header)
  return (match?.[1] ?? match?.[2])?.toLowerCase().replace(/\.$/, '')
}

/** Names for a server bound to `host`; bound to every address, this machine's addresses are names too. */
export function hostNames(host: string, names: readonly string[]): HostNames {
  const known = new Set([...own, host, ...names].map((name) => name.toLowerCase()))
  const allows = (name: string): boolean =>
    known.has(name) || (everywhere.includes(host) && addresses().includes(name))
  return {
    allows: (header) => {
      const name = hostName(header)
      return name !== undefined && !everywhere.includes(name) && allows(name)
    },
  }
}

// Asked each time: a laptop changes its addresses while it serves.
const addresses = (): readonly string[] =>
  Object.values(networkInterfaces()).flatMap((cards) =>
    (cards ?? []).map((card) => card.address.toLowerCase()),
  )
