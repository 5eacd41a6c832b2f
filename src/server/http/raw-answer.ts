/** Refusals outside the routes, in the same shape: at the gate, in place of a socket, and to what is no request. */
import { type ServerResponse, STATUS_CODES } from 'node:http'
import type { Duplex } from 'node:stream'
import { bodyOf, type Refusal } from './refusal.ts'
import { securityHeaders } from './security-headers.ts'

const headersOf = (given: Refusal): Readonly<Record<string, string>> => ({
  'Content-Type': 'application/json; charset=utf-8',
  'Cache-Control': 'no-store',
  ...securityHeaders(undefined),
  ...given.headers,
  'Content-Length': String(Buffer.byteLength(bodyOf(given))),
  Connection: 'close',
})

export function sendRefused(response: ServerResponse, given: Refusal): void {
  response.writeHead(given.status, headersOf(given)).end(bodyOf(given))
}

/** On a bare connection, which is closed after it. */
export function answerRefused(socket: Duplex, given: Refusal): void {
  const head = Object.entries(headersOf(given)).map(([name, value]) => `${name}: ${value}`)
  const lines = [`HTTP/1.1 ${given.status} ${STATUS_CODES[given.status]}`, ...head, '', bodyOf(given)]
  socket.on('error', () => socket.destroy())
  socket.end(lines.join('\r\n'), () => socket.destroy())
}
