import { io, type Socket } from 'socket.io-client'
import { backOffMs, type Clock } from './clock.ts'
import type { Link, LinkEvents } from './link.ts'

interface SocketLinkParts {
  readonly url: string
  readonly clock: Clock
  /** A try to connect came to nothing: perhaps this network blocks web sockets. */
  readonly failed: () => void
}

/**
 * Socket.io as a plain pipe: order inside one connection and nothing more. Nothing is said while it is not connected,
 * so that nothing is buffered and said late.
 */
export function createSocketLink({ url, clock, failed }: SocketLinkParts): Link {
  let socket: Socket | null = null
  let failures = 0

  /** Where the library has given up by itself: after a refusal, or when the server ended the connection. */
  const connectLater = (from: Socket): void => {
    failures++
    clock.after(backOffMs(failures, clock.random()), () => {
      if (socket === from && !from.connected && !from.active) from.connect()
    })
  }

  const listen = (from: Socket, { up, down, told, offered, asked, parting }: LinkEvents): void => {
    from.on('connect', () => {
      failures = 0
      up()
    })
    from.on('disconnect', () => {
      from.sendBuffer = []
      down()
      if (!from.active) connectLater(from)
    })
    from.on('connect_error', () => {
      failed()
      if (!from.active) connectLater(from)
    })
    from.on('tell', told)
    from.on('offered', offered)
    from.on('asked', () => asked())
    from.on('parting', parting)
  }

  return {
    isTold: () => true,
    start: (hello, events) => {
      socket = io(url, {
        transports: ['websocket'],
        auth: give => give(hello()),
        autoConnect: false,
        forceNew: true,
        reconnectionDelay: 500,
        reconnectionDelayMax: 5_000,
        timeout: 8_000,
      })
      listen(socket, events)
      socket.connect()
    },
    stop: () => {
      const from = socket
      socket = null
      from?.removeAllListeners()
      from?.disconnect()
    },
    // While the library waits between two tries, only this starts one at once.
    renew: () => void socket?.disconnect().connect(),
    ask: async (question, message, limitMs) => {
      if (!socket?.connected) throw new Error('no link')
      return socket.timeout(limitMs).emitWithAck(question, message)
    },
  }
}
