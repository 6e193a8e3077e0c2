import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult } from '#core/formats/game-result.ts'
import type { KnownNet } from '#core/formats/known-net.ts'
import { holesInPlay, netsOf, unsettledOf, valuesOn } from '#core/formats/share-holes.ts'
import { shareLines } from '#core/formats/shares.ts'
import type { ShareHole } from '#core/formats/shares-result.ts'
import { type SplitPointScale, splitPointScales, splitPoints } from '#core/formats/split-points.ts'
import type { Fraction } from '#core/values/fraction.ts'

/** Every hole gives its points from the best to the worst, all off the lowest. Common practice; no body publishes it. */
export const splitPointsBy =
  (scale: SplitPointScale): Contest =>
  game =>
    resultOf(game, scale)

function resultOf(game: SoundGame, scale: SplitPointScale): GameResult {
  const keys = holesInPlay(game)
  const holes = keys.map((key): ShareHole => {
    const values = valuesOn(game, key)
    const shares = sharesOf(netsOf(values), scale)
    return { key, values, kind: shares === null ? 'open' : 'shared', shares, pot: pointsOn(scale) }
  })
  return {
    kind: 'shares',
    game: game.game,
    format: game.format,
    strokes: game.strokes,
    gaps: game.gaps,
    unit: 'points',
    holes,
    lines: shareLines(
      game.sides,
      holes.map(({ shares }) => shares),
    ),
    carried: 0,
    unclaimed: 0,
    sharedOut: 0,
    unsettled: unsettledOf(game, keys),
    isFinished: holes.every(({ kind }) => kind === 'shared'),
  }
}

const pointsOn = (scale: SplitPointScale): number =>
  (splitPointScales[scale] as readonly number[]).reduce((sum, each) => sum + each, 0)

/** Null while the hole is open: where two scores would share it in two ways. */
function sharesOf(nets: ReturnType<typeof netsOf>, scale: SplitPointScale): Fraction[] | null {
  if (nets === null) return null
  const ways = choicesOf(nets).map(choice => splitPoints(choice, scale))
  const [first, ...others] = ways
  const told = JSON.stringify(first)
  return first !== undefined && others.every(other => JSON.stringify(other) === told) ? first : null
}

/** One net a side, in every way that two scores may go. */
const choicesOf = (nets: readonly (readonly KnownNet[])[]): (readonly KnownNet[])[] =>
  nets.reduce<(readonly KnownNet[])[]>(
    (choices, each) => choices.flatMap(choice => each.map(net => [...choice, net])),
    [[]],
  )
