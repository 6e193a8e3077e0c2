import type { HoleKey } from '#core/card/score.ts'
import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult } from '#core/formats/game-result.ts'
import { extraHolesInPlay, holesInPlay, netsOf, unsettledOf, valuesOn } from '#core/formats/share-holes.ts'
import { shareLines } from '#core/formats/shares.ts'
import type { ShareHole } from '#core/formats/shares-result.ts'
import { type OpenSkinsHole, type SkinOutcomes, skinOutcomes, skinsOfOutcomes } from '#core/formats/skins.ts'
import type { SkinsMethod } from '#core/formats/skins-methods.ts'
import { must } from '#core/values/assert.ts'
import { type Fraction, fraction, zero } from '#core/values/fraction.ts'

/**
 * A skin on every hole for the one lowest score, each off its own strokes. Skins that wait after the last hole are nobody's,
 * are shared out, or are played for over extra holes, as the game says. Common practice; no body publishes it.
 */
export const skins: Contest = resultOf

function resultOf(game: SoundGame): GameResult {
  const method = must(game.methods.skins, 'what becomes of a tied hole is set')
  const left = game.methods.skinsLeft ?? 'unclaimed'
  const scheduled = holesInPlay(game)
  const all = left === 'play-on' ? [...scheduled, ...extraHolesInPlay(game)] : scheduled
  const { keys, values, open } = untilNothingWaits(game, method, all, scheduled.length)
  const holes = open.map((hole, place) => holeOf(game, method, keys[place], values[place] ?? [], hole))
  const isFinished = holes.every(({ kind }) => kind !== 'open' && kind !== 'waiting')
  const waiting = carriedAfter(open, holes)
  const over = isFinished ? (waiting ?? 0) : 0
  const sharedOut = left === 'shared-out' ? over : 0
  return {
    kind: 'shares',
    game: game.game,
    format: game.format,
    strokes: game.strokes,
    gaps: game.gaps,
    unit: 'skins',
    holes,
    lines: shareLines(game.sides, [
      ...holes.map(({ shares }) => shares),
      ...(sharedOut > 0 ? [inAlikeShares(game, sharedOut)] : []),
    ]),
    carried: isFinished ? 0 : waiting,
    unclaimed: holes.filter(({ kind }) => kind === 'unclaimed').length + over - sharedOut,
    sharedOut,
    unsettled: unsettledOf(game, keys),
    isFinished,
  }
}

/** The scheduled holes, and of those after them each for which something may wait. */
function untilNothingWaits(game: SoundGame, method: SkinsMethod, all: readonly HoleKey[], scheduled: number) {
  const values = all.map(key => valuesOn(game, key))
  const outcomes = values.map(each => outcomesOf(game, netsOf(each)))
  const open = skinsOfOutcomes(outcomes, method, scheduled)
  const isPlayed = (_: unknown, place: number): boolean =>
    place < scheduled || open[place]?.pots.some(pot => pot > 0) === true
  return { keys: all.filter(isPlayed), values: values.filter(isPlayed), open: open.filter(isPlayed) }
}

const inAlikeShares = ({ sides }: SoundGame, skins: number): readonly Fraction[] =>
  sides.map(() => fraction(skins, sides.length))

/** Anybody may win a hole that is not written yet, or nobody. */
const outcomesOf = (game: SoundGame, nets: ReturnType<typeof netsOf>): SkinOutcomes =>
  nets === null ? [...game.sides.keys(), null] : skinOutcomes(nets)

function holeOf(
  game: SoundGame,
  method: SkinsMethod,
  key: HoleKey | undefined,
  values: ShareHole['values'],
  { outcomes, pots }: OpenSkinsHole,
): ShareHole {
  const [winner = null, ...others] = outcomes
  const [pot = 0, ...otherPots] = pots
  const isPotKnown = otherPots.length === 0
  const hole = { key: must(key, 'a hole has its key'), values, shares: null, pot: isPotKnown ? pot : null }
  if (others.length > 0) return { ...hole, kind: 'open' }
  if (winner === null) return { ...hole, kind: method === 'carry-over' ? 'carried' : 'unclaimed' }
  if (!isPotKnown) return { ...hole, kind: 'waiting' }
  return { ...hole, kind: 'shared', shares: game.sides.map((_, at) => (at === winner ? fraction(pot) : zero)) }
}

/** What waits after the last hole that is decided, with every one before it. */
function carriedAfter(open: readonly OpenSkinsHole[], holes: readonly ShareHole[]): number | null {
  const decided = open.filter((_, place) => holes[place]?.kind !== 'open')
  const [carried = 0, ...others] = decided.at(-1)?.carried ?? []
  return others.length > 0 ? null : carried
}
