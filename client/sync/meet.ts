import { err, ok, type Result } from '#core/values/result.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import { type DownOp, exchangedAnswer, pulledAnswer } from './answers.ts'

/** What a server gives a phone that comes for the first time. */
export interface Meeting {
  readonly era: string
  readonly upTo: number
  readonly ops: readonly DownOp[]
}

/** Asks a question of a server; rejects when none answers. */
export type AskServer = (question: 'exchange' | 'pull', message: object) => Promise<unknown>

/** All of a log, by the invite that is being shown. */
export async function meet(ask: AskServer): Promise<Result<Meeting, Stranger | 'no server'>> {
  try {
    const first = exchangedAnswer.safeParse(await ask('exchange', { feed: 'all', here: [] }))
    if (!first.success || first.data.kind === 'fault') return err('no server')
    if (first.data.kind === 'stranger') return err(first.data.why)
    const { era, part } = first.data
    return await readOn(ask, { era, upTo: part.upTo, ops: part.ops }, part.more)
  } catch {
    return err('no server')
  }
}

async function readOn(ask: AskServer, met: Meeting, more: boolean): Promise<Result<Meeting, Stranger | 'no server'>> {
  if (!more) return ok(met)
  const next = pulledAnswer.safeParse(await ask('pull', { feed: 'all', after: met.upTo }))
  if (!next.success || next.data.kind === 'fault') return err('no server')
  if (next.data.kind === 'stranger') return err(next.data.why)
  const { part } = next.data
  return readOn(ask, { ...met, upTo: part.upTo, ops: [...met.ops, ...part.ops] }, part.more)
}
