import type { Hello } from '#shared/messages/hello.ts'
import type { Clock } from './clock.ts'
import type { Link, LinkEvents, Question } from './link.ts'

interface PollingLinkParts {
  readonly url: string
  readonly clock: Clock
  readonly fetch: typeof fetch
}

const lookInEveryMs = 4_000
const probeLimitMs = 3_000

/** The same questions by HTTP, for networks that block web sockets: it looks in every few seconds. */
export function createPollingLink({ url, clock, fetch }: PollingLinkParts): Link {
  let running: { readonly hello: () => Hello; readonly events: LinkEvents } | null = null
  let callOff: () => void = () => undefined

  const look = async (): Promise<void> => {
    const run = running
    if (!run) return
    const isThere = await probe(fetch, url)
    if (running !== run) return
    callOff = clock.after(lookInEveryMs, () => void look())
    if (isThere) run.events.up()
    else run.events.down()
  }

  const lookNow = (): void => {
    callOff()
    void look()
  }

  return {
    isTold: () => false,
    start: (hello, events) => {
      running = { hello, events }
      lookNow()
    },
    stop: () => {
      running = null
      callOff()
    },
    renew: () => {
      running?.events.down()
      lookNow()
    },
    ask: async (question, message, limitMs) => {
      if (!running) throw new Error('no link')
      return askByHttp({ fetch, url, hello: running.hello() }, question, message, limitMs)
    },
  }
}

/** Whether our own server answers: a portal of the network in between does not count. */
export async function probe(get: typeof fetch, url: string): Promise<boolean> {
  try {
    const response = await get(`${url}/api/probe`, { signal: AbortSignal.timeout(probeLimitMs), cache: 'no-store' })
    const answer: unknown = await response.json()
    return typeof answer === 'object' && answer !== null && 'product' in answer && answer.product === 'six-threes'
  } catch {
    return false
  }
}

export interface Caller {
  readonly fetch: typeof fetch
  readonly url: string
  readonly hello: Hello
}

/** One question by HTTP. Rejects when no JSON comes back in time. */
export async function askByHttp(
  caller: Caller,
  question: Question,
  message: object,
  limitMs: number,
): Promise<unknown> {
  const { log, device, key, invite } = caller.hello
  const headers: Record<string, string> = {
    Authorization: `Bearer ${device}:${key}`,
    'X-Protocol': String(caller.hello.protocol),
  }
  if (invite) headers['X-Invite'] = `${invite.id}:${invite.secret}`
  const base = `${caller.url}/api/logs/${log}`
  const signal = AbortSignal.timeout(limitMs)
  const shared = { headers, signal, cache: 'no-store' } as const
  if (question === 'pull') {
    const { feed, after } = message as { feed: string; after: number }
    return readJson(await caller.fetch(`${base}/ops?feed=${encodeURIComponent(feed)}&after=${after}`, shared))
  }
  if (question === 'askers' || question === 'offers') return readJson(await caller.fetch(`${base}/${question}`, shared))
  headers['Content-Type'] = 'application/json'
  const path = question === 'push' ? 'ops' : question
  return readJson(await caller.fetch(`${base}/${path}`, { ...shared, method: 'POST', body: JSON.stringify(message) }))
}

const readJson = (response: Response): Promise<unknown> => response.json()
