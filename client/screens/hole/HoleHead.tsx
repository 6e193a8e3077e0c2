import type { PlayedHole } from '#core/card/score.ts'
import type { MatchLine } from '#core/formats/game-result.ts'
import type { Outing, Player } from '#core/outing/outing.ts'
import { aheadIn, sideName, standOf, toPlayOf } from '../../parts/match-view.ts'
import { say } from '../../words/say.ts'

interface Props {
  readonly outing: Outing
  readonly at: PlayedHole
  readonly match: MatchLine | null
  /** Which game that is; null where there is one alone. */
  readonly matchTitle: string | null
  /** Whose tee gives the length. */
  readonly player: Player | null
}

/** The hole's number, par, index and length, and how the match stands. */
export function HoleHead({ outing, at, match, matchTitle, player }: Props) {
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
      {match && <MatchStand outing={outing} match={match} title={matchTitle} />}
    </div>
  )
}

interface StandProps {
  readonly outing: Outing
  readonly match: MatchLine
  readonly title: string | null
}

function MatchStand({ outing, match, title }: StandProps) {
  const ahead = aheadIn(match)
  return (
    <p className="hole-match">
      <strong>{standOf(match.state)}</strong>
      {ahead && (
        <>
          {sideName(outing, ahead)}
          <br />
        </>
      )}
      {toPlayOf(match.state)}
      {title && (
        <>
          <br />
          {title}
        </>
      )}
    </p>
  )
}
