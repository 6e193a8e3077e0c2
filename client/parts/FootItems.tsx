import { opIdOf } from '#core/log/op.ts'
import { forgetRefused, retryNow, takeOffered } from '../state/actions.ts'
import { useOuting } from '../state/use-outing.ts'
import { say, sayCode } from '../words/say-any.ts'
import { AtTheDoor } from './AtTheDoor.tsx'
import { fire } from './fire.ts'
import { lineOfOp } from './history-line.ts'
import { whoOf } from './who-of.ts'

/** Who asks to be let in, what was put off, what was not taken, and what others hand in to the desk. */
export function FootItems() {
  const { putOff, stranger } = useOuting(({ foot }) => foot)
  return (
    <div className="foot-items">
      <AtTheDoor />
      {stranger && <StrangerItem why={stranger} />}
      {putOff.map(({ reason, count }) => (
        <p key={reason} className="foot-item">
          {say('foot-waiting', { n: count, reason: sayCode('later-', reason, 'later-busy') })}
        </p>
      ))}
      <RefusedItems />
      <OfferedItems />
    </div>
  )
}

function StrangerItem({ why }: { readonly why: string }) {
  return (
    <p className="foot-item">
      <span>{sayCode('stranger-', why, 'stranger-title')}</span>
      <button type="button" className="button" onClick={retryNow}>
        {say('foot-retry')}
      </button>
    </p>
  )
}

function RefusedItems() {
  const refused = useOuting(({ foot }) => foot.refused)
  const outing = useOuting(store => store.outing)
  return refused.map(({ op, code, path }) => {
    const what = lineOfOp(op, outing, null)
    const reason = sayCode('refused-', code, 'refused-other', { path })
    return (
      <p key={opIdOf(op)} className="foot-item">
        <span>{say('foot-refused', { what, reason })}</span>
        <button
          type="button"
          className="button"
          aria-label={say('foot-forget', { what })}
          onClick={() => fire(forgetRefused(opIdOf(op)))}
        >
          {say('foot-forget-short')}
        </button>
      </p>
    )
  })
}

function OfferedItems() {
  const offered = useOuting(({ foot }) => foot.offered)
  const outing = useOuting(store => store.outing)
  return offered.map(({ text, op, carrier }) => {
    const what = lineOfOp(op, outing, null)
    return (
      <p key={text} className="foot-item">
        <span>{say('foot-offered', { who: whoOf(outing, carrier), what })}</span>
        <button
          type="button"
          className="button"
          aria-label={say('foot-take-in', { what })}
          onClick={() => fire(takeOffered(text))}
        >
          {say('foot-take-in-short')}
        </button>
      </p>
    )
  })
}
