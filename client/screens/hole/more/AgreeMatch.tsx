import { useState } from 'react'
import type { AgreedResult } from '#core/formats/happenings.ts'
import { agreeResultFacts } from '#core/outing/acts-match.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { Field } from '../../../parts/Field.tsx'
import { SecondTap } from '../../../parts/SecondTap.tsx'
import { sideName } from '../../../parts/side-name.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'
import { faultOfNumber } from '../../games/game-faults.ts'
import type { MatchProps } from './MatchMore.tsx'
import { agreedResultWords } from './notes-on-hole.ts'
import { type Outcome, outcomes, outcomeWords } from './outcome.ts'

/** The whole match as both sides agree it: it is over with that. */
export function AgreeMatch({ outing, game, sides }: MatchProps) {
  const [outcome, setOutcome] = useState<Outcome>('halved')
  const [by, setBy] = useState('1')
  const [left, setLeft] = useState('0')
  const { work } = useWork()
  const [[first], [second]] = sides
  if (!first || !second) return null
  const isHalved = outcome === 'halved'
  const faultBy = isHalved ? undefined : faultOfNumber('', say('agree-by'), by, 1, 18)[0]?.text
  const faultLeft = isHalved ? undefined : faultOfNumber('', say('agree-left'), left, 0, 17)[0]?.text
  const agreed: AgreedResult = {
    between: [first, second],
    won: isHalved ? null : outcome === 'first' ? first : second,
    by: isHalved ? 0 : Number(by),
    left: isHalved ? 0 : Number(left),
  }
  const names = sides.map(side => sideName(outing, side))
  return (
    <section className="section" aria-label={say('agree-match')}>
      <h2>{say('agree-match')}</h2>
      <Choice
        label={say('agree-match')}
        hasLabel={false}
        value={outcome}
        options={outcomes.map(each => ({ value: each, text: outcomeWords(names, each) }))}
        onValue={value => setOutcome(outcomes.find(each => each === value) ?? 'halved')}
      />
      {!isHalved && (
        <div className="in-columns">
          <Field label={say('agree-by')} inputMode="numeric" value={by} onValue={setBy} fault={faultBy} />
          <Field label={say('agree-left')} inputMode="numeric" value={left} onValue={setLeft} fault={faultLeft} />
        </div>
      )}
      <SecondTap
        key={outcome}
        label={say('agree-match-do', { result: agreedResultWords(outing, game, agreed) })}
        sure={say('agree-match-sure')}
        warning={say('agree-match-warning')}
        isDisabled={faultBy !== undefined || faultLeft !== undefined}
        onSure={() => work(() => act('match agreed', agreeResultFacts(outing, { game: game.id, ...agreed })))}
      />
    </section>
  )
}
