import { isCardLog } from '../state/card-taken.ts'
import { isDeletedOnServer } from '../state/outing-store.ts'
import { useOuting } from '../state/use-outing.ts'
import { say } from '../words/say.ts'
import { lazyPart } from './later.tsx'

const FootItems = lazyPart(async () => (await import('./FootItems.tsx')).FootItems)

/** Where the scores are, in words that are true at every moment. */
export function Foot() {
  const phone = useOuting(({ foot }) => foot.phone)
  const isCard = useOuting(({ log }) => isCardLog(log))
  const hasItems = useOuting(
    ({ foot: { putOff, refused, offered, askers, stranger } }) =>
      putOff.length + refused.length + offered.length + askers.length > 0 || stranger !== null,
  )
  return (
    <div className="foot">
      <div className="foot-words" role="status" aria-live="polite">
        {phone === 'saved' ? (
          <span className="foot-word">{say('foot-phone')}</span>
        ) : (
          <span className="foot-word open">{say(`foot-${phone}`)}</span>
        )}
        {isCard ? <span>{say('foot-card')}</span> : <ServerWords />}
      </div>
      {hasItems && <FootItems />}
    </div>
  )
}

/** What of it a server has. */
function ServerWords() {
  const waiting = useOuting(({ foot }) => foot.waiting)
  // An outing opened from a file may hold acts that no server is known to have and that this phone does not send.
  const unknown = useOuting(({ history }) => history.filter(({ seq }) => seq === null).length)
  const link = useOuting(({ foot }) => foot.link)
  const isDeleted = useOuting(isDeletedOnServer)
  if (isDeleted) return <span className="foot-word open">{say('foot-deleted')}</span>
  return (
    <>
      {waiting > 0 && <span className="foot-word open">{say('foot-to-send', { n: waiting })}</span>}
      {waiting === 0 && unknown > 0 && (
        <span className="foot-word open">{say('foot-not-on-server', { n: unknown })}</span>
      )}
      {waiting === 0 && unknown === 0 && <span className="foot-word">{say('foot-server')}</span>}
      {link === 'away' && <span>{say('foot-away')}</span>}
    </>
  )
}
