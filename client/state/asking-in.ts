import * as z from 'zod/mini'
import type { InviteId, LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { inviteId, logId, secretText } from '#shared/atoms.ts'
import { formatJoinLink } from './join-link.ts'
import { pageFetch } from './open-outing.ts'

/*
 * A phone that is in nowhere yet asks to be let in by three words. Its ticket stays in the page's memory: a page that is
 * opened again asks again.
 */

export const askFaults = ['words unknown', 'too many', 'busy', 'no server', 'older server'] as const
export type AskFault = (typeof askFaults)[number]

export type AskProgress =
  | { readonly kind: 'waiting' }
  /** With the link to join by. */
  | { readonly kind: 'let in'; readonly link: string }
  | { readonly kind: 'not now' | 'gone' | 'no server' }

const askLimitMs = 8_000

const fault = z.object({ kind: z.literal('fault') })
const askedAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('asking'), ticket: secretText }),
  z.object({ kind: z.literal('not asking'), why: z.catch(z.enum(['words unknown', 'too many', 'busy']), 'busy') }),
  fault,
])
const waitedAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('waiting') }),
  z.object({ kind: z.literal('let in'), log: logId, invite: z.object({ id: inviteId, secret: secretText }) }),
  z.object({ kind: z.literal('not let in'), why: z.catch(z.enum(['not now', 'gone', 'busy']), 'gone') }),
  fault,
])

/** Opens a request; the ticket asks what has come of it. */
export async function askByWords(words: string, name: string): Promise<Result<string, AskFault>> {
  const answer = askedAnswer.safeParse(await post('ask', { words, name }))
  if (!answer.success) return err('no server')
  if (answer.data.kind === 'fault') return err('older server')
  return answer.data.kind === 'asking' ? ok(answer.data.ticket) : err(answer.data.why)
}

/** What has come of a request. */
export async function lookAtTicket(ticket: string): Promise<AskProgress> {
  const answer = waitedAnswer.safeParse(await post('wait', { ticket }))
  if (!answer.success || answer.data.kind === 'fault') return { kind: 'no server' }
  switch (answer.data.kind) {
    case 'waiting':
      return { kind: 'waiting' }
    case 'let in': {
      const { log, invite } = answer.data as { log: LogId; invite: { id: InviteId; secret: string } }
      return { kind: 'let in', link: formatJoinLink(`${location.origin}${location.pathname}`, { log, invite }) }
    }
    case 'not let in':
      return { kind: answer.data.why === 'busy' ? 'no server' : answer.data.why }
  }
}

/** Null where no answer of JSON comes. */
async function post(what: 'ask' | 'wait', message: object): Promise<unknown> {
  try {
    const response = await pageFetch(`${location.origin}/api/${what}`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(message),
      cache: 'no-store',
      signal: AbortSignal.timeout(askLimitMs),
    })
    return await response.json()
  } catch {
    return null
  }
}
