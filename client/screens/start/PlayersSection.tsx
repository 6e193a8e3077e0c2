import { groupSizes } from '#core/outing/draw/group-sizes.ts'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { emptyPlayer, freeId, type PlayerDraft } from './draft.ts'
import { Filled } from './Filled.tsx'
import { PasteNames } from './PasteNames.tsx'
import { PlayerFields } from './PlayerFields.tsx'
import type { SectionProps } from './section.ts'

/** A roll-up; a society day is run from the desk. */
const mostPlayers = 24

/** The players, each with whichever handicap there is; of more than four the balls are thrown for groups. */
export function PlayersSection({ draft, change, faultAt }: SectionProps) {
  const { players } = draft
  const changePlayer = (id: string, changed: Partial<PlayerDraft>): void =>
    change({ players: players.map(player => (player.id === id ? { ...player, ...changed } : player)) })
  const addAll = (added: readonly Omit<PlayerDraft, 'id'>[]): boolean => {
    // Rows that nobody has typed in give way.
    const typed = players.filter(({ name, figure }) => `${name}${figure}`.trim() !== '')
    const all = [...typed]
    for (const each of added) all.push({ ...each, id: freeId('p', all) })
    if (all.length > mostPlayers) return false
    const phoneOf = all.some(({ id }) => id === draft.phoneOf) ? draft.phoneOf : (all[0]?.id ?? '')
    change({ players: all, phoneOf })
    return true
  }
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
      {players.length > 4 && <p>{say('start-thrown', { groups: formatList(groupSizes(players.length)) })}</p>}
      <details>
        <summary>{say('paste-title')}</summary>
        <div className="stack">
          <PasteNames tees={draft.tees} onAdd={addAll} />
        </div>
      </details>
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
