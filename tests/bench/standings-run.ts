import { deepStrictEqual } from 'node:assert'
import { performance } from 'node:perf_hooks'
import { emptyLog, foldOps, type LogState, seenUnder } from '#core/log/fold.ts'
import type { Op } from '#core/log/op.ts'
import type { defaultGameMethods } from '#core/outing/game-settings.ts'
import { type Reckoned, resultsAfter } from '#core/outing/results-of.ts'
import { type OutingView, viewAfter, viewOf } from '#core/outing/view.ts'
import type { GameId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'
import { type BenchResult, quantile, rounded } from './figures.ts'
import { dayWith, everyBall, everyPair, lastKeyOf, oneMore, opsOfDay } from './standings-field.ts'
import { loadYardstick } from './standings-sql.ts'

/** A line of the board: place after countback, points, holes. */
export interface Row {
  readonly ball: string
  readonly total: number
  readonly through: number
  readonly place: number
}

const warmUps = 30
const rounds = 100
const budget = { oneGame: 1, sixGames: 4, oneMore: 0.1 }

const countedBack = {
  method: 'points',
  scheme: 'nine-six-three-one',
  holes: 'card-order',
  ifStillTied: 'shared',
} as const

const game = (format: Parameters<typeof defaultGameMethods>[0], more: object = {}) => ({
  id: format,
  format,
  sides: everyBall,
  ...more,
})

const one = [game('stableford', { ties: countedBack })]
const six = [
  ...one,
  game('stroke-play-gross'),
  game('stroke-play-net', { ties: { ...countedBack, method: 'share-of-handicap' } }),
  game('maximum-score-net'),
  game('par-bogey'),
  game('four-ball-stableford', { sides: everyPair }),
]

/** Run as built: see tests/kit/as-built.ts. */
export async function runStandings(): Promise<BenchResult> {
  const ops = opsOfDay(dayWith(one))
  const sql = await loadYardstick(ops)
  const day = boardOf(foldOps(emptyLog, ops))
  deepStrictEqual(
    rowsOf(day),
    sql.rows().map(row => ({ ...row })),
  )
  const opsOfSix = opsOfDay(dayWith(six))
  const [yardstick, oneGame] = mediansOf(
    () => sql.rows(),
    () => rowsOf(boardOf(foldOps(emptyLog, ops))),
  )
  // Apart, so that what it leaves to collect does not fall on the others.
  const [sixGames] = mediansOf(() => boardOf(foldOps(emptyLog, opsOfSix)).results.games.size)
  const oneMoreMs = benchOneMore(day, ops)
  const ratio = {
    oneGame: rounded(oneGame / yardstick),
    sixGames: rounded(sixGames / yardstick),
    oneMore: rounded(oneMoreMs / yardstick),
  }
  return {
    name: 'standings',
    ours: { oneGame: rounded(oneGame), sixGames: rounded(sixGames), oneMore: rounded(oneMoreMs) },
    yardstick: { oneGame: rounded(yardstick) },
    ratio,
    budget,
    holds: ratio.oneGame <= budget.oneGame && ratio.sixGames <= budget.sixGames && ratio.oneMore <= budget.oneMore,
  }
}

/**
 * Each step's rows are checked against a full fold of everything so far; afterwards, so that collecting what the checks
 * leave behind does not fall on the steps.
 */
function benchOneMore(start: Board, before: readonly Op[]): number {
  const ops = [...before]
  const steps: { readonly ms: number; readonly rows: readonly Row[]; readonly ops: number }[] = []
  let board = start
  for (let step = 0; step < warmUps + rounds; step++) {
    const op = oneMore(ops, step, seenUnder(board.view.state, lastKeyOf(step)))
    ops.push(op)
    const from = performance.now()
    board = boardAfter(board, foldOps(board.view.state, [op]))
    const rows = rowsOf(board)
    steps.push({ ms: performance.now() - from, rows, ops: ops.length })
  }
  for (const { rows, ops: count } of steps)
    deepStrictEqual(rows, rowsOf(boardOf(foldOps(emptyLog, ops.slice(0, count)))))
  return quantile(
    steps.slice(warmUps).map(({ ms }) => ms),
    0.5,
  )
}

/** A view with the results that a board shows of it. */
interface Board extends Reckoned {
  readonly view: OutingView
}

const boardOf = (state: LogState): Board => boardOn(viewOf(state, isKnownValue), null)

const boardAfter = (before: Board, state: LogState): Board =>
  boardOn(viewAfter(before.view, state, isKnownValue), before)

const boardOn = (view: OutingView, before: Board | null): Board => ({
  view,
  levels: view.levels,
  results: resultsAfter(before, view.levels),
})

function rowsOf({ results }: Board): Row[] {
  const result = results.games.get('stableford' as GameId)
  if (result?.kind !== 'total') throw new Error('the Stableford has lines')
  return result.lines
    .map(({ side: [ball = ''], total, through, place }) => ({ ball, total: total ?? 0, through, place: place ?? 0 }))
    .sort((a, b) => a.place - b.place || (a.ball < b.ball ? -1 : 1))
}

/** In milliseconds. Turn about, so that whatever else the machine does falls on all of them. */
function mediansOf<Runs extends readonly (() => unknown)[]>(...runs: Runs): { [place in keyof Runs]: number } {
  const times = runs.map((): number[] => [])
  for (let round = 0; round < warmUps + rounds; round++) {
    for (const [place, run] of runs.entries()) {
      const from = performance.now()
      run()
      times[place]?.push(performance.now() - from)
    }
  }
  return times.map(each => quantile(each.slice(warmUps), 0.5)) as { [place in keyof Runs]: number }
}
