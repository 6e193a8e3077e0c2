import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { usePlan } from '../../state/plan-store.ts'
import { say, sayCode } from '../../words/say-any.ts'

interface Props {
  readonly children: ReactNode
  /** The way back, in reach of the thumb. */
  readonly back: { readonly href: string; readonly text: string }
  /** What stays in reach beside it. */
  readonly beside?: ReactNode
}

/** The frame of a page that is the player's own; its foot speaks of the plan, not of the outing's scores. */
export function OwnPage({ children, back, beside }: Props) {
  const phone = usePlan(store => store.foot.phone)
  return (
    <div className="page">
      <main>{children}</main>
      <footer className="bottom">
        <div className="turn">
          <Link className="button" href={back.href}>
            {back.text}
          </Link>
          {beside}
        </div>
        <div className="foot">
          <div className="foot-words" role="status" aria-live="polite">
            <span className={phone === 'saved' ? 'foot-word' : 'foot-word open'}>
              {say(phone === 'saved' ? 'foot-phone' : `foot-${phone}`)}
            </span>
            <Elsewhere />
          </div>
        </div>
      </footer>
    </div>
  )
}

/** What of it a server has, once its owner has put it on other phones. */
function Elsewhere() {
  const isShared = usePlan(store => store.isShared)
  const { waiting, link, stranger } = usePlan(store => store.foot)
  if (!isShared) return <span>{say('bag-foot-alone')}</span>
  return (
    <>
      <span className={waiting > 0 ? 'foot-word open' : 'foot-word'}>
        {waiting > 0 ? say('foot-to-send', { n: waiting }) : say('foot-server')}
      </span>
      {stranger !== null && <span>{sayCode('own-stranger-', stranger, 'stranger-title')}</span>}
      {stranger === null && link !== 'live' && <span>{say('foot-away')}</span>}
    </>
  )
}
