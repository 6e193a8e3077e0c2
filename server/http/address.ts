import type { IncomingMessage } from 'node:http'

/**
 * Where a request comes from, past as many proxies as the server is told of: the right-most address of
 * X-Forwarded-For that none of them vouches for. Anything a client writes further left changes nothing.
 */
export const createAddressOf =
  (hops: number) =>
  (request: Pick<IncomingMessage, 'headers' | 'socket'>): string => {
    const forwarded = request.headers['x-forwarded-for']
    const chain = String(forwarded ?? '')
      .split(',')
      .map(part => part.trim())
      .filter(part => part !== '')
    const peer = request.socket.remoteAddress ?? ''
    return [...chain, peer].at(-1 - Math.min(hops, chain.length)) ?? peer
  }
