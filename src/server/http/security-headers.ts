/** Headers of every answer: what a page may load, and that nobody else may frame, read or guess it. */

/**
 * Nothing but the server's own files runs or is loaded, and nothing is sent elsewhere. Styles in attributes are let
 * through: the parts of the pages that place popovers set them. Images may also come from files that were picked.
 */
const policyOf = (host: string): string =>
  [
    "default-src 'self'",
    "script-src 'self'",
    "style-src 'self'",
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' blob: data:",
    // Older browsers do not count a socket to the same host as 'self'.
    `connect-src 'self' ws://${host} wss://${host}`,
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ')

const always: Readonly<Record<string, string>> = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'X-Frame-Options': 'DENY',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
}

/** `host` must be one that the server goes by; without one no page is meant. */
export const securityHeaders = (host: string | undefined): Readonly<Record<string, string>> => ({
  ...always,
  'Content-Security-Policy':
    host === undefined ? "default-src 'none'; frame-ancestors 'none'" : policyOf(host),
})
