import { useState } from 'react'
import { agreeHoleFacts } from '#core/outing/acts-match.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { sideName } from '../../../parts/side-name.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import type { MatchProps } from './MatchMore.tsx'
import { type Outcome, outcomes, outcomeWords } from './outcome.ts'

/** The hole as both sides agree it, whatever the scores say. */
export function AgreeHole({ outing, game, sides, at }: MatchProps) {
  const [outcome, setOutcome] = useState<Outcome>('halved')
  const { isWorking, work } = useWork()
  const [[first], [second]] = sides
  if (!first || !second) return null
  const won = outcome === 'halved' ? null : outcome === 'first' ? first : second
  const result = outcomeWords(
    sides.map(side => sideName(outing, side)),
    outcome,
  )
  return (
    <section className="section" aria-label={say('agree-hole', { hole: at.hole })}>
      <h2>{say('agree-hole', { hole: at.hole })}</h2>
      <p className="quiet">{say('agree-hint')}</p>
      <Choice
        label={say('agree-hole', { hole: at.hole })}
        hasLabel={false}
        value={outcome}
        options={outcomes.map(each => ({
          value: each,
          text: outcomeWords(
            sides.map(side => sideName(outing, side)),
            each,
          ),
        }))}
        onValue={value => setOutcome(outcomes.find(each => each === value) ?? 'halved')}
      />
      <button
        type="button"
        className="button"
        disabled={isWorking}
        onClick={() =>
          work(() =>
            act('hole agreed', agreeHoleFacts(outing, { game: game.id, ...at, between: [first, second], won })),
          )
        }
      >
        {say('agree-hole-do', { hole: at.hole, result })}
      </button>
    </section>
  )
}
