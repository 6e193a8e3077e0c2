import { type HoleKey, holeKey } from '#core/card/score.ts'
import { needsHandicaps } from '#core/formats/game-gaps.ts'
import type { BallStrokes, GameResult } from '#core/formats/game-result.ts'
import { formatTable } from '#core/formats/table.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import type { BallId, GameId } from '#core/values/ids.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatHoles } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { whyWords } from './strokes-why.ts'

/** What a ball receives in one game or one of its matches, where, and how it comes about. */
export interface StrokesLine {
  readonly ball: BallId
  readonly name: string
  readonly strokes: number
  /** "one at 1, 5, 7; two at 2" */
  readonly holes: string
  readonly why: string
}

/** A game, or one match of several in it. */
export interface StrokesOfGame {
  readonly id: string
  readonly game: GameId
  readonly title: string
  /** Nobody receives anything: by gross scores, or all are level. */
  readonly lines: readonly StrokesLine[]
  readonly isGross: boolean
  /** How an Index became a Course Handicap; empty where nobody has one. */
  readonly courseHandicap: string
}

/** The strokes of every game that can be computed, as its result has them. */
export const strokesOfGames = (outing: Outing, results: Results): readonly StrokesOfGame[] =>
  outing.games.flatMap(game => {
    const result = results.games.get(game.id)
    return result === undefined || result.kind === 'gap' || game.format === null ? [] : ofGame(outing, game, result)
  })

type Computed = Exclude<GameResult, { readonly kind: 'gap' }>

function ofGame(outing: Outing, game: Game, result: Computed): readonly StrokesOfGame[] {
  const title = say(result.format)
  if (!needsHandicaps(formatTable[result.format], game.methods)) {
    return [{ id: game.id, game: game.id, title, lines: [], isGross: true, courseHandicap: '' }]
  }
  const one = (id: string, name: string, strokes: ReadonlyMap<BallId, BallStrokes>): StrokesOfGame => ({
    id,
    game: game.id,
    title: name,
    lines: linesOf(outing, game, strokes),
    isGross: false,
    courseHandicap: courseHandicapWords(outing, game),
  })
  if (result.kind !== 'match' || result.matches.length < 2) return [one(game.id, title, result.strokes)]
  return result.matches.map(({ sides, strokes }) => {
    const [first = '', second = ''] = sides.map(side => sideName(outing, side))
    return one(`${game.id} ${sides.join()}`, `${title}: ${say('versus', { first, second })}`, strokes)
  })
}

function courseHandicapWords(outing: Outing, { methods, sides }: Game): string {
  const players = (sides?.flat() ?? []).flatMap(ball => outing.balls.get(ball)?.players ?? [])
  if (!players.some(id => outing.players.get(id)?.handicap?.kind === 'index')) return ''
  return say(`strokes-${methods.courseHandicap ?? 'with-rating-minus-par'}`)
}

const linesOf = (outing: Outing, game: Game, strokes: ReadonlyMap<BallId, BallStrokes>): readonly StrokesLine[] =>
  [...strokes].map(([ball, of]) => ({
    ball,
    name: sideName(outing, [ball]),
    strokes: of.strokes,
    holes: holesWords(outing, ball, of.byHole),
    why: whyWords(outing, game, ball, strokes),
  }))

/** Where a ball's strokes fall in the round, fewest first. */
function holesWords(outing: Outing, ball: BallId, byHole: ReadonlyMap<HoleKey, number>): string {
  const group = outing.balls.get(ball)?.group ?? null
  const keys = group === null ? [...byHole.keys()] : (outing.groups.get(group)?.round ?? []).map(holeKey)
  const holes = new Map<number, number[]>()
  for (const key of keys) {
    const here = byHole.get(key) ?? 0
    if (here !== 0) holes.set(here, [...(holes.get(here) ?? []), Number(key.split('/')[0])])
  }
  const words = [...holes]
    .sort(([a], [b]) => a - b)
    .map(([here, at]) => {
      const fill = {
        n: Math.abs(here),
        holes: at.length === keys.length ? say('strokes-all') : formatHoles(inOrder(at)),
      }
      if (here < 0) return say('strokes-back-at', fill)
      return say(here === 1 ? 'strokes-one-at' : here === 2 ? 'strokes-two-at' : 'strokes-n-at', fill)
    })
  return words.join('; ')
}

const inOrder = (holes: readonly number[]): readonly number[] => [...holes].sort((a, b) => a - b)
