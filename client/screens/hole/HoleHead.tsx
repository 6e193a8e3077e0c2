import type { PlayedHole } from '#core/card/score.ts'
import type { Outing, Player } from '#core/outing/outing.ts'
import { say } from '../../words/say.ts'
import type { HeadMatch } from './standings.ts'

interface Props {
  readonly outing: Outing
  readonly at: PlayedHole
  readonly match: HeadMatch | null
  /** Whose tee gives the length. */
  readonly player: Player | null
}

/** The hole's number, par, index and length, and how the match stands. */
export function HoleHead({ outing, at, match, player }: Props) {
  const hole = outing.holes.get(at.hole)
  const tee = player?.tee ? outing.tees.get(player.tee) : undefined
  const length = tee?.lengths?.byHole[at.hole - 1]
  const unit = tee?.lengths?.unit === 'metres' ? 'length-metres' : 'length-yards'
  return (
    <div className="hole-head">
      <h1>
        <span className="hidden">{say('hole')} </span>
        {at.hole}
      </h1>
      <p className="hole-facts">
        <strong>{hole ? say('par-n', { par: hole.par }) : ''}</strong>
        <br />
        {hole && say('index-n', { index: hole.index })}
        {length !== undefined && (
          <>
            <br />
            {say(unit, { length })}
          </>
        )}
      </p>
      {match && <MatchStand match={match} />}
    </div>
  )
}

function MatchStand({ match: { stand, side, toPlay, title } }: { readonly match: HeadMatch }) {
  return (
    <p className="hole-match">
      <strong>{stand}</strong>
      {side && (
        <>
          {side}
          <br />
        </>
      )}
      {toPlay}
      {title && (
        <>
          <br />
          {title}
        </>
      )}
    </p>
  )
}
