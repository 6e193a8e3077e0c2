import type { Server as HttpServer, IncomingMessage } from 'node:http'
import { Server, type Socket } from 'socket.io'
import type { DownEvents } from '#shared/events.ts'
import { limits } from '#shared/limits.ts'
import { helloSchema } from '#shared/messages/hello.ts'
import type { Tell } from '#shared/messages/tell.ts'
import { pathOfIssue } from '#shared/op.ts'
import { shownOf } from '../access/shown.ts'
import { type Dispatch, fault } from './dispatch.ts'
import type { Link, TellMany } from './link.ts'
import type { LinkGate } from './link-gate.ts'
import type { Room } from './room.ts'

/** What one socket may have unsent before it is dropped; it catches up when it is back. */
const mostUnsentPackets = 200
const mostUnsentLength = 4_000_000
export const mostSockets = 20_000

export type Sockets = Server<Record<string, never>, DownEvents>
type PhoneSocket = Socket<Record<string, never>, DownEvents>

interface SocketLink extends Link {
  readonly socket: PhoneSocket
}

interface OpenLink {
  readonly request: IncomingMessage
  once(event: 'close', heard: () => void): void
}

export interface SocketOptions {
  readonly http: HttpServer
  readonly gate: LinkGate
}

/** The transport. Its recovery, retries and buffers are not relied on. */
export function createSockets({ http, gate }: SocketOptions): Sockets {
  const sockets: Sockets = new Server(http, {
    transports: ['websocket'],
    allowUpgrades: false,
    serveClient: false,
    pingInterval: 10_000,
    pingTimeout: 10_000,
    connectTimeout: 10_000,
    maxHttpBufferSize: limits.frameBytes,
    allowRequest(request, decide) {
      const why = gate.refuse(request)
      decide(why, why === null)
    },
  })
  sockets.engine.on('connection', (link: OpenLink) => {
    const { leave } = gate.enter(link.request)
    link.once('close', leave)
  })
  sockets.use((socket, next) => {
    const parsed = helloSchema.safeParse(socket.handshake.auth)
    if (parsed.success) {
      socket.data.shown = shownOf(parsed.data)
      return next()
    }
    const error = Object.assign(new Error('fault'), { data: fault('wrong shape', pathOfIssue(parsed.error.issues[0])) })
    next(error)
  })
  return sockets
}

/** Encodes a message once for all who get it. */
export const tellSockets =
  (sockets: Sockets): TellMany =>
  (links, message) => {
    const able = (links as readonly SocketLink[]).filter(dropIfSlow)
    const ids = able.map(({ socket }) => socket.id)
    if (ids.length > 0) sockets.to(ids).emit('tell', message as Tell)
  }

/** Wires each new socket to the room through the one dispatcher. */
export function connectSockets(
  sockets: Sockets,
  room: Room,
  dispatch: Dispatch,
  addressOf: (request: IncomingMessage) => string,
): void {
  sockets.on('connection', socket => {
    const link = linkOf(socket)
    const caller = { shown: link.shown, address: addressOf(socket.request), link }
    socket.on('error', () => {})
    socket.on('disconnect', () => room.leave(link))
    socket.onAny((event: string, ...args: unknown[]) => {
      const answer = args.at(-1)
      // Without a way to answer there is no telling what became of it, so nothing does.
      if (typeof answer !== 'function') return
      void dispatch(caller, event, args.length > 1 ? args[0] : undefined).then(answered => {
        answer(answered)
        // It may have gone while its answer was being made.
        if (!socket.connected) room.leave(link)
      })
    })
  })
}

function linkOf(socket: PhoneSocket): SocketLink {
  const link: SocketLink = {
    socket,
    shown: socket.data.shown,
    tell(message) {
      if (dropIfSlow(link)) socket.emit('tell', message)
    },
    offered: message => void socket.emit('offered', message),
    asked: message => void socket.emit('asked', message),
    part(why) {
      socket.emit('parting', { why })
      socket.disconnect(true)
    },
  }
  return link
}

interface Packet {
  readonly data?: unknown
}

/** False, and gone, when too much waits for it already. */
function dropIfSlow({ socket }: SocketLink): boolean {
  const unsent = (socket.conn as unknown as { readonly writeBuffer: readonly Packet[] }).writeBuffer
  if (unsent.length <= 8) return true
  const length = unsent.reduce((sum, { data }) => sum + (typeof data === 'string' ? data.length : 0), 0)
  if (unsent.length <= mostUnsentPackets && length <= mostUnsentLength) return true
  socket.emit('parting', { why: 'too slow' })
  // Without waiting for what it does not take.
  socket.conn.close(true)
  return false
}
