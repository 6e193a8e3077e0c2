import { useLocation } from 'wouter'
import type { NewFact } from '#core/outing/acts.ts'
import type { Group } from '#core/outing/outing.ts'
import type { LogId } from '#core/values/ids.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import { holePath } from '../../paths.ts'
import { extraHole, extraHoleFacts, nextExtraHole } from './extra-hole.ts'

interface Props {
  readonly log: LogId
  readonly group: Group
  readonly label: string
  readonly ask: string
  /** The way to end it here: its words, the act's name and what it writes; null where only playing on does. */
  readonly end: { readonly text: string; readonly act: string; readonly facts: readonly NewFact[] } | null
  /** Written with the extra hole. */
  readonly withHole?: readonly NewFact[]
}

/** Asked after the last hole: end it here, or play one hole more, to which the page goes. */
export function PlayOnOr({ log, group, label, ask, end, withHole = [] }: Props) {
  const [, go] = useLocation()
  const { isWorking, work } = useWork()
  const next = nextExtraHole(group)
  if (!next) return null
  const extra = extraHole(group, next.hole)
  const playOn = async () => {
    await act('extra hole', [...extraHoleFacts(group, extra), ...withHole])
    go(holePath(log, extra))
  }
  return (
    <section className="notice stack" aria-label={label}>
      <p>{ask}</p>
      <div className="pair">
        {end && (
          <button
            type="button"
            className="button grow"
            disabled={isWorking}
            onClick={() => work(() => act(end.act, end.facts))}
          >
            {end.text}
          </button>
        )}
        <button type="button" className="button grow" disabled={isWorking} onClick={() => work(playOn)}>
          {say('level-end-on', { hole: extra.hole })}
        </button>
      </div>
    </section>
  )
}
