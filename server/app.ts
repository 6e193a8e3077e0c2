import { createServer, type Server as HttpServer, type RequestListener } from 'node:http'
import { createServer as createTlsServer } from 'node:https'
import type { AddressInfo } from 'node:net'
import type { Logger } from 'pino'
import { createDoor, type Place } from './access/door.ts'
import { networkAddresses, outsideUrl } from './greeting.ts'
import { createAddressOf } from './http/address.ts'
import { createHttpApp } from './http/http-app.ts'
import { createOriginCheck } from './http/origin.ts'
import { securityHeaders } from './http/security.ts'
import { createAsking } from './live/asking.ts'
import { type Clock, systemClock } from './live/clock.ts'
import { createCounted, createDispatch } from './live/dispatch.ts'
import { createLimiter, defaultLimits, type LimiterOptions } from './live/limiter.ts'
import { createLinkGate } from './live/link-gate.ts'
import { createRoom } from './live/room.ts'
import { connectSockets, createSockets, mostSockets, tellSockets } from './live/socket.ts'
import { createWelcome, mayLetIn } from './live/welcome.ts'
import { defaultLinksPerAddress } from './settings.ts'
import { StartFault } from './start-fault.ts'
import { newEra } from './store/era.ts'
import { openSqliteStore } from './store/sqlite.ts'
import { createKeepingWatch, type WatchSettings } from './watch/keeping-watch.ts'
import type { Machine } from './watch/machine.ts'

export interface AppOptions extends WatchSettings {
  /** 0 for any free one. */
  readonly port: number
  readonly host: string
  readonly dataFolder: string
  /** Where the built page lies. */
  readonly clientFolder: string
  readonly logger: Logger
  readonly publicUrl?: string | null
  /** How many proxies stand before the server. */
  readonly trustedHops?: number
  readonly tls?: { readonly cert: Buffer; readonly key: Buffer } | null
  readonly limits?: LimiterOptions
  /** Phones and boards from one address at once; 0: no such limit. */
  readonly linksPerAddress?: number
  readonly clock?: Clock
  readonly machine?: Machine
}

export interface App {
  readonly port: number
  /** Where the gauges are; null when they are not served. */
  readonly metricsPort: number | null
  /** Stops accepting, stores what waits, tells every link, and ends. Safe to call twice. */
  close(): Promise<void>
}

/** For the last answers and partings to leave the machine. */
const partingMs = 50

/** A whole server. Fails with a StartFault when it cannot start. */
export async function createApp(options: AppOptions): Promise<App> {
  const { logger, clock = systemClock, publicUrl = null, tls = null } = options
  let closing: Promise<void> | null = null
  const { dataFolder, machine } = options
  const watch = createKeepingWatch({ settings: options, dataFolder, logger, clock, machine })
  const { failed } = watch
  let listener: RequestListener = (_request, response) => void response.writeHead(503).end()
  const http = makeServer(tls, (request, response) => listener(request, response))
  const store = await openSqliteStore({
    folder: dataFolder,
    now: clock.now,
    newEra,
    warn: line => logger.warn(line),
    failed,
    committed: watch.committed,
  })
  const addressOf = createAddressOf(options.trustedHops ?? 0)
  const isOwnOrigin = createOriginCheck(publicUrl)
  const mostOfAddress = options.linksPerAddress ?? defaultLinksPerAddress
  const gate = createLinkGate({ isOwnOrigin, addressOf, most: mostSockets, mostOfAddress })
  const sockets = createSockets({ http, gate })
  const room = createRoom({ store, clock, tellMany: tellSockets(sockets), failed })
  const limiter = createLimiter(options.limits ?? defaultLimits)
  const door = createDoor(clock.now)
  const changed = ({ log, group }: Place) => room.asked(log, actor => mayLetIn(actor, group))
  const welcome = createWelcome({ door, store, weigh: room.weigh, changed })
  const counted = createCounted(limiter)
  const dispatch = watch.tallied(createDispatch({ room, welcome, counted, failed }))
  const asking = createAsking({ door, limiter, changed, failed })
  connectSockets(sockets, room, dispatch, addressOf)
  const isSecure = tls !== null || (publicUrl?.startsWith('https:') ?? false)
  // Before the sockets' own answers as well, so that none goes without.
  http.prependListener('request', securityHeaders(isSecure))
  const { clientFolder, host } = options
  const portTaken = () => (http.address() as AddressInfo).port
  const outside = () => outsideUrl({ host, port: portTaken(), isTls: tls !== null, publicUrl }, networkAddresses())
  const page = { clientFolder, outsideUrl: outside }
  listener = createHttpApp({ room, dispatch, counted, asking, store, logger, isOwnOrigin, addressOf, ...page })

  const close = async () => {
    watch.end()
    http.close()
    await store.close()
    // The answers to what has just been stored go out before the links end.
    await new Promise(resolve => setImmediate(resolve))
    room.close('restart')
    sockets.emit('parting', { why: 'restart' })
    sockets.disconnectSockets(true)
    await new Promise(resolve => setTimeout(resolve, partingMs))
    http.closeAllConnections()
    await sockets.close()
  }
  try {
    await watch.start({ store, room, links: () => sockets.engine.clientsCount, refused: gate.refused })
    await listen(http, options.port, options.host)
  } catch (error) {
    watch.end()
    await store.close()
    throw error
  }
  return {
    port: portTaken(),
    metricsPort: watch.metricsPort(),
    close() {
      closing ??= close()
      return closing
    },
  }
}

function makeServer(tls: AppOptions['tls'], listener: RequestListener): HttpServer {
  if (!tls) return createServer(listener)
  try {
    return createTlsServer({ cert: tls.cert, key: tls.key }, listener) as unknown as HttpServer
  } catch (error) {
    throw new StartFault(`TLS_CERT and TLS_KEY do not hold a certificate and its key: ${(error as Error).message}.`)
  }
}

function listen(http: HttpServer, port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    http.once('error', (error: NodeJS.ErrnoException) => reject(faultOfListening(error, port, host)))
    http.listen(port, host, resolve)
  })
}

function faultOfListening({ code, message }: NodeJS.ErrnoException, port: number, host: string): StartFault {
  switch (code) {
    case 'EADDRINUSE':
      return new StartFault(`Port ${port} is busy; stop what uses it or set PORT to another.`)
    case 'EACCES':
      return new StartFault(`Port ${port} is not allowed for this user; set PORT to one above 1023.`)
    case 'EADDRNOTAVAIL':
      return new StartFault(`This machine has no address ${host}; set HOST to one that it has.`)
    default:
      return new StartFault(`The server cannot listen on ${host}:${port}: ${message}.`)
  }
}
