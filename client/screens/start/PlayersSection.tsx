import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Select } from '../../parts/Select.tsx'
import { say } from '../../words/say.ts'
import { emptyPlayer, freeId, handicapKinds, type PlayerDraft } from './draft.ts'
import type { SectionProps } from './section.ts'

const mostPlayers = 4

/** One to four players, each with whichever handicap the group has. */
export function PlayersSection({ draft, change, faultAt }: SectionProps) {
  const { players } = draft
  const changePlayer = (id: string, changed: Partial<PlayerDraft>): void =>
    change({ players: players.map(player => (player.id === id ? { ...player, ...changed } : player)) })
  return (
    <section className="section" aria-label={say('start-players')}>
      <h2>{say('start-players')}</h2>
      <p className="quiet">{say('start-plus-hint')}</p>
      {players.map((player, place) => (
        <PlayerBox
          key={player.id}
          player={player}
          n={place + 1}
          draft={draft}
          faultAt={faultAt}
          onChange={changed => changePlayer(player.id, changed)}
          onRemove={() => change({ players: players.filter(({ id }) => id !== player.id) })}
        />
      ))}
      {players.length < mostPlayers && (
        <button
          type="button"
          className="button"
          onClick={() => change({ players: [...players, emptyPlayer(freeId('p', players))] })}
        >
          {say('start-add-player')}
        </button>
      )}
    </section>
  )
}

interface PlayerProps extends Pick<SectionProps, 'draft' | 'faultAt'> {
  readonly player: PlayerDraft
  readonly n: number
  readonly onChange: (changed: Partial<PlayerDraft>) => void
  readonly onRemove: () => void
}

function PlayerBox({ player, n, draft, faultAt, onChange, onRemove }: PlayerProps) {
  const { id, kind } = player
  return (
    <div className="group-box">
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
        {(kind === 'index' || draft.tees.length > 0) && (
          <TeeOf player={player} n={n} draft={draft} faultAt={faultAt} onChange={onChange} />
        )}
      </div>
      {draft.players.length > 1 && (
        <button type="button" className="button" onClick={onRemove}>
          {say('start-remove-player', { n })}
        </button>
      )}
    </div>
  )
}

function TeeOf({ player, n, draft, faultAt, onChange }: Omit<PlayerProps, 'onRemove'>) {
  const tees = draft.tees.map(({ id, name }, place) => ({
    value: id,
    text: name.trim() || say('start-tee-n', { n: place + 1 }),
  }))
  return (
    <Select
      label={say('start-player-tee', { n })}
      value={player.tee}
      options={[{ value: '', text: say('start-choose-tee') }, ...tees]}
      onValue={tee => onChange({ tee })}
      fault={faultAt(`${player.id}-tee`)}
    />
  )
}
