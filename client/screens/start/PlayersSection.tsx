import { say } from '../../words/say.ts'
import { emptyPlayer, freeId, type PlayerDraft } from './draft.ts'
import { Filled } from './Filled.tsx'
import { PlayerFields } from './PlayerFields.tsx'
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
  const { id, kind, name, figure } = player
  const words = figure === '' ? '' : `${say(`start-kind-${kind}`)} ${figure}`
  const hasFault = ['name', 'figure', 'tee'].some(field => faultAt(`${id}-${field}`) !== undefined)
  return (
    <div className="group-box">
      <Filled isTaken={draft.courseFrom !== '' && name !== ''} title={name} words={words} hasFault={hasFault}>
        <PlayerFields player={player} n={n} tees={draft.tees} faultAt={faultAt} onChange={onChange} />
        {draft.players.length > 1 && (
          <button type="button" className="button" onClick={onRemove}>
            {say('start-remove-player', { n })}
          </button>
        )}
      </Filled>
    </div>
  )
}
