import type { Hello } from '#shared/messages/hello.ts'
import type { Clock } from './clock.ts'
import type { Link, LinkEvents } from './link.ts'
import { createPollingLink, probe } from './polling-link.ts'
import { createSocketLink } from './socket-link.ts'

interface AnyLinkParts {
  readonly url: string
  readonly clock: Clock
  readonly fetch: typeof fetch
}

/** So many vain tries before it is asked whether only the web socket is blocked. */
const vainTries = 2

/** A web socket, and where a network blocks it the same by HTTP until one comes through. */
export function createAnyLink({ url, clock, fetch }: AnyLinkParts): Link {
  let running: { readonly hello: () => Hello; readonly events: LinkEvents } | null = null
  let tries = 0
  let isPolling = false

  const failed = (): void => {
    tries++
    if (tries >= vainTries && !isPolling) void fallBack()
  }
  const socket = createSocketLink({ url, clock, failed })
  const polling = createPollingLink({ url, clock, fetch })

  const fallBack = async (): Promise<void> => {
    const isThere = await probe(fetch, url)
    if (!isThere || !running || isPolling || tries < vainTries) return
    isPolling = true
    polling.start(running.hello, running.events)
  }

  const stopPolling = (): void => {
    isPolling = false
    polling.stop()
  }

  const overSocket = (events: LinkEvents): LinkEvents => ({
    ...events,
    up: () => {
      tries = 0
      if (isPolling) {
        stopPolling()
        events.down()
      }
      events.up()
    },
    down: () => {
      if (!isPolling) events.down()
    },
  })

  return {
    isTold: () => !isPolling,
    start: (hello, events) => {
      running = { hello, events }
      tries = 0
      socket.start(hello, overSocket(events))
    },
    stop: () => {
      running = null
      stopPolling()
      socket.stop()
    },
    renew: () => {
      if (isPolling) polling.renew()
      socket.renew()
    },
    ask: (question, message, limitMs) => (isPolling ? polling : socket).ask(question, message, limitMs),
  }
}
