import type { HoleKey } from '#core/card/score.ts'
import type { BallId } from '#core/values/ids.ts'
import { ballHoleOf } from './ball-hole.ts'
import { sideValueOf } from './counting-balls.ts'
import type { InputHole, SoundGame } from './game-input.ts'
import type { SideHole } from './game-result.ts'
import type { KnownNet } from './known-net.ts'
import { countOn, isOutOfPlay, isUnsettled } from './side-hole.ts'

/** The scheduled holes, in the order of the first side's first ball: it is the game's. */
export const scheduledHoles = (game: SoundGame): HoleKey[] =>
  orderOf(game)
    .filter(({ isScheduled }) => isScheduled)
    .map(({ key }) => key)

/** Those of them that are in play. */
export const holesInPlay = (game: SoundGame): HoleKey[] => scheduledHoles(game).filter(key => !isOutOfPlay(game, key))

/** Extra holes that are in play, after the scheduled ones. */
export const extraHolesInPlay = (game: SoundGame): HoleKey[] =>
  orderOf(game)
    .filter(({ isScheduled }) => !isScheduled)
    .map(({ key }) => key)
    .filter(key => !isOutOfPlay(game, key))

function orderOf({ sides: [side], balls }: SoundGame): readonly InputHole[] {
  const first = side?.[0]
  return first === undefined ? [] : (balls.get(first)?.order ?? [])
}

/** A side's value of a hole that is in play, with everything that bears on its balls. */
export const sideHoleOf = (game: SoundGame, side: readonly BallId[], key: HoleKey): SideHole =>
  sideValueOf(
    side.map(ball => ballHoleOf(game, ball, key)),
    countOn(game, side, key),
    game.measure,
  )

export const valuesOn = (game: SoundGame, key: HoleKey): SideHole[] =>
  game.sides.map(side => sideHoleOf(game, side, key))

/** What each side may have; null while something is still to be written. A ball picked up is worse than any number. */
export function netsOf(values: readonly SideHole[]): (readonly KnownNet[])[] | null {
  const nets = values.map(value => {
    if (value.kind === 'value') return [value.value]
    if (value.kind === 'two') return value.values.map(each => each ?? 'picked-up')
    return value.kind === 'open' ? [] : (['picked-up'] as const)
  })
  return nets.every(each => each.length > 0) ? nets : null
}

export const unsettledOf = (game: SoundGame, keys: readonly HoleKey[]): HoleKey[] =>
  keys.filter(key => game.sides.some(side => isUnsettled(game, side, key)))
