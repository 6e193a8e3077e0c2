import { useEffect, useEffectEvent, useState } from 'react'
import type { LogId } from '#core/values/ids.ts'
import { type AskFault, type AskProgress, askByWords, lookAtTicket } from '../../state/asking-in.ts'
import type { JoinFault } from '../../state/invite-meeting.ts'
import { joinOuting } from '../../state/joining.ts'

/** Where a request by three words stands. */
export type Asking =
  | { readonly kind: 'typing' }
  | { readonly kind: 'fault'; readonly why: AskFault }
  | { readonly kind: 'waiting' | 'no server'; readonly ticket: string; readonly name: string }
  | { readonly kind: 'not now' | 'gone' | 'joining' }
  | { readonly kind: 'join fault'; readonly why: JoinFault }

const lookEveryMs = 2_000

/** Asks by three words, looks every two seconds whether somebody has tapped, and then joins by the invite that came. */
export function useAsking(onIn: (log: LogId, name: string) => void) {
  const [asking, setAsking] = useState<Asking>({ kind: 'typing' })
  const ticket = 'ticket' in asking ? asking.ticket : null

  const ask = async (words: string, name: string): Promise<void> => {
    const asked = await askByWords(words, name)
    setAsking(asked.ok ? { kind: 'waiting', ticket: asked.value, name } : { kind: 'fault', why: asked.error })
  }

  const join = async (link: string, name: string): Promise<void> => {
    setAsking({ kind: 'joining' })
    const joined = await joinOuting(link, name)
    if (joined.ok) onIn(joined.value, name)
    else setAsking({ kind: 'join fault', why: joined.error })
  }

  const heed = useEffectEvent(async (progress: AskProgress): Promise<void> => {
    if (!('ticket' in asking)) return
    if (progress.kind === 'let in') await join(progress.link, asking.name)
    else if (progress.kind === 'waiting' || progress.kind === 'no server') {
      if (progress.kind !== asking.kind) setAsking({ ...asking, kind: progress.kind })
    } else setAsking({ kind: progress.kind })
  })

  useEffect(() => {
    if (ticket === null) return
    let isWanted = true
    let timer: ReturnType<typeof setTimeout>
    const look = async (): Promise<void> => {
      const progress = await lookAtTicket(ticket)
      if (!isWanted) return
      await heed(progress)
      if (isWanted) timer = setTimeout(() => void look().catch(reportError), lookEveryMs)
    }
    timer = setTimeout(() => void look().catch(reportError), lookEveryMs)
    return () => {
      isWanted = false
      clearTimeout(timer)
    }
  }, [ticket])

  return { asking, ask, stop: () => setAsking({ kind: 'typing' }) }
}
