import { type AddressInfo, connect, createServer, type Socket } from 'node:net'

type Way = 'up' | 'down'

/** What a network does to what passes between a phone and the server. */
export type Trouble =
  | { readonly kind: 'none' }
  /** Nothing gets through this way and nobody is told: no end, no error. What is held goes on when the trouble is over. */
  | { readonly kind: 'silence'; readonly ways: readonly Way[] }
  | { readonly kind: 'delay'; readonly ms: number }
  /** Every connection is cut once so many bytes have come down through it. */
  | { readonly kind: 'cut'; readonly afterBytes: number }
  /** As a proxy that knows plain requests alone. */
  | { readonly kind: 'no web sockets' }
  /** A page of the network's own, with status 200, whatever is asked. */
  | { readonly kind: 'portal' }
  /** Without web sockets; every plain request reaches the server twice, as from a proxy that tries again. */
  | { readonly kind: 'asked twice' }
  /** Without web sockets; every plain answer comes down twice. */
  | { readonly kind: 'answered twice' }

/** A network between phones and a server whose troubles a test turns on and off. */
export interface BadProxy {
  readonly url: string
  readonly set: (trouble: Trouble) => void
  readonly close: () => void
}

interface Pair {
  readonly near: Socket
  readonly far: Socket
  readonly held: Readonly<Record<Way, Buffer[]>>
  readonly closed: Set<Way>
  cameDown: number
}

const withoutSockets: readonly Trouble['kind'][] = ['no web sockets', 'asked twice', 'answered twice']
const page = '<!doctype html><title>Clubhouse network</title><p>Accept the terms to go on.</p>'
const portalAnswer = `HTTP/1.1 200 OK\r\nContent-Type: text/html\r\nContent-Length: ${page.length}\r\n\r\n${page}`
const isUpgrade = (bytes: Buffer): boolean => /^GET [\s\S]*\r\nupgrade: *websocket/i.test(bytes.toString('latin1'))
const isRequest = (bytes: Buffer): boolean => /^(GET|POST) /.test(bytes.toString('latin1', 0, 8)) && !isUpgrade(bytes)
const isAnswer = (bytes: Buffer): boolean => bytes.toString('latin1', 0, 10) === 'HTTP/1.1 2'

export async function startBadProxy(target: string): Promise<BadProxy> {
  const { hostname, port } = new URL(target)
  const pairs = new Set<Pair>()
  let trouble: Trouble = { kind: 'none' }

  const toFar = (): Socket => connect(Number(port), hostname).on('error', () => undefined)
  const isSilent = (way: Way): boolean => trouble.kind === 'silence' && trouble.ways.includes(way)

  const end = (pair: Pair): void => {
    pairs.delete(pair)
    pair.near.destroy()
    pair.far.destroy()
  }

  const up = (pair: Pair, bytes: Buffer): void => {
    if (trouble.kind === 'portal') return void pair.near.write(portalAnswer)
    if (withoutSockets.includes(trouble.kind) && isUpgrade(bytes)) {
      return void pair.near.end('HTTP/1.1 400 Bad Request\r\nContent-Length: 0\r\nConnection: close\r\n\r\n')
    }
    if (trouble.kind === 'asked twice' && isRequest(bytes)) {
      const again = toFar()
      again.once('data', () => again.destroy()).write(bytes)
    }
    pair.far.write(bytes)
  }

  const down = (pair: Pair, bytes: Buffer): void => {
    pair.cameDown += bytes.length
    if (trouble.kind === 'cut' && pair.cameDown > trouble.afterBytes) {
      const rest = Math.max(0, bytes.length - (pair.cameDown - trouble.afterBytes))
      return void pair.near.write(bytes.subarray(0, rest), () => end(pair))
    }
    pair.near.write(bytes)
    if (trouble.kind === 'answered twice' && isAnswer(bytes)) pair.near.write(bytes)
  }

  const pass = (pair: Pair, way: Way, bytes: Buffer): void => {
    const go = (): void => (way === 'up' ? up : down)(pair, bytes)
    if (isSilent(way)) pair.held[way].push(bytes)
    else if (trouble.kind === 'delay') setTimeout(go, trouble.ms)
    else go()
  }

  /** The other side hears of an end as of everything else: not while it is silent. */
  const closed = (pair: Pair, way: Way): void => {
    pair.closed.add(way)
    if (!isSilent(way)) end(pair)
  }

  const release = (pair: Pair): void => {
    for (const way of ['up', 'down'] as const) {
      if (isSilent(way)) continue
      for (const bytes of pair.held[way].splice(0)) (way === 'up' ? pair.far : pair.near).write(bytes)
      if (pair.closed.has(way)) (way === 'up' ? pair.far : pair.near).end(() => end(pair))
    }
  }

  const server = createServer(near => {
    const pair: Pair = { near, far: toFar(), held: { up: [], down: [] }, closed: new Set(), cameDown: 0 }
    pairs.add(pair)
    near.on('error', () => undefined)
    near.on('data', bytes => pass(pair, 'up', bytes))
    pair.far.on('data', bytes => pass(pair, 'down', bytes))
    near.on('close', () => closed(pair, 'up'))
    pair.far.on('close', () => closed(pair, 'down'))
  })
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))

  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    set: next => {
      trouble = next
      // What stands was made before the network turned so.
      const isNewNetwork = next.kind === 'portal' || withoutSockets.includes(next.kind)
      for (const pair of [...pairs]) isNewNetwork ? end(pair) : release(pair)
    },
    close: () => {
      for (const pair of [...pairs]) end(pair)
      server.close()
    },
  }
}
