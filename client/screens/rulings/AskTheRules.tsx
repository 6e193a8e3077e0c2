import { useState } from 'react'
import { cardHandicapDuties } from '#core/card/rulings/card-handicap.ts'
import { lowScoreReasons } from '#core/card/rulings/hole-score.ts'
import { startForms } from '#core/formats/rulings/start-time.ts'
import { Field } from '../../parts/Field.tsx'
import { Select } from '../../parts/Select.tsx'
import { Tick } from '../../parts/Tick.tsx'
import { say } from '../../words/say.ts'
import { OneOf } from '../games/OneOf.tsx'
import { cardForms, nothingSeen, proposalOf, type Seen, type Situation, situations } from './proposals.ts'
import type { RulingDraft } from './ruling-draft.ts'

/** What happened, and what the printed rule makes of it; the committee decides. */
export function AskTheRules({ onTake }: { readonly onTake: (taken: Partial<RulingDraft>) => void }) {
  const [situation, setSituation] = useState<Situation | null>(null)
  const [seen, setSeen] = useState(nothingSeen)
  const proposal = situation && proposalOf(situation, seen)
  return (
    <section className="section" aria-label={say('ask-title')}>
      <h2>{say('ask-title')}</h2>
      <Select
        label={say('ask-what')}
        value={situation ?? ''}
        options={[
          { value: '', text: say('ask-none') },
          ...situations.map(each => ({ value: each as string, text: say(`ask-${each}`) })),
        ]}
        onValue={value => setSituation(situations.find(each => each === value) ?? null)}
      />
      {situation && <SeenFields situation={situation} seen={seen} onSeen={setSeen} />}
      <div role="status">
        {proposal && (
          <div className="notice stack">
            <p>{proposal.text}</p>
            <p className="quiet">{proposal.draft.rule}</p>
          </div>
        )}
      </div>
      {proposal && (
        <button type="button" className="button" onClick={() => onTake(proposal.draft)}>
          {say('ask-take')}
        </button>
      )}
    </section>
  )
}

interface FieldsProps {
  readonly situation: Situation
  readonly seen: Seen
  readonly onSeen: (seen: Seen) => void
}

function SeenFields({ situation, seen, onSeen }: FieldsProps) {
  const change = (changed: Partial<Seen>) => onSeen({ ...seen, ...changed })
  const figure = (
    name: 'par' | 'received' | 'returned' | 'actual' | 'onCard' | 'declared' | 'correct' | 'minutes',
    label: string,
  ) => <Field label={label} inputMode="numeric" value={seen[name]} onValue={value => change({ [name]: value })} />
  const affects = (
    <Tick label={say('ask-affects')} isOn={seen.affectsStrokes} onChange={isOn => change({ affectsStrokes: isOn })} />
  )
  const form = (
    <OneOf
      label={say('ask-form')}
      value={seen.form}
      values={startForms}
      textOf={each => say(`ask-form-${each}`)}
      onValue={each => change({ form: each })}
    />
  )
  switch (situation) {
    case 'hole-score':
      return (
        <>
          <OneOf
            label={say('ask-form')}
            value={seen.cardForm}
            values={cardForms}
            textOf={each => say(`ask-form-${each}`)}
            onValue={cardForm => change({ cardForm })}
          />
          {seen.cardForm !== 'stroke-play' && figure('par', say('par'))}
          {seen.cardForm !== 'stroke-play' && figure('received', say('ask-received'))}
          {figure('returned', say('ask-returned'))}
          {figure('actual', say('ask-actual'))}
          <OneOf
            label={say('ask-why')}
            value={seen.why}
            values={lowScoreReasons}
            textOf={each => say(`ask-why-${each}`)}
            onValue={why => change({ why })}
          />
          <Tick
            label={say('ask-before-close')}
            isOn={seen.isBeforeClose}
            onChange={isOn => change({ isBeforeClose: isOn })}
          />
        </>
      )
    case 'card-handicap':
      return (
        <>
          <OneOf
            label={say('ask-duty')}
            value={seen.duty}
            values={cardHandicapDuties}
            textOf={each => say(`ask-duty-${each}`)}
            onValue={duty => change({ duty })}
          />
          {figure('onCard', say('ask-on-card'))}
          {figure('correct', say('ask-correct'))}
          {affects}
        </>
      )
    case 'match-handicap':
      return (
        <>
          {figure('declared', say('ask-declared'))}
          {figure('correct', say('ask-correct'))}
          {affects}
          <Tick label={say('ask-in-time')} isOn={seen.isInTime} onChange={isOn => change({ isInTime: isOn })} />
        </>
      )
    case 'certification':
      return (
        <Tick
          label={say('ask-local-rule')}
          isOn={seen.hasLocalRule}
          onChange={isOn => change({ hasLocalRule: isOn })}
        />
      )
    case 'start':
      return (
        <>
          {figure('minutes', say('ask-minutes'))}
          {form}
        </>
      )
    case 'unfinished':
      return form
  }
}
