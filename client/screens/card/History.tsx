import { useMemo, useState } from 'react'
import { opIdOf } from '#core/log/op.ts'
import type { DeviceId, OpId } from '#core/values/ids.ts'
import { heldById, lineOfOp } from '../../parts/history-line.ts'
import { isConcession } from '../../parts/note-line.ts'
import { useWork } from '../../parts/use-work.ts'
import { undo } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { formatTime } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'

interface Line {
  readonly id: OpId
  readonly device: DeviceId
  readonly at: number
  readonly text: string
  readonly isFirst: boolean
  /** A concession cannot be taken back. */
  readonly isFinal: boolean
}

const shownAtFirst = 12

/** Every act as one line, the newest first; one's own last act can be undone. */
export function History() {
  const history = useOuting(store => store.history)
  const outing = useOuting(store => store.outing)
  const own = useOuting(store => store.me?.device ?? null)
  const [isAll, setAll] = useState(false)
  const lines = useMemo((): readonly Line[] => {
    const held = heldById(history)
    return history
      .map(({ op }) => ({
        id: opIdOf(op),
        device: op.device,
        at: op.at,
        text: lineOfOp(op, outing, held),
        isFirst: op.n === 1,
        isFinal: isConcession(op),
      }))
      .reverse()
  }, [history, outing])
  const ownLast = lines.find(({ device, isFirst }) => device === own && !isFirst)?.id ?? null
  return (
    <section className="section" aria-label={say('history-heading')}>
      <h2>{say('history-heading')}</h2>
      {lines.length === 0 && <p className="quiet">{say('history-empty')}</p>}
      <ol className="lines">
        {(isAll ? lines : lines.slice(0, shownAtFirst)).map(line => (
          <HistoryLine key={line.id} line={line} canUndo={line.id === ownLast && !line.isFinal} />
        ))}
      </ol>
      {!isAll && lines.length > shownAtFirst && (
        <button type="button" className="button" onClick={() => setAll(true)}>
          {say('history-more', { n: lines.length })}
        </button>
      )}
    </section>
  )
}

function HistoryLine({ line, canUndo }: { readonly line: Line; readonly canUndo: boolean }) {
  const { isWorking, work } = useWork()
  const [isLeft, setLeft] = useState(false)
  const undoLine = async (): Promise<void> => {
    const left = await undo(line.id)
    setLeft(left.length > 0)
  }
  return (
    <li className="spread">
      <span>
        <span className="quiet">{formatTime(line.at)}</span> {line.text}
        {line.isFinal && <span className="quiet"> ({say('history-final')})</span>}
        {isLeft && <b> {say('history-left')}</b>}
      </span>
      {canUndo && (
        <button
          type="button"
          className="button"
          aria-label={say('history-undo', { line: line.text })}
          disabled={isWorking}
          onClick={() => work(undoLine)}
        >
          {say('history-undo-short')}
        </button>
      )}
    </li>
  )
}
