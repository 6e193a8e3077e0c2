import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Select } from '../../parts/Select.tsx'
import { say } from '../../words/say-any.ts'
import { handicapKinds, type PlayerDraft } from './draft.ts'
import type { SectionProps } from './section.ts'

export interface PlayerFieldsProps extends Pick<SectionProps, 'faultAt'> {
  readonly player: PlayerDraft
  readonly n: number
  readonly tees: readonly { readonly id: string; readonly name: string }[]
  readonly onChange: (changed: Partial<PlayerDraft>) => void
}

/** Name, whichever handicap there is, and the tee. */
export function PlayerFields({ player, n, tees, faultAt, onChange }: PlayerFieldsProps) {
  const { id, kind } = player
  return (
    <>
      <Field
        label={say('start-player-name', { n })}
        value={player.name}
        onValue={name => onChange({ name })}
        fault={faultAt(`${id}-name`)}
      />
      <Choice
        label={say('start-player-kind', { n })}
        value={kind}
        options={handicapKinds.map(each => ({ value: each, text: say(`start-kind-${each}`) }))}
        onValue={value => onChange({ kind: handicapKinds.find(each => each === value) ?? 'index' })}
      />
      <div className="in-columns">
        <Field
          label={say(`start-player-${kind}`, { n })}
          inputMode={kind === 'index' ? 'decimal' : 'numeric'}
          value={player.figure}
          onValue={figure => onChange({ figure })}
          fault={faultAt(`${id}-figure`)}
        />
        {(kind === 'index' || tees.length > 0) && (
          <Select
            label={say('start-player-tee', { n })}
            value={player.tee}
            options={[{ value: '', text: say('start-choose-tee') }, ...teeOptions(tees)]}
            onValue={tee => onChange({ tee })}
            fault={faultAt(`${id}-tee`)}
          />
        )}
      </div>
    </>
  )
}

const teeOptions = (tees: PlayerFieldsProps['tees']) =>
  tees.map(({ id, name }, place) => ({ value: id, text: name.trim() || say('start-tee-n', { n: place + 1 }) }))
