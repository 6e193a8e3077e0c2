import type * as z from 'zod/mini'
import { type Admit, admitSchema } from '#shared/messages/admit.ts'
import { askersSchema } from '#shared/messages/askers.ts'
import { deleteSchema } from '#shared/messages/delete.ts'
import { type Exchange, exchangeSchema } from '#shared/messages/exchange.ts'
import type { WireFault } from '#shared/messages/fault.ts'
import { type Follow, followSchema } from '#shared/messages/follow.ts'
import { offersSchema } from '#shared/messages/offers.ts'
import { type Pull, pullSchema } from '#shared/messages/pull.ts'
import { type Push, pushSchema } from '#shared/messages/push.ts'
import type { Verdict } from '#shared/messages/verdict.ts'
import { type AllotWords, wordsSchema } from '#shared/messages/words.ts'
import { pathOfIssue } from '#shared/op.ts'
import type { Shown } from '../access/shown.ts'
import type { Limiter } from './limiter.ts'
import type { Link } from './link.ts'
import type { Room } from './room.ts'
import type { Welcome } from './welcome.ts'

/** Every message a phone can send, with its schema; one that is missing here does not exist. */
export const upSchemas = {
  follow: followSchema,
  pull: pullSchema,
  exchange: exchangeSchema,
  push: pushSchema,
  words: wordsSchema,
  askers: askersSchema,
  admit: admitSchema,
  offers: offersSchema,
  delete: deleteSchema,
} as const
export type UpEvent = keyof typeof upSchemas

export const isUpEvent = (event: string): event is UpEvent => Object.hasOwn(upSchemas, event)

/** Who asks, and from where. Only a socket has a link. */
export interface Caller {
  readonly shown: Shown
  readonly address: string
  readonly link: Link | null
}

export const fault = (code: WireFault['code'], path: string): WireFault => ({ kind: 'fault', code, path })

/** Counts a question by who asks; what a stranger asks counts on its address, whatever way it came. */
export type Counted = <T>(caller: Caller, answered: () => Promise<T>, busy: T) => Promise<T>

export const createCounted =
  (limiter: Limiter): Counted =>
  async (caller, answered, busy) => {
    if (!(await limiter.takeMessage(nameOf(caller.shown)))) return busy
    const answer = await answered()
    return !isToStranger(answer) || (await limiter.takeStranger(caller.address)) ? answer : busy
  }

export interface DispatchOptions {
  readonly room: Room
  readonly welcome: Welcome
  readonly counted: Counted
  readonly failed: (error: unknown) => void
}

/** The one way in: every message is checked, counted, handled, and answered once, whatever it is. */
export type Dispatch = (caller: Caller, event: string, message: unknown) => Promise<unknown>

export function createDispatch({ room, welcome, counted, failed }: DispatchOptions): Dispatch {
  return async (caller, event, message) => {
    try {
      if (!isUpEvent(event)) return fault('wrong shape', 'event')
      const parsed = (upSchemas[event] as z.ZodMiniType).safeParse(message)
      if (!parsed.success) return fault('wrong shape', pathOfIssue(parsed.error.issues[0]))
      const answered = () => ask({ room, welcome }, caller, event, parsed.data)
      return await counted(caller, answered, busyAnswer(event, parsed.data))
    } catch (error) {
      failed(error)
      return fault('internal', '')
    }
  }
}

type Rooms = Pick<DispatchOptions, 'room' | 'welcome'>

function ask({ room, welcome }: Rooms, caller: Caller, event: UpEvent, message: unknown): Promise<unknown> {
  const { shown, link } = caller
  switch (event) {
    case 'follow':
      return link ? room.follow(link, message as Follow) : Promise.resolve(fault('wrong shape', 'event'))
    case 'pull':
      return room.pull(shown, message as Pull)
    case 'exchange':
      return room.exchange(shown, message as Exchange)
    case 'push':
      return room.push(shown, message as Push)
    case 'words':
      return welcome.words(shown, message as AllotWords)
    case 'askers':
      return welcome.askers(shown)
    case 'admit':
      return welcome.admit(shown, message as Admit)
    case 'offers':
      return room.offers(shown)
    case 'delete':
      return room.delete(shown)
  }
}

/** Nothing is wrong with what was sent: it is to come again a little later. */
const busyAnswer = (event: UpEvent, message: unknown): unknown =>
  event === 'push'
    ? { verdicts: (message as Push).ops.map(() => ({ kind: 'later', reason: 'busy' })) }
    : { kind: 'stranger', why: 'busy' }

export const nameOf = ({ log, device, keyHash }: Shown): string => `${log}/${device}/${keyHash}`

/** A push of a stranger's has verdicts like any other: none of its ops is known to be anybody's. */
function isToStranger(answer: unknown): boolean {
  const { kind, verdicts } = answer as { readonly kind?: unknown; readonly verdicts?: readonly Verdict[] }
  if (verdicts === undefined) return kind === 'stranger'
  return verdicts.every(verdict => verdict.kind === 'later' && verdict.reason === 'key unknown')
}
