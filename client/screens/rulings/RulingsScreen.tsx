import { useState } from 'react'
import { rulingFacts } from '#core/outing/acts-card.ts'
import { parseKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import { heldById, lineOfOp } from '../../parts/history-line.ts'
import { rulingGrounds, rulingWords } from '../../parts/ruling-words.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { useOuting } from '../../state/use-outing.ts'
import { formatTime } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { OutingPage } from '../outing/OutingPage.tsx'
import { AskTheRules } from './AskTheRules.tsx'
import { MakeRuling } from './MakeRuling.tsx'
import { emptyRuling } from './ruling-draft.ts'

/** What the committee ruled, how it came about, and the desk's own pen. */
export function RulingsScreen() {
  const outing = useOuting(store => store.outing)
  const isDesk = useOuting(store => store.me?.role === 'desk')
  const [draft, setDraft] = useState(emptyRuling)
  if (!outing) return null
  return (
    <OutingPage tab="card">
      <h1>{say('rulings-title')}</h1>
      <p className="notice">{say('rulings-caution')}</p>
      <Made outing={outing} isDesk={isDesk} />
      {isDesk ? (
        <>
          <AskTheRules outing={outing} onTake={taken => setDraft({ ...draft, ...taken })} />
          <MakeRuling outing={outing} draft={draft} onDraft={setDraft} />
        </>
      ) : (
        <p className="quiet">{say('rulings-desk')}</p>
      )}
      <Past outing={outing} />
    </OutingPage>
  )
}

function Made({ outing, isDesk }: { readonly outing: Outing; readonly isDesk: boolean }) {
  const { work } = useWork()
  const { rulings } = outing.notes
  return (
    <section className="section" aria-label={say('rulings-list')}>
      <h2>{say('rulings-list')}</h2>
      {rulings.length === 0 && <p className="quiet">{say('rulings-none')}</p>}
      <ul className="lines">
        {rulings.map(({ id, ruling }) => {
          const words = rulingWords(outing, ruling)
          return (
            <li key={id} className="stack">
              <p>
                <b>{words}</b>
                <br />
                <span className="quiet">{rulingGrounds(outing, ruling)}</span>
              </p>
              {isDesk && (
                <SecondTap
                  label={say('ruling-take-back', { ruling: words })}
                  sure={say('ruling-take-back-sure')}
                  warning={say('ruling-take-back-hint')}
                  onSure={() => work(() => act('ruling taken back', rulingFacts(id, null)))}
                />
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}

/** Every act about a ruling, the newest first. */
function Past({ outing }: { readonly outing: Outing }) {
  const history = useOuting(store => store.history)
  const held = heldById(history)
  const acts = history.filter(({ op }) => op.facts.some(({ key }) => parseKey(key)?.kind === 'ruling')).reverse()
  if (acts.length === 0) return null
  return (
    <section className="section" aria-label={say('rulings-history')}>
      <h2>{say('rulings-history')}</h2>
      <ol className="lines">
        {acts.map(({ op }) => (
          <li key={`${op.device} ${op.n}`}>
            <span className="quiet">{formatTime(op.at)}</span> {lineOfOp(op, outing, held)}
          </li>
        ))}
      </ol>
    </section>
  )
}
