import { Link } from 'wouter'
import { isCardLog } from '../../state/card-taken.ts'
import { ownGroupOf } from '../../state/own-group.ts'
import { useOuting } from '../../state/use-outing.ts'
import { useResults } from '../../state/use-results.ts'
import { say } from '../../words/say-any.ts'
import { headWords } from '../finish/result-text.ts'
import { SendResult } from '../finish/SendResult.tsx'
import { groupShown } from '../hole/hole-view.ts'
import { OutingPage } from '../outing/OutingPage.tsx'
import { mendPath, rulingsPath } from '../paths.ts'
import { CardChanges } from './CardChanges.tsx'
import { CardHome } from './CardHome.tsx'
import { CardTable } from './CardTable.tsx'
import { Certify } from './Certify.tsx'
import { CloseCards } from './CloseCards.tsx'
import { Files } from './Files.tsx'
import { History } from './History.tsx'
import { LateScores } from './LateScores.tsx'
import { OpenHoles } from './OpenHoles.tsx'

/** Check, certify, send the result, take away: the end of a round. */
export function CardScreen() {
  const outing = useOuting(store => store.outing)
  const results = useResults()
  const own = useOuting(ownGroupOf)
  const log = useOuting(store => store.log)
  if (!outing || !results || !log) return null
  const group = groupShown(outing, own)
  return (
    <OutingPage tab="card">
      <div>
        <h1>{say('card-title')}</h1>
        <p className="quiet">{headWords(outing)}</p>
      </div>
      {group && <CardTable log={log} outing={outing} results={results} group={group} />}
      <div className="beside">
        {group && <OpenHoles log={log} outing={outing} group={group} />}
        <LateScores outing={outing} />
        {group && <Certify log={log} outing={outing} group={group} />}
        {group && <SendResult outing={outing} results={results} group={group} />}
        {group && <CardHome outing={outing} group={group} />}
        {group && <CloseCards outing={outing} group={group} />}
        {group && <CardChanges log={log} outing={outing} group={group} />}
        {!isCardLog(log) && (
          <>
            <Link className="button" href={mendPath(log)}>
              {say('mend-open')}
            </Link>
            <Link className="button" href={rulingsPath(log)}>
              {say('rulings-open')}
            </Link>
          </>
        )}
        <Files />
        <History />
      </div>
    </OutingPage>
  )
}
