import { useMemo, useState } from 'react'
import { opIdOf } from '#core/log/op.ts'
import type { OpId } from '#core/values/ids.ts'
import { heldById, isCorrection, lineOfOp } from '../../parts/history-line.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'

/** The last correction by another phone from a place in the history on, in one line, until it is put away. */
export function NewsLine({ from }: { readonly from: number }) {
  const history = useOuting(store => store.history)
  const outing = useOuting(store => store.outing)
  const own = useOuting(store => store.me?.device ?? null)
  const [seen, setSeen] = useState<OpId | null>(null)
  const found = useMemo(() => {
    const held = heldById(history)
    const last = history.slice(from).findLast(({ op }) => op.device !== own && isCorrection(op, held))
    return last ? { id: opIdOf(last.op), line: lineOfOp(last.op, outing, held) } : null
  }, [history, outing, own, from])
  if (found === null || found.id === seen) return null
  return (
    <p className="news spread">
      <span>{found.line}</span>
      <button type="button" className="button" onClick={() => setSeen(found.id)}>
        {say('close')}
      </button>
    </p>
  )
}
