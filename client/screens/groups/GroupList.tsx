import { useState } from 'react'
import { Link } from 'wouter'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { GroupId } from '#core/values/ids.ts'
import { groupsPlaying, ownGroupOf, rememberGroup } from '../../state/own-group.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { tabPath } from '../paths.ts'
import { figureOf } from '../start/figure-of.ts'

/** Every group with its players and where it starts; a desk's phone can go round with any of them. */
export function GroupList({ outing }: { readonly outing: Outing }) {
  const log = useOuting(store => store.log)
  const isDesk = useOuting(store => store.me?.role === 'desk')
  const known = useOuting(ownGroupOf)
  const [chosen, setChosen] = useState<GroupId | null>(null)
  const own = chosen ?? known
  const groups = [...groupsPlaying(outing)].sort((a, b) => a.name.localeCompare(b.name, undefined, { numeric: true }))
  const choose = (group: GroupId): void => {
    if (log) rememberGroup(log, group)
    setChosen(group)
  }
  return (
    <>
      {groups.map(group => (
        <section key={group.id} className="section" aria-label={group.name}>
          <h2 className="spread">
            {group.name} <span className="quiet group-start">{startWords(group)}</span>
          </h2>
          <ul className="lines">
            {group.balls.map(ball => (
              <li key={ball} className="spread">
                <b>{outing.balls.get(ball)?.name}</b> <span className="quiet">{figuresOf(outing, ball)}</span>
              </li>
            ))}
          </ul>
          {groups.length > 1 && group.id === own && <p>{say('groups-is-here', { group: group.name })}</p>}
          {groups.length > 1 && isDesk && group.id !== own && (
            <button type="button" className="button" onClick={() => choose(group.id)}>
              {say('groups-here', { group: group.name })}
            </button>
          )}
        </section>
      ))}
      {log && groups.length > 1 && (
        <Link className="button" href={tabPath(log, 'share')}>
          {say('groups-invite')}
        </Link>
      )}
    </>
  )
}

const startWords = ({ round }: Group): string => say('groups-from', { hole: round[0]?.hole ?? 1 })

function figuresOf({ balls, players }: Outing, ball: Group['balls'][number]): string {
  const figures = (balls.get(ball)?.players ?? []).map(id => figureOf(players.get(id)?.handicap ?? null).figure)
  return figures.filter(Boolean).join(' & ')
}
