import type { IncomingMessage, ServerResponse } from 'node:http'
import helmet from 'helmet'

const plainHost = /^[A-Za-z0-9.:[\]-]+$/

/** Not every browser counts our own web socket as 'self'. */
function ownSockets({ headers }: IncomingMessage): string {
  const host = headers.host ?? ''
  return plainHost.test(host) ? `ws://${host} wss://${host}` : "'self'"
}

/** What the page uses, and what no page of ours will ever ask a golfer for. */
const permissions = [
  ...['camera', 'clipboard-write', 'screen-wake-lock', 'web-share'].map(used => `${used}=(self)`),
  ...['accelerometer', 'display-capture', 'geolocation', 'gyroscope', 'magnetometer', 'microphone', 'midi'].map(
    unused => `${unused}=()`,
  ),
  ...['payment', 'publickey-credentials-get', 'usb'].map(unused => `${unused}=()`),
].join(', ')

/** Sets the headers of one answer, before anything of it is written. */
export type SecurityHeaders = (request: IncomingMessage, response: ServerResponse) => void

/**
 * No script or style but our own files. On plain http (a phone on the club's network) nothing may ask for https:
 * the page would stay blank.
 */
export function securityHeaders(isSecure: boolean): SecurityHeaders {
  const set = helmet({
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
    xFrameOptions: { action: 'deny' },
  })
  return (request, response) => {
    response.setHeader('Permissions-Policy', permissions)
    set(request, response, error => {
      if (error) throw error
    })
  }
}
