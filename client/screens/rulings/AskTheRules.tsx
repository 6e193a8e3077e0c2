import { useState } from 'react'
import { cardHandicapDuties } from '#core/card/rulings/card-handicap.ts'
import { lowScoreReasons } from '#core/card/rulings/hole-score.ts'
import { startForms } from '#core/formats/rulings/start-time.ts'
import type { Outing } from '#core/outing/outing.ts'
import { Field } from '../../parts/Field.tsx'
import { Select } from '../../parts/Select.tsx'
import { Tick } from '../../parts/Tick.tsx'
import { say } from '../../words/say-any.ts'
import { OneOf } from '../games/OneOf.tsx'
import { grossOf } from './gross-of.ts'
import { holesFor } from './holes-for.ts'
import { cardForms, type Known, nothingSeen, proposalOf, type Seen, type Situation, situations } from './proposals.ts'
import type { RulingDraft } from './ruling-draft.ts'
import { SidesFields } from './SidesFields.tsx'

/** What happened, and what the printed rule makes of it; the committee decides. */
interface Props {
  readonly outing: Outing
  readonly onTake: (taken: Partial<RulingDraft>) => void
}

export function AskTheRules({ outing, onTake }: Props) {
  const [situation, setSituation] = useState<Situation | null>(null)
  const [seen, setSeen] = useState(nothingSeen)
  const known = { holes: holesFor(outing, seen.ball), gross: grossOf(outing, seen.ball) }
  const proposal = situation && proposalOf(situation, seen, known)
  return (
    <section className="section" aria-label={say('seen-title')}>
      <h2>{say('seen-title')}</h2>
      <Select
        label={say('seen-what')}
        value={situation ?? ''}
        options={[
          { value: '', text: say('choose') },
          ...situations.map(each => ({ value: each as string, text: say(`seen-${each}`) })),
        ]}
        onValue={value => setSituation(situations.find(each => each === value) ?? null)}
      />
      {situation && <SeenFields outing={outing} situation={situation} seen={seen} known={known} onSeen={setSeen} />}
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
          {say('seen-take')}
        </button>
      )}
    </section>
  )
}

export interface FieldsProps {
  readonly outing: Outing
  readonly situation: Situation
  readonly seen: Seen
  readonly known: Known
  readonly onSeen: (seen: Seen) => void
}

function SeenFields(props: FieldsProps) {
  const { situation, seen, onSeen } = props
  const change = (changed: Partial<Seen>) => onSeen({ ...seen, ...changed })
  const figure = (
    name: 'par' | 'received' | 'returned' | 'actual' | 'onCard' | 'declared' | 'correct' | 'minutes',
    label: string,
  ) => <Field label={label} inputMode="numeric" value={seen[name]} onValue={value => change({ [name]: value })} />
  const affects = (
    <Tick label={say('seen-affects')} isOn={seen.affectsStrokes} onChange={isOn => change({ affectsStrokes: isOn })} />
  )
  const form = (
    <OneOf
      label={say('seen-form')}
      value={seen.form}
      values={startForms}
      textOf={each => say(`seen-form-${each}`)}
      onValue={each => change({ form: each })}
    />
  )
  switch (situation) {
    case 'hole-score':
      return (
        <>
          <OneOf
            label={say('seen-form')}
            value={seen.cardForm}
            values={cardForms}
            textOf={each => say(`seen-form-${each}`)}
            onValue={cardForm => change({ cardForm })}
          />
          {seen.cardForm !== 'stroke-play' && figure('par', say('par'))}
          {seen.cardForm !== 'stroke-play' && figure('received', say('seen-received'))}
          {figure('returned', say('seen-returned'))}
          {figure('actual', say('seen-actual'))}
          <OneOf
            label={say('seen-why')}
            value={seen.why}
            values={lowScoreReasons}
            textOf={each => say(`seen-why-${each}`)}
            onValue={why => change({ why })}
          />
          <Tick
            label={say('seen-before-close')}
            isOn={seen.isBeforeClose}
            onChange={isOn => change({ isBeforeClose: isOn })}
          />
        </>
      )
    case 'card-handicap':
      return (
        <>
          <OneOf
            label={say('seen-duty')}
            value={seen.duty}
            values={cardHandicapDuties}
            textOf={each => say(`seen-duty-${each}`)}
            onValue={duty => change({ duty })}
          />
          {figure('onCard', say('seen-on-card'))}
          {figure('correct', say('seen-correct'))}
          {affects}
        </>
      )
    case 'match-handicap':
      return (
        <>
          {figure('declared', say('seen-declared'))}
          {figure('correct', say('seen-correct'))}
          {affects}
          <Tick label={say('seen-in-time')} isOn={seen.isInTime} onChange={isOn => change({ isInTime: isOn })} />
        </>
      )
    case 'certification':
      return (
        <Tick
          label={say('seen-local-rule')}
          isOn={seen.hasLocalRule}
          onChange={isOn => change({ hasLocalRule: isOn })}
        />
      )
    case 'start':
      return (
        <>
          {figure('minutes', say('seen-minutes'))}
          {form}
        </>
      )
    case 'unfinished':
      return form
    case 'late-partner':
    case 'traded-holes':
    case 'written-sum':
      return <SidesFields {...props} />
  }
}
