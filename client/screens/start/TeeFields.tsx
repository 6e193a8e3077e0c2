import { Field } from '../../parts/Field.tsx'
import { say } from '../../words/say-any.ts'
import { freeId, holesInPlay, type TeeDraft } from './draft.ts'
import { LengthFields } from './LengthFields.tsx'
import type { SectionProps } from './section.ts'

/** The tees that an index is played from. */
export function TeeFields({ draft, change, faultAt }: SectionProps) {
  const par = String(holesInPlay(draft).reduce((sum, hole) => sum + hole.par, 0))
  const add = (): void =>
    change({ tees: [...draft.tees, { id: freeId('t', draft.tees), name: '', courseRating: '', slope: '', par }] })
  const changeTee = (id: string, changed: Partial<TeeDraft>): void =>
    change({ tees: draft.tees.map(tee => (tee.id === id ? { ...tee, ...changed } : tee)) })
  return (
    <>
      <h3>{say('start-tees')}</h3>
      <p className="quiet">{say('start-tees-hint')}</p>
      {draft.length === 9 && draft.tees.length > 0 && <p className="quiet">{say('start-tee-nine')}</p>}
      {draft.tees.map((tee, place) => (
        <TeeBox
          key={tee.id}
          tee={tee}
          n={place + 1}
          holes={draft.length}
          faultAt={faultAt}
          onChange={changed => changeTee(tee.id, changed)}
          onRemove={() => change({ tees: draft.tees.filter(({ id }) => id !== tee.id) })}
        />
      ))}
      <button type="button" className="button" onClick={add}>
        {say('start-add-tee')}
      </button>
    </>
  )
}

interface TeeProps extends Pick<SectionProps, 'faultAt'> {
  readonly tee: TeeDraft
  readonly n: number
  readonly holes: number
  readonly onChange: (changed: Partial<TeeDraft>) => void
  readonly onRemove: () => void
}

function TeeBox({ tee, n, holes, faultAt, onChange, onRemove }: TeeProps) {
  return (
    <div className="group-box">
      <Field
        label={say('start-tee-name', { n })}
        value={tee.name}
        onValue={name => onChange({ name })}
        fault={faultAt(`${tee.id}-name`)}
      />
      <div className="in-columns">
        <Field
          label={say('start-tee-rating', { n })}
          inputMode="decimal"
          value={tee.courseRating}
          onValue={courseRating => onChange({ courseRating })}
          fault={faultAt(`${tee.id}-rating`)}
        />
        <Field
          label={say('start-tee-slope', { n })}
          inputMode="numeric"
          value={tee.slope}
          onValue={slope => onChange({ slope })}
          fault={faultAt(`${tee.id}-slope`)}
        />
        <Field
          label={say('start-tee-par', { n })}
          inputMode="numeric"
          value={tee.par}
          onValue={par => onChange({ par })}
          fault={faultAt(`${tee.id}-par`)}
        />
      </div>
      <LengthFields tee={tee} n={n} holes={holes} faultAt={faultAt} onChange={onChange} />
      <button type="button" className="button" onClick={onRemove}>
        {say('start-remove-tee', { n })}
      </button>
    </div>
  )
}
