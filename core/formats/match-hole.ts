import { emptyCard } from '#core/card/card.ts'
import type { HoleKey } from '#core/card/score.ts'
import { scoresOn } from '#core/card/settle-card.ts'
import { ruleOnConcession } from '#core/formats/rulings/concession.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundGame } from './game-input.ts'
import type { MatchHoleLine, MatchHoleReason, MatchSides, SideHole } from './game-result.ts'
import { matchHole, type SideNet } from './hole-by-nets.ts'
import { matchSideHole } from './match-side-hole.ts'
import { agreedOutcome, lossOf, type Outcome } from './match-sides.ts'

type Decided = Pick<MatchHoleLine, 'result' | 'reason' | 'balls'>
type Values = MatchHoleLine['values']

/**
 * One hole between two sides. A hole that the desk put out of play counts nothing or is halved; what the sides agreed
 * stands over everything else, then a hole lost by penalty, then a concession, then the scores.
 * Source: Rules of Golf, rules 3.2a, 3.2b and 3.2d; R&A and USGA; 2019 and 2023.
 */
export function matchHoleOf(game: SoundGame, sides: MatchSides, key: HoleKey): MatchHoleLine {
  const values: Values = [matchSideHole(game, sides[0], key), matchSideHole(game, sides[1], key)]
  const decided =
    outOfPlay(game, key) ??
    agreed(game, sides, key) ??
    lostByPenalty(game, sides, key) ??
    conceded(game, sides, key, values) ??
    byScores(values)
  return { key, values, ...decided }
}

function outOfPlay({ happenings }: SoundGame, key: HoleKey): Decided | null {
  const out = happenings.holesOut.get(key)
  return out === undefined ? null : { result: out.counts === 'nothing' ? null : 0, reason: 'out-of-play', balls: [] }
}

function agreed({ happenings }: SoundGame, sides: MatchSides, key: HoleKey): Decided | null {
  const here = happenings.agreedHoles.filter(({ hole }) => hole === key)
  return ofOutcomes(
    'agreed',
    here.map(each => agreedOutcome(sides, each)),
    [],
  )
}

/** Both sides may lose a hole: then it is halved. From memory: no clarification was read. */
function lostByPenalty({ happenings }: SoundGame, sides: MatchSides, key: HoleKey): Decided | null {
  const lost = happenings.penalties.filter(({ hole, holeLost, ball }) => holeLost && hole === key && isIn(sides, ball))
  const balls = lost.map(({ ball }) => ball)
  const outcomes = new Set(balls.map(ball => lossOf(sides, ball, null)))
  if (outcomes.size > 1) return { result: 0, reason: 'penalty', balls }
  return ofOutcomes('penalty', [...outcomes], balls)
}

const isIn = (sides: MatchSides, ball: BallId): boolean => sides.some(side => side.includes(ball))

/**
 * A concession that the scores contradict came too late where every ball was holed out: the hole was over. Where one was
 * not, it ended the hole. Rules of Golf, rule 3.2b; that the card proves the order is this product's reading.
 */
function conceded(game: SoundGame, sides: MatchSides, key: HoleKey, values: Values): Decided | null {
  const { result } = byScores(values)
  const counting = game.happenings.holeConcessions.filter(({ hole, by, to }) => {
    const outcome = lossOf(sides, by, to)
    if (hole !== key || outcome === null) return false
    const isHoleDecided = isHoledOut(game, sides, key) && result !== null && result !== outcome
    return ruleOnConcession({ what: 'hole', by: 'player', isHoleDecided }).isValid
  })
  return ofOutcomes(
    'conceded',
    counting.map(({ by, to }) => lossOf(sides, by, to)),
    counting.map(({ by }) => by),
  )
}

const isHoledOut = (game: SoundGame, sides: MatchSides, key: HoleKey): boolean =>
  sides.flat().every(ball => {
    const scores = scoresOn(game.balls.get(ball)?.card ?? emptyCard, key)
    return scores.length > 0 && scores.every(score => typeof score === 'number')
  })

/** Null for no outcome at all; several different ones are a dispute, which leaves the hole open. */
function ofOutcomes(
  reason: MatchHoleReason,
  found: readonly (Outcome | null)[],
  balls: readonly BallId[],
): Decided | null {
  const outcomes = [...new Set(found.filter(outcome => outcome !== null))].sort((a, b) => b - a)
  const [outcome, ...others] = outcomes
  if (outcome === undefined) return null
  return others.length > 0 ? { result: { two: outcomes }, reason: null, balls } : { result: outcome, reason, balls }
}

const open: Decided = { result: null, reason: null, balls: [] }

/** A hole with two scores stays open, with what each choice would make of it. */
function byScores([one, other]: Values): Decided {
  if (one.kind === 'open' || other.kind === 'open') return open
  const outcomes = new Set<Outcome>()
  for (const a of netsOf(one)) {
    for (const b of netsOf(other)) {
      const outcome = matchHole(a, b)
      if (outcome !== null) outcomes.add(outcome)
    }
  }
  if (one.kind === 'two' || other.kind === 'two') {
    return { ...open, result: { two: [...outcomes].sort((a, b) => b - a) } }
  }
  const [result] = outcomes
  if (result === undefined) return open
  if (result === 0) return { result, reason: isHoled(one) ? 'level' : 'none-holed', balls: ballsOf(one, other) }
  const [better, worse] = result === 1 ? [one, other] : [other, one]
  return { result, reason: isHoled(worse) ? 'lower' : 'only-holed', balls: ballsOf(better) }
}

const isHoled = ({ kind }: SideHole): boolean => kind === 'value'

const ballsOf = (...sides: readonly SideHole[]): BallId[] =>
  sides.flatMap(side => (side.kind === 'value' ? side.balls : []))

function netsOf(side: SideHole): SideNet[] {
  if (side.kind === 'value') return [side.value]
  if (side.kind === 'two') return side.values.map(value => value ?? 'picked-up')
  return side.kind === 'none' ? ['picked-up'] : []
}
