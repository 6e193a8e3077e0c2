import { holeKey, type PlayedHole } from '#core/card/score.ts'
import { teeShotFacts } from '#core/outing/acts-ball.ts'
import type { Ball, Group, Outing } from '#core/outing/outing.ts'
import { useWork } from '../../../parts/use-work.ts'
import { act } from '../../../state/actions.ts'
import { say } from '../../../words/say-any.ts'

interface Props {
  readonly outing: Outing
  readonly group: Group
  readonly at: PlayedHole
  /** Balls whose partners take turns. */
  readonly balls: readonly Ball[]
}

/** Asked on the first tee, until it is said: which partner tees off. */
export function FirstTeeShots({ outing, group, at, balls }: Props) {
  const { isWorking, work } = useWork()
  const [first] = group.round
  if (!first || holeKey(first) !== holeKey(at)) return null
  const open = balls.filter(({ id }) => (outing.notes.teeShots.get(id)?.size ?? 0) === 0)
  return open.map(({ id, name, players }) => (
    <section key={id} className="notice stack" aria-label={say('tee-shot-of', { ball: name })}>
      <p>{say('tee-shot-ask', { ball: name })}</p>
      <div className="pair">
        {players.map(player => (
          <button
            key={player}
            type="button"
            className="button grow"
            disabled={isWorking}
            onClick={() => work(() => act('tee shot', teeShotFacts(outing, { ball: id, ...at }, player)))}
          >
            {outing.players.get(player)?.name ?? player}
          </button>
        ))}
      </div>
    </section>
  ))
}
