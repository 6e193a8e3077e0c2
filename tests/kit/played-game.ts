import type { Card, CardScore, ScoreEntry } from '#core/card/card.ts'
import { roundFrom } from '#core/card/order-of-play.ts'
import { type HoleKey, type HoleScore, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import type { BallHandicap, GameInput, InputBall } from '#core/formats/game-input.ts'
import type { GameMethods } from '#core/formats/game-methods.ts'
import { resultOfGame } from '#core/formats/game-of.ts'
import type { GameResult } from '#core/formats/game-result.ts'
import { type Happenings, noHappenings } from '#core/formats/happenings.ts'
import { defaultGameMethods } from '#core/outing/game-settings.ts'
import { fraction } from '#core/values/fraction.ts'
import type { BallId, GameId, OpId, PlayerId } from '#core/values/ids.ts'
import { quillmoor } from './quillmoor.ts'

/** Nothing written, one score, or two that differ. */
export type Written = HoleScore | null | readonly [HoleScore, HoleScore]

/** A game over a round at Quillmoor, without the outing around it. */
export interface PlayedGame {
  readonly format: FormatName
  readonly sides: readonly (readonly string[])[]
  /** Course handicaps by ball; none is 0. Several are a ball's partners. */
  readonly handicaps?: Readonly<Record<string, number | readonly number[]>>
  /** In order of play; holes at the end of it may be left out. */
  readonly scores: Readonly<Record<string, readonly Written[]>>
  readonly round?: readonly PlayedHole[]
  /** Of a ball's own tee, by hole from 1, where they are not Quillmoor's. */
  readonly pars?: Readonly<Record<string, readonly number[]>>
  readonly extra?: readonly PlayedHole[]
  /** Balls whose cards the desk has closed. */
  readonly closed?: readonly string[]
  readonly methods?: Partial<GameMethods>
  readonly happenings?: Partial<Happenings>
}

type ResultOf<K extends GameResult['kind']> = Extract<GameResult, { readonly kind: K }>

/** The result of a game, which must be of this kind. */
export function resultOf<K extends GameResult['kind']>(kind: K, game: PlayedGame): ResultOf<K> {
  const result = resultOfGame(inputOf(game))
  if (result.kind !== kind) throw new Error(`${game.format} is ${result.kind}: ${JSON.stringify(result)}`)
  return result as ResultOf<K>
}

/** A side's net score on a hole off no strokes, of so many balls that count; null where too few were holed. */
export function sideNetOf(nets: readonly HoleScore[], count: number): number | null {
  const side = nets.map((_, place) => `ball-${place}`)
  const { lines } = resultOf('total', {
    format: 'best-balls-stroke-play',
    sides: [side],
    scores: Object.fromEntries(side.map((id, place) => [id, [nets[place] ?? null]])),
    methods: { countingBalls: [count] },
  })
  const found = lines[0]?.byHole.get(hole(1))
  return found?.kind === 'value' ? found.value : null
}

export const ball = (id: string): BallId => id as BallId

export const hole = (number: number, lap = 1): HoleKey => holeKey({ hole: number, lap })

export function inputOf(game: PlayedGame): GameInput {
  const { format, sides, methods, happenings, scores, handicaps } = game
  const order = [...(game.round ?? roundFrom(1, 18)), ...(game.extra ?? [])]
  const scheduled = order.length - (game.extra?.length ?? 0)
  const holesFrom = (pars: readonly number[]) =>
    order.map((played, place) => ({
      ...played,
      key: holeKey(played),
      par: pars[played.hole - 1] ?? 4,
      index: quillmoor.indexes[played.hole - 1] ?? 1,
      isScheduled: place < scheduled,
    }))
  const parsOf = (id: string): readonly number[] => game.pars?.[id] ?? quillmoor.pars
  const inputBall = (id: string): InputBall => ({
    holes: holesFrom(parsOf(id)),
    card: cardOf(order, scores[id] ?? [], game.closed?.includes(id) ?? false),
    handicaps: [handicaps?.[id] ?? 0].flat().map((exact, place) => ({
      player: `${id}${place}` as PlayerId,
      handicap: { kind: 'course', exact: fraction(exact) } satisfies BallHandicap,
      parOfRound: parsOf(id).reduce((sum, par) => sum + par, 0),
      ratings: null,
    })),
  })
  return {
    game: 'g' as GameId,
    format,
    sides: sides.map(side => side.map(ball)),
    methods: { ...defaultGameMethods(format), ...methods },
    balls: new Map(sides.flat().map(id => [ball(id), inputBall(id)])),
    happenings: { ...noHappenings, ...happenings },
  }
}

function cardOf(order: readonly PlayedHole[], written: readonly Written[], isClosed: boolean): Card {
  const scores = new Map<HoleKey, CardScore>()
  for (const [place, played] of order.entries()) {
    const here = written[place] ?? null
    if (here === null) continue
    const entries = [here].flat().map(entryOf)
    const [first] = entries
    if (first === undefined) continue
    const one = { kind: 'one', score: first.value, entries } as const
    scores.set(holeKey(played), entries.length > 1 ? { kind: 'two', entries } : one)
  }
  return { scores, isClosed }
}

const entryOf = (value: HoleScore): ScoreEntry => ({ key: 'score/k/1/1/card', value, op: 'd.1' as OpId, at: 0 })
