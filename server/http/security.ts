import type { IncomingMessage } from 'node:http'
import type { RequestHandler } from 'express'
import helmet from 'helmet'

const plainHost = /^[A-Za-z0-9.:[\]-]+$/

/** Not every browser counts our own web socket as 'self'. */
function ownSockets({ headers }: IncomingMessage): string {
  const host = headers.host ?? ''
  return plainHost.test(host) ? `ws://${host} wss://${host}` : "'self'"
}

/**
 * No script or style but our own files. On plain http (a phone on the club's network) nothing may ask for https:
 * the page would stay blank.
 */
export function securityHeaders(isSecure: boolean): RequestHandler {
  return helmet({
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        'default-src': ["'self'"],
        'script-src': ["'self'"],
        'script-src-attr': ["'none'"],
        'style-src': ["'self'"],
        'img-src': ["'self'", 'data:', 'blob:'],
        'font-src': ["'self'"],
        'connect-src': ["'self'", ownSockets],
        'media-src': ["'self'", 'blob:'],
        'worker-src': ["'self'"],
        'manifest-src': ["'self'"],
        'object-src': ["'none'"],
        'base-uri': ["'none'"],
        'form-action': ["'self'"],
        'frame-ancestors': ["'none'"],
      },
    },
    referrerPolicy: { policy: 'no-referrer' },
    // Other names under the same domain are none of our business.
    strictTransportSecurity: isSecure ? { includeSubDomains: false } : false,
    ...(isSecure ? {} : { crossOriginOpenerPolicy: false, originAgentCluster: false }),
  })
}
