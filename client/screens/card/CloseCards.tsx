import { closeBallFacts, reopenBallFacts } from '#core/outing/acts.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'

/** The desk's close, once it is asked for. */
export function CloseCards({ outing, group }: { readonly outing: Outing; readonly group: Group }) {
  const isDesk = useOuting(store => store.me?.role === 'desk')
  const { isWorking, work } = useWork()
  const isClosed = group.balls.every(ball => outing.cards.get(ball)?.isClosed)
  const toClose = group.balls.filter(ball => !outing.cards.get(ball)?.isClosed)
  return (
    <div className="stack">
      {isClosed && <p>{say('card-is-closed')}</p>}
      {isDesk && !isClosed && (
        <>
          <p className="quiet">{say('card-close-hint')}</p>
          <button
            type="button"
            className="button loud"
            disabled={isWorking || closeBallFacts(outing, toClose).length === 0}
            onClick={() => work(() => act('close cards', closeBallFacts(outing, toClose)))}
          >
            {say('card-close')}
          </button>
        </>
      )}
      {isDesk && isClosed && (
        <button
          type="button"
          className="button"
          disabled={isWorking}
          onClick={() => work(() => act('open cards', reopenBallFacts(group.balls)))}
        >
          {say('card-open')}
        </button>
      )}
    </div>
  )
}
