import type { Link, LinkEvents, Question } from '#client/sync/link.ts'
import type { Link as ServerLink } from '#server/live/link.ts'
import type { Hello } from '#shared/messages/hello.ts'
import type { Air } from './air.ts'
import type { Server } from './server.ts'
import type { Life, World } from './world.ts'

export interface LinkParts {
  readonly world: World
  readonly server: Server
  readonly air: Air
  /** The page's. */
  readonly life: Life
  /** What a page of an older protocol says of itself. */
  readonly protocol: () => number | null
  /** What this phone sends, and what it gets to hear, before it does. */
  readonly watch: Watch
}

export interface Watch {
  readonly sends: (question: Question, message: object) => void
  readonly hears: (question: Question | 'tell' | 'offered', sent: object, heard: unknown) => void
}

/** So long a connection that carries nothing looks alive. */
const heartbeatMs = 20_000
const lookInEveryMs = 4_000

/** A way to the server as client/sync has it: a web socket that keeps order, or HTTP that looks in. */
export interface SimLink extends Link {
  /** The network changes under it: what there is ends, and both ends know. */
  readonly cut: () => void
  /** The page ends without a word; the server may take a while to see it. */
  readonly die: () => void
}

interface Running {
  readonly hello: () => Hello
  readonly events: LinkEvents
}

/** One connection, or one run of looking in by HTTP. */
interface Connection {
  readonly isSocket: boolean
  isOver: boolean
  readonly end: ServerLink | null
  /** The server's process at its other end. */
  readonly process: Life | null
  readonly hello: Hello
  /** Before these times nothing later arrives: a socket keeps order. */
  upAt: number
  downAt: number
  readonly waiting: Set<(why: Error) => void>
}

export function createLink({ world, server, air, life, protocol, watch }: LinkParts): SimLink {
  let running: Running | null = null
  let connection: Connection | null = null
  let callOff: () => void = () => undefined

  const hello = (run: Running): Hello => {
    const own = run.hello()
    return { ...own, protocol: protocol() ?? own.protocol }
  }
  const isOpen = (): boolean => !air.isAway && !air.isSilent && !air.isStrange && server.life() !== null
  const delay = (): number => world.dice.between(air.fastestMs, air.slowestMs)

  const tryLater = (delayMs: number): void => {
    callOff()
    callOff = world.after(delayMs, life, connect)
  }

  const connect = (): void => {
    if (!running) return
    const run = running
    callOff()
    callOff = world.after(delay() * 2, life, () => {
      if (running !== run) return
      if (!isOpen()) return tryLater(world.dice.between(500, 5_000))
      connection = air.isPolling ? lookIn(run) : openSocket(run)
      run.events.up()
    })
  }

  /** HTTP: no connection, only the server there or not, looked for every few seconds. */
  const lookIn = (run: Running): Connection => {
    const made = newConnection({ isSocket: false, hello: hello(run), end: null })
    const again = (): void => {
      if (made.isOver) return
      callOff = world.after(lookInEveryMs, life, again)
      if (!air.isPolling) drop(made, 500)
      else if (isOpen()) run.events.up()
      else run.events.down()
    }
    callOff = world.after(lookInEveryMs, life, again)
    return made
  }

  const openSocket = (run: Running): Connection => {
    const own = hello(run)
    const shown = server.shown(own)
    const end: ServerLink = {
      shown,
      tell: message => down(made, 'tell', () => run.events.told(copy(message)), message),
      offered: message => down(made, 'offered', () => run.events.offered(copy(message)), message),
      asked: () => down(made, null, run.events.asked),
      part: why => {
        down(made, null, () => run.events.parting({ why }))
        down(made, null, () => drop(made, world.dice.between(500, 5_000)))
      },
    }
    const made = newConnection({ isSocket: true, hello: own, end })
    return made
  }

  const newConnection = (own: Pick<Connection, 'isSocket' | 'hello' | 'end'>): Connection => ({
    ...own,
    isOver: false,
    process: server.life(),
    upAt: 0,
    downAt: 0,
    waiting: new Set(),
  })

  /** Both ends know that it is over; the phone's tries again after so long. */
  const drop = (one: Connection, againAfterMs: number | null): void => {
    if (one.isOver) return
    one.isOver = true
    if (one.end && one.process === server.life()) server.leave(one.end)
    for (const reject of one.waiting) reject(new Error('link lost'))
    one.waiting.clear()
    if (connection !== one) return
    connection = null
    running?.events.down()
    if (againAfterMs !== null) tryLater(againAfterMs)
  }

  /** What a silent network swallowed shows when the heartbeat fails. */
  const swallowed = (one: Connection): void => {
    if (one.isSocket) world.after(heartbeatMs, life, () => drop(one, world.dice.between(500, 5_000)))
  }

  const up = (one: Connection, deliver: () => void): void => {
    const at = Math.max(one.isSocket ? one.upAt : 0, world.now() + delay())
    one.upAt = at
    world.after(at - world.now(), one.process ?? life, () => {
      if (one.isSocket && one.isOver) return
      if (air.isSilent || air.isAway) swallowed(one)
      else deliver()
    })
  }

  const down = (one: Connection, what: 'tell' | 'offered' | null, deliver: () => void, message: object = {}): void => {
    const at = Math.max(one.isSocket ? one.downAt : 0, world.now() + delay())
    one.downAt = at
    world.after(at - world.now(), life, () => {
      if (one.isOver) return
      if (air.isSilent || air.isAway) return swallowed(one)
      if (what) watch.hears(what, {}, message)
      deliver()
    })
  }

  const ask = (one: Connection, question: Question, message: object, limitMs: number): Promise<unknown> => {
    watch.sends(question, message)
    return new Promise((resolve, reject) => {
      const give = (outcome: () => void): void => {
        one.waiting.delete(reject)
        outcome()
      }
      one.waiting.add(reject)
      world.after(limitMs, life, () => give(() => reject(new Error('no answer'))))
      if (air.isStrange) {
        down(one, null, () => give(() => resolve('<html>Please pay for this network</html>')))
        return
      }
      const deliver = (): void => {
        const answered = server.call(one.hello, one.end, question, copy(message))
        const process = server.life()
        void answered?.then(answer => {
          // A process that has ended meanwhile answers nobody.
          if (process?.isOver !== false) return
          if (one.end && one.isOver) server.leave(one.end)
          if (!one.isSocket && air.isRough && world.dice.chance(0.2)) return
          down(one, null, () =>
            give(() => {
              watch.hears(question, message, answer)
              resolve(copy(answer))
            }),
          )
        })
      }
      up(one, deliver)
      if (!one.isSocket && air.isRough && world.dice.chance(0.3)) up(one, deliver)
    })
  }

  return {
    isTold: () => connection?.isSocket ?? !air.isPolling,
    start: (makeHello, events) => {
      running = { hello: makeHello, events }
      connect()
    },
    stop: () => {
      running = null
      callOff()
      if (connection) drop(connection, null)
    },
    renew: () => {
      if (connection) drop(connection, null)
      connect()
    },
    ask: (question, message, limitMs) =>
      connection ? ask(connection, question, message, limitMs) : Promise.reject(new Error('no link')),
    die: () => {
      const one = connection
      if (!one) return
      one.isOver = true
      connection = null
      const { end, process } = one
      if (end && process) world.after(world.dice.pick([0, heartbeatMs]), process, () => server.leave(end))
    },
    cut: () => {
      if (connection) drop(connection, world.dice.between(500, 5_000))
    },
  }
}

const copy = (value: unknown): unknown => JSON.parse(JSON.stringify(value))
