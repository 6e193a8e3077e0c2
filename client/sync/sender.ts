import { opIdOf } from '#core/log/op.ts'
import type { OpId } from '#core/values/ids.ts'
import { limits } from '#shared/limits.ts'
import { pushedAnswer } from './answers.ts'
import type { Contact } from './contact.ts'
import { nextFrame } from './frames.ts'
import type { HeldOp } from './held-op.ts'
import type { Keeper } from './keeper.ts'
import { isOwnName } from './log-store.ts'
import { isSoon, type Sent, sentChange } from './sent.ts'

export interface SenderParts {
  readonly keeper: Keeper
  readonly contact: Contact
  /** What may be sent now, in order; empty while nothing may. */
  readonly line: (tried: ReadonlySet<OpId>) => readonly HeldOp[]
  readonly rename: (taken: readonly OpId[]) => Promise<boolean>
  /** This phone has a new name, which the server has yet to hear. */
  readonly renamed: () => void
  /** Some were stored, and nothing more is to be sent now. */
  readonly emptied: () => void
}

/** Sends what waits, frame after frame, one under way at a time. */
export interface Sender {
  readonly kick: () => void
  /** A new connection: what was put off may be tried again. */
  readonly afresh: () => void
}

/** What a server put off is tried again after so long even where the link stays. */
const tryAgainMs = 60_000

export function createSender({ keeper, contact, line, rename, renamed, emptied }: SenderParts): Sender {
  const tried = new Set<OpId>()
  let isSending = false
  let isPaused = false
  let frameMost: number = limits.opsInPush

  const kick = (): void => {
    if (!isSending) void send()
  }

  const send = async (): Promise<void> => {
    isSending = true
    let stored = 0
    while (contact.isUp() && !isPaused) {
      const frame = nextFrame(line(tried), frameMost)
      if (frame.length === 0) break
      const sent = await push(frame)
      if (sent === null) break
      stored += sent.filter(({ verdict }) => verdict.kind === 'stored' || verdict.kind === 'already stored').length
    }
    isSending = false
    if (stored > 0 && contact.isUp()) emptied()
  }

  const push = async (frame: readonly HeldOp[]): Promise<readonly Sent[] | null> => {
    const answer = pushedAnswer.safeParse(await contact.ask('push', { ops: frame.map(({ text }) => text) }))
    if (!answer.success || answer.data.verdicts.length !== frame.length) {
      // A frame that a network never lets through may pass in smaller ones.
      frameMost = Math.max(1, Math.floor(frame.length / 2))
      if (contact.isUp()) contact.retry(kick)
      return null
    }
    frameMost = Math.min(limits.opsInPush, frameMost * 2)
    const sent = answer.data.verdicts.flatMap((verdict, index) => {
      const held = frame[index]
      return held ? [{ held, verdict }] : []
    })
    await weigh(sent)
    return sent
  }

  const weigh = async (sent: readonly Sent[]): Promise<void> => {
    const { record } = keeper.holding()
    const isOwnTaken = ({ held, verdict }: Sent): boolean =>
      isOwnName(record, held.op.device) && verdict.kind === 'refused' && verdict.code === 'identity taken'
    const taken = sent.filter(isOwnTaken)
    const isRenamed = taken.length > 0 && (await rename(taken.map(({ held }) => opIdOf(held.op))))
    const noted = isRenamed ? sent.filter(one => !isOwnTaken(one)) : sent
    for (const { held, verdict } of noted) if (verdict.kind === 'later' && !isSoon(verdict)) putOff(opIdOf(held.op))
    await keeper.change(holding => sentChange(holding, noted))
    if (sent.some(({ verdict }) => isSoon(verdict))) pause()
    else contact.succeeded()
    if (isRenamed) renamed()
  }

  const putOff = (id: OpId): void => {
    if (tried.size === 0) {
      contact.later(tryAgainMs, () => {
        tried.clear()
        kick()
      })
    }
    tried.add(id)
  }

  const pause = (): void => {
    isPaused = true
    contact.retry(() => {
      isPaused = false
      kick()
    })
  }

  return {
    kick,
    afresh: () => {
      tried.clear()
      isPaused = false
    },
  }
}
