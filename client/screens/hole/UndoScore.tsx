import { useMemo } from 'react'
import type { HoleScore, PlayedHole } from '#core/card/score.ts'
import { opIdOf, withdrawn } from '#core/log/op.ts'
import { parseKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { DeviceId, OpId } from '#core/values/ids.ts'
import { useWork } from '../../parts/use-work.ts'
import { undo } from '../../state/actions.ts'
import type { HeldOp } from '../../state/outing-store.ts'
import { useOuting } from '../../state/use-outing.ts'
import { formatScore } from '../../words/figures.ts'
import { say } from '../../words/say.ts'

/** Takes back the score that this phone has just put in on the hole. */
export function UndoScore({ at }: { readonly at: PlayedHole }) {
  const history = useOuting(store => store.history)
  const outing = useOuting(store => store.outing)
  const own = useOuting(store => store.me?.device ?? null)
  const last = useMemo(() => lastScore(history, outing, own, at), [history, outing, own, at])
  const { isWorking, work } = useWork()
  return (
    <button
      type="button"
      className="button"
      disabled={last === null || isWorking}
      onClick={() => last && work(() => undo(last.id))}
    >
      {last ? say('undo-score', { what: last.what }) : say('undo')}
    </button>
  )
}

interface LastScore {
  readonly id: OpId
  readonly what: string
}

/** This phone's last act, where it is a score of this hole. */
function lastScore(
  history: readonly HeldOp[],
  outing: Outing | null,
  own: DeviceId | null,
  at: PlayedHole,
): LastScore | null {
  const last = history.findLast(({ op }) => op.device === own)?.op
  if (!last || last.act === 'undone') return null
  for (const { key, value } of last.facts) {
    const parts = parseKey(key)
    if (parts?.kind !== 'score' || parts.hole !== at.hole || parts.lap !== at.lap || parts.ball === null) continue
    const score = value === withdrawn ? say('clear') : formatScore(value as HoleScore)
    return { id: opIdOf(last), what: say('score-key', { player: outing?.balls.get(parts.ball)?.name ?? '', score }) }
  }
  return null
}
