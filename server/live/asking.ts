import type * as z from 'zod/mini'
import { type Ask, type AskedIn, askSchema, type Wait, type Waited, waitSchema } from '#shared/messages/ask.ts'
import { pathOfIssue } from '#shared/op.ts'
import type { AskState, Door, Place } from '../access/door.ts'
import { fault } from './dispatch.ts'
import type { Limiter } from './limiter.ts'

/** What a phone that is in nowhere may say, with its schema. */
export const askSchemas = { ask: askSchema, wait: waitSchema } as const
export type AskEvent = keyof typeof askSchemas

export interface AskingOptions {
  readonly door: Door
  readonly limiter: Limiter
  readonly changed: (place: Place) => void
  readonly failed: (error: unknown) => void
}

/** Every message is checked, counted and answered once, whatever it is. */
export type Asking = (address: string, event: AskEvent, message: unknown) => Promise<unknown>

export function createAsking({ door, limiter, changed, failed }: AskingOptions): Asking {
  /** Right words never count, so a field behind one address is let in however many it is. */
  const ask = async (address: string, { words, name }: Ask): Promise<AskedIn> => {
    if (!(await limiter.mayGuess(address))) return { kind: 'not asking', why: 'too many' }
    const place = door.find(words)
    if (!place) {
      await limiter.takeGuess(address)
      return { kind: 'not asking', why: 'words unknown' }
    }
    const opened = door.open(place, name)
    if (!opened) return { kind: 'not asking', why: 'busy' }
    changed(place)
    return { kind: 'asking', ...opened }
  }

  const wait = async (address: string, { ticket }: Wait): Promise<Waited> => {
    const waited = waitedOf(door.stateOf(ticket))
    if (waited.kind !== 'not let in' || waited.why !== 'gone') return waited
    return (await limiter.takeStranger(address)) ? waited : { kind: 'not let in', why: 'busy' }
  }

  return async (address, event, message) => {
    try {
      const parsed = (askSchemas[event] as z.ZodMiniType).safeParse(message)
      if (!parsed.success) return fault('wrong shape', pathOfIssue(parsed.error.issues[0]))
      return event === 'ask' ? await ask(address, parsed.data as Ask) : await wait(address, parsed.data as Wait)
    } catch (error) {
      failed(error)
      return fault('internal', '')
    }
  }
}

const waitedOf = (state: AskState): Waited =>
  state.kind === 'not now' || state.kind === 'gone' ? { kind: 'not let in', why: state.kind } : state
