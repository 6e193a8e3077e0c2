import { holeKey, type PlayedHole } from '#core/card/score.ts'
import type { GameResult, MatchLine } from '#core/formats/game-result.ts'
import { type ConcededThing, type ConcessionRuling, ruleOnConcession } from '#core/formats/rulings/concession.ts'
import type { BallId, GameId, GroupId } from '#core/values/ids.ts'
import type { AgreedBetween } from './facts.ts'
import type { Game, Outing } from './outing.ts'
import type { Results } from './results.ts'
import { groupSpeakingFor } from './speaker.ts'
import { type NewFact, statedFact } from './stated-fact.ts'

/** `game` is an id of the outing's list of games; a side is named by any ball of it. */
export interface StrokeToConcede extends PlayedHole {
  readonly game: GameId
  readonly ball: BallId
  /** The ball's score with its next stroke conceded. */
  readonly score: number
}

export interface HoleToConcede extends PlayedHole {
  readonly game: GameId
  readonly by: BallId
  /** A ball of the side that wins by it; null where the match has two sides alone. */
  readonly to: BallId | null
}

export type MatchToConcede = Omit<HoleToConcede, 'hole' | 'lap'>

/**
 * What the Rules say of a concession before it is made, by what the scores and the sides have decided already; its facts
 * are empty where it would not count.
 */
export const rulingOnConcession = (
  results: Results,
  what: ConcededThing,
  said: MatchToConcede & { readonly at: PlayedHole | null },
): ConcessionRuling =>
  ruleOnConcession({
    what,
    by: 'player',
    isHoleDecided: said.at !== null && isHoleDecided(results.games.get(said.game), said, said.at),
    isMatchDecided: isMatchDecided(results.games.get(said.game), said),
  })

/** A putt given, in one match. */
export function concedeStrokeFacts(outing: Outing, results: Results, given: StrokeToConcede): NewFact[] {
  const { game, ball, hole, lap, score } = given
  const ruling = rulingOnConcession(results, 'stroke', { game, by: ball, to: null, at: given })
  const at = ruling.isValid ? speaking(outing, game, ball, given) : null
  return at === null ? [] : [statedFact('concededStroke', { ...at, ball, hole, lap }, score)]
}

/** A hole given up by the side of a ball. */
export function concedeHoleFacts(outing: Outing, results: Results, given: HoleToConcede): NewFact[] {
  const { game, by, to, hole, lap } = given
  const ruling = rulingOnConcession(results, 'hole', { ...given, at: given })
  const at = ruling.isValid ? speaking(outing, game, by, given) : null
  return at === null ? [] : [statedFact('concededHole', { ...at, ball: by, hole, lap }, { to })]
}

/** A match given up by the side of a ball. */
export function concedeMatchFacts(outing: Outing, results: Results, given: MatchToConcede): NewFact[] {
  const { game, by, to } = given
  const ruling = rulingOnConcession(results, 'match', { ...given, at: null })
  const at = ruling.isValid ? speaking(outing, game, by, null) : null
  return at === null ? [] : [statedFact('concededMatch', { ...at, ball: by }, { to })]
}

export interface HoleToAgree extends PlayedHole, AgreedBetween {
  readonly game: GameId
}

/** What two sides agree a hole to be, in place of what they agreed before; other sides' results of the hole stay. */
export function agreeHoleFacts(outing: Outing, agreed: HoleToAgree): NewFact[] {
  const { game, hole, lap, between, won } = agreed
  const at = speakingForEither(outing, game, between, agreed)
  if (at === null) return []
  const others = (outing.notes.ofGames.get(game)?.agreedHoles ?? []).filter(
    each =>
      each.group === at.group && each.hole === holeKey(agreed) && !isSameMatch(outing, game, each.between, between),
  )
  const results = [...others.map(other => ({ between: other.between, won: other.won })), { between, won }]
  return [statedFact('agreedHole', { ...at, hole, lap }, { results })]
}

export interface ResultToAgree extends AgreedBetween {
  readonly game: GameId
  /** Holes up, with `left` to play; zero and zero for a half. */
  readonly by: number
  readonly left: number
}

/** What two sides agree their whole match to be; other matches of the game stay. */
export function agreeResultFacts(outing: Outing, agreed: ResultToAgree): NewFact[] {
  const { game, between, won, by, left } = agreed
  const at = speakingForEither(outing, game, between, null)
  if (at === null) return []
  const others = (outing.notes.ofGames.get(game)?.agreedResults ?? [])
    .filter(each => each.group === at.group && !isSameMatch(outing, game, each.between, between))
    .map(({ group: _, ...other }) => other)
  return [statedFact('agreedResult', at, { results: [...others, { between, won, by, left }] })]
}

export interface PressToOpen extends PlayedHole {
  readonly game: GameId
  readonly by: BallId
}

/** The side of a ball opens a new match from a hole on. */
export function pressFacts(outing: Outing, { game, by, hole, lap }: PressToOpen): NewFact[] {
  const at = speaking(outing, game, by, { hole, lap })
  return at === null ? [] : [statedFact('press', { ...at, hole, lap }, { by })]
}

interface InGame {
  readonly group: GroupId
  readonly game: GameId
}

/** The group that speaks for a ball there, and the game's id as that group has it. */
function speaking(outing: Outing, game: GameId, ball: BallId, at: PlayedHole | null): InGame | null {
  const found = outing.games.find(({ id }) => id === game)
  const group = groupSpeakingFor(outing.balls, ball, at)
  if (found === undefined || group === null || (found.group !== null && found.group !== group)) return null
  return { group, game: idInGroup(found) }
}

/** A game that shares its id with another's carries its group's before it; its keys do not. */
const idInGroup = ({ id, group }: Game): GameId =>
  (group !== null && id.startsWith(`${group}/`) ? id.slice(group.length + 1) : id) as GameId

const speakingForEither = (
  outing: Outing,
  game: GameId,
  [one, other]: AgreedBetween['between'],
  at: PlayedHole | null,
): InGame | null => speaking(outing, game, one, at) ?? speaking(outing, game, other, at)

type Pair = AgreedBetween['between']

/** Two pairs of balls that name the same two sides. */
function isSameMatch(outing: Outing, game: GameId, one: Pair, other: Pair): boolean {
  const sides = outing.games.find(({ id }) => id === game)?.sides ?? []
  const sideOf = (ball: BallId): unknown => sides.find(side => side.includes(ball)) ?? ball
  const [first, second] = one.map(sideOf)
  const [third, fourth] = other.map(sideOf)
  return (first === third && second === fourth) || (first === fourth && second === third)
}

/** The matches of a game between the side of one ball and that of another, or any other side. */
const matchesOf = (result: GameResult | undefined, { by, to }: MatchToConcede): readonly MatchLine[] =>
  (result !== undefined && 'matches' in result ? result.matches : []).filter(({ sides }) => {
    const own = sides.findIndex(side => side.includes(by))
    return own !== -1 && (to === null || sides[1 - own]?.includes(to) === true)
  })

function isHoleDecided(result: GameResult | undefined, between: MatchToConcede, at: PlayedHole): boolean {
  const played = matchesOf(result, between).flatMap(({ holes }) => holes.filter(({ key }) => key === holeKey(at)))
  return played.length > 0 && played.every(({ result: found }) => typeof found === 'number')
}

function isMatchDecided(result: GameResult | undefined, between: MatchToConcede): boolean {
  const matches = matchesOf(result, between)
  return matches.length > 0 && matches.every(({ state }) => state.result !== null)
}
