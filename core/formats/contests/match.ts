import type { HoleKey } from '#core/card/score.ts'
import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult, MatchHoleResult, MatchLine, SideHole } from '#core/formats/game-result.ts'
import { matchHole, matchStateOf, type SideNet } from '#core/formats/match-state.ts'
import { isUnsettled, sideHoleOf } from '#core/formats/side-hole.ts'

/** Two sides, hole by hole. */
export const match: Contest = { strokes: 'difference', resultOf }

function resultOf(game: SoundGame): GameResult {
  const [one, other] = game.sides
  const matches = one === undefined || other === undefined ? [] : [lineOf(game, [one, other])]
  return { kind: 'match', game: game.game, format: game.format, strokes: game.strokes, matches }
}

function lineOf(game: SoundGame, sides: MatchLine['sides']): MatchLine {
  const keys = scheduledKeys(game, sides)
  const holes = keys.map(key => {
    const values = [sideHoleOf(game, sides[0], key), sideHoleOf(game, sides[1], key)] as const
    return { key, values, result: resultOfHole(...values) }
  })
  const known = holes.map(({ result }) => (typeof result === 'number' ? result : null))
  return {
    sides,
    holes,
    state: matchStateOf(known, keys.length),
    unsettled: keys.filter(key => sides.some(side => isUnsettled(game, side, key))),
  }
}

/** The order of play of the first ball's group is the match's. */
function scheduledKeys(game: SoundGame, [[first]]: MatchLine['sides']): HoleKey[] {
  const holes = first === undefined ? [] : (game.balls.get(first)?.order ?? [])
  return holes.filter(({ isScheduled }) => isScheduled).map(({ key }) => key)
}

/** A hole with two scores stays open, with what each choice would make of it. */
function resultOfHole(one: SideHole, other: SideHole): MatchHoleResult {
  if (one.kind === 'open' || other.kind === 'open') return null
  const outcomes = new Set<1 | 0 | -1>()
  for (const a of netsOf(one)) {
    for (const b of netsOf(other)) {
      const outcome = matchHole(a, b)
      if (outcome !== null) outcomes.add(outcome)
    }
  }
  if (one.kind === 'two' || other.kind === 'two') return { two: [...outcomes].sort((a, b) => b - a) }
  return [...outcomes][0] ?? null
}

function netsOf(side: SideHole): SideNet[] {
  if (side.kind === 'value') return [side.value]
  if (side.kind === 'two') return side.values.map(value => value ?? 'picked-up')
  return side.kind === 'none' ? ['picked-up'] : []
}
