import { useState } from 'react'
import type { BallId, LogId } from '#core/values/ids.ts'
import { remember, remembered } from '../../../device/remembered.ts'
import { type Aims, formatAims, parseAims } from './aims.ts'

/** The aims of a ball as this phone keeps them, beside the log and never in it; null while none are set. */
export function useAims(log: LogId | null, ball: BallId | null): [Aims | null, (aims: Aims) => void] {
  const [kept, setKept] = useState(() => parseAims(log && remembered(`aims-${log}`)))
  const keep = (aims: Aims): void => {
    if (log === null || ball === null) return
    const next = new Map(kept).set(ball, aims)
    remember(`aims-${log}`, formatAims(next))
    setKept(next)
  }
  return [(ball && kept.get(ball)) ?? null, keep]
}
