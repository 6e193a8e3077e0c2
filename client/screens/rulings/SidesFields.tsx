import { Field } from '../../parts/Field.tsx'
import { Select } from '../../parts/Select.tsx'
import { Tick } from '../../parts/Tick.tsx'
import { say } from '../../words/say-any.ts'
import { OneOf } from '../games/OneOf.tsx'
import type { FieldsProps } from './AskTheRules.tsx'

const forms = ['stroke-play', 'match'] as const

/** What was seen of a late partner, of holes traded and of a total on a card. */
export function SidesFields({ outing, situation, seen, known, onSeen }: FieldsProps) {
  const change = (changed: Partial<typeof seen>) => onSeen({ ...seen, ...changed })
  const ball = (label: string) => (
    <Select
      label={label}
      value={seen.ball}
      options={[
        { value: '', text: say('choose') },
        ...[...outing.balls.values()].map(({ id, name }) => ({ value: id as string, text: name })),
      ]}
      onValue={each => change({ ball: each, inPlay: '' })}
    />
  )
  if (situation === 'traded-holes') {
    return <Tick label={say('seen-traded-knew')} isOn={seen.knew} onChange={knew => change({ knew })} />
  }
  if (situation === 'written-sum') {
    return (
      <>
        {ball(say('seen-sum-whose'))}
        <Field
          label={say('seen-sum-written')}
          inputMode="numeric"
          value={seen.written}
          onValue={written => change({ written })}
        />
        {seen.ball !== '' && known.gross === null && <p className="quiet">{say('seen-sum-open')}</p>}
      </>
    )
  }
  const isMatch = seen.form === 'match'
  return (
    <>
      {ball(say('seen-late-who'))}
      <OneOf
        label={say('seen-form')}
        value={isMatch ? 'match' : 'stroke-play'}
        values={forms}
        textOf={each => say(`seen-form-${each}`)}
        onValue={form => change({ form })}
      />
      <Select
        label={say('seen-late-hole')}
        value={seen.inPlay}
        options={[{ value: '', text: say('choose') }, ...known.holes]}
        onValue={inPlay => change({ inPlay })}
      />
      <Tick
        label={say('seen-late-partner-started')}
        isOn={seen.partnerHasStarted}
        onChange={partnerHasStarted => change({ partnerHasStarted })}
      />
      {isMatch && (
        <Tick
          label={say('seen-late-anyone-started')}
          isOn={seen.anyoneHasStarted}
          onChange={anyoneHasStarted => change({ anyoneHasStarted })}
        />
      )}
    </>
  )
}
