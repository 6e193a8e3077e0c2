import { Field } from '../../parts/Field.tsx'
import { Select } from '../../parts/Select.tsx'
import { Tick } from '../../parts/Tick.tsx'
import { say } from '../../words/say-any.ts'
import { nameOf } from './draft-balls.ts'
import type { SectionProps } from './section.ts'

/** Where the round starts, under which terms, and whose phone this is. */
export function RoundSection({ draft, change, faultAt }: SectionProps) {
  const holes = Array.from({ length: draft.length }, (_, place) => String(place + 1))
  return (
    <section className="section" aria-label={say('start-round')}>
      <h2>{say('start-round')}</h2>
      <div className="in-columns">
        <Select
          label={say('start-hole')}
          value={String(draft.startHole)}
          options={holes.map(value => ({ value, text: value }))}
          onValue={value => change({ startHole: Number(value) })}
        />
        <Select
          label={say('start-phone-of')}
          value={draft.phoneOf}
          options={draft.players.map(({ id }) => ({ value: id, text: nameOf(draft.players, id) }))}
          onValue={phoneOf => change({ phoneOf })}
        />
      </div>
      <div>
        <Tick
          label={say('played-under-rules')}
          isOn={draft.isUnderRules}
          onChange={isUnderRules => change({ isUnderRules })}
        />
        <p className="quiet">{say('start-rules-hint')}</p>
      </div>
      <Field
        label={say('start-name')}
        value={draft.title}
        onValue={title => change({ title })}
        hint={say('start-name-hint')}
        fault={faultAt('title')}
      />
    </section>
  )
}
