import { useMemo } from 'react'
import { opIdOf } from '#core/log/op.ts'
import { parseKey } from '#core/outing/keys.ts'
import type { DeviceId, OpId } from '#core/values/ids.ts'
import { useWork } from '../../parts/use-work.ts'
import { undo } from '../../state/actions.ts'
import type { HeldOp } from '../../state/outing-store.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'

/** Takes back what this phone has just drawn on the hole. */
export function UndoSketch({ hole }: { readonly hole: number }) {
  const history = useOuting(store => store.history)
  const own = useOuting(store => store.me?.device ?? null)
  const last = useMemo(() => lastDrawn(history, own, hole), [history, own, hole])
  const { isWorking, work } = useWork()
  return (
    <button
      type="button"
      className="button"
      disabled={last === null || isWorking}
      onClick={() => last && work(() => undo(last))}
    >
      {say('sketch-undo')}
    </button>
  )
}

/** This phone's last act, where it drew on this hole. */
function lastDrawn(history: readonly HeldOp[], own: DeviceId | null, hole: number): OpId | null {
  const last = history.findLast(({ op }) => op.device === own)?.op
  if (!last || last.act === 'undone') return null
  const parts = last.facts.map(({ key }) => parseKey(key))
  const isDrawn = parts.some(each => (each?.kind === 'green' || each?.kind === 'shape') && each.hole === hole)
  return isDrawn ? opIdOf(last) : null
}
