import type { Clock } from '#client/sync/clock.ts'
import type { Link, LinkEvents, Question } from '#client/sync/link.ts'
import type { Follow } from '#shared/messages/follow.ts'
import type { Hello } from '#shared/messages/hello.ts'
import type { Tell } from '#shared/messages/tell.ts'
import type { FakeServer } from './fake-server.ts'

interface Letter {
  readonly what: string
  readonly deliver: () => void
}

/** A network between one phone and the server, moved by hand; everything crosses it as JSON text. */
export interface FakeLink extends Link {
  /** What is under way to the server, oldest first: what was asked. */
  readonly up: Letter[]
  /** What is under way to the phone. */
  readonly down: Letter[]
  readonly hello: () => Hello
  readonly plug: () => void
  readonly cut: () => void
  readonly renewals: () => number
  readonly events: () => LinkEvents
}

interface Waiting {
  readonly resolve: (answer: unknown) => void
  readonly reject: (why: Error) => void
}

export function createFakeLink(server: FakeServer, clock: Clock, { isTold = true } = {}): FakeLink {
  let events: LinkEvents | null = null
  let hello: () => Hello = () => {
    throw new Error('not started')
  }
  let isPlugged = false
  let renewals = 0
  const waiting = new Set<Waiting>()
  /** As the server has it: from when the question reaches it. */
  let followed: readonly string[] = []
  let unlisten: () => void = () => undefined

  const drop = (): void => {
    link.up.length = 0
    link.down.length = 0
    for (const { reject } of waiting) reject(new Error('link lost'))
    waiting.clear()
    unlisten()
  }
  const connect = (): void => {
    if (!isPlugged || !events) return
    followed = []
    unlisten = server.listen(tell => {
      if (isTold && followed.includes(tell.feed))
        link.down.push({ what: 'tell', deliver: () => events?.told(copy(tell) as Tell) })
    })
    events.up()
  }
  const link: FakeLink = {
    up: [],
    down: [],
    hello: () => hello(),
    isTold: () => isTold,
    renewals: () => renewals,
    events: () => events as LinkEvents,
    start: (makeHello, given) => {
      hello = makeHello
      events = given
      connect()
    },
    stop: () => {
      drop()
      events = null
    },
    renew: () => {
      renewals++
      drop()
      events?.down()
      connect()
    },
    plug: () => {
      if (isPlugged) return
      isPlugged = true
      connect()
    },
    cut: () => {
      isPlugged = false
      drop()
      events?.down()
    },
    ask: (question: Question, message: object, limitMs: number) => {
      if (!isPlugged) return Promise.reject(new Error('no link'))
      return new Promise((resolve, reject) => {
        const one: Waiting = { resolve, reject }
        waiting.add(one)
        clock.after(limitMs, () => {
          if (waiting.delete(one)) reject(new Error('no answer'))
        })
        const deliver = (): void => {
          if (question === 'follow') followed = (message as Follow).feeds.map(({ feed }) => feed)
          const answer = copy(server.answer(question, copy(message)))
          link.down.push({ what: question, deliver: () => waiting.delete(one) && resolve(answer) })
        }
        link.up.push({ what: question, deliver })
      })
    },
  }
  return link
}

const copy = (value: unknown): unknown => JSON.parse(JSON.stringify(value))
