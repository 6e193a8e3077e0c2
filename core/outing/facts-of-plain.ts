import { roundFrom } from '#core/card/order-of-play.ts'
import { must } from '#core/values/assert.ts'
import type { Json } from '#core/values/json.ts'
import type { NewFact } from './acts.ts'
import type { ClosedScore, FactKind, FactValues, Handicap, HoleAndLap, TeeRatings } from './facts.ts'
import { defaultGameMethods, gameFacts } from './game-settings.ts'
import { makeKey, scoreKey } from './keys.ts'
import {
  ballsOfPlain,
  groupOfScores,
  type PlainGame,
  type PlainGroup,
  type PlainHandicap,
  type PlainOuting,
  type PlainPlayer,
  type PlainRatings,
  type PlainTee,
} from './plain-file.ts'
import { methodsNamed } from './plain-methods.ts'
import { parseIndexTenths, parseTenths } from './tenths.ts'

/** The facts that a plain file without faults states, one act. */
export function factsOfPlain(file: PlainOuting): NewFact[] {
  return [
    ...headFacts(file),
    ...courseFacts(file),
    ...file.players.flatMap(playerFacts),
    ...ballsOfPlain(file).map(({ id, players }) => fact('ball', { ball: id }, { players })),
    ...file.groups.flatMap(group => groupFacts(file, group)),
    ...(file.games ?? []).flatMap(gameOfPlain),
    ...scoreFacts(file),
    ...(file.closed ?? []).map(ball => fact('closeBall', { ball }, { scores: closedScores(file, ball) })),
  ]
}

const fact = <K extends FactKind>(kind: K, slots: Parameters<typeof makeKey>[1], value: FactValues[K]): NewFact => ({
  key: makeKey(kind, slots),
  value: value as unknown as Json,
})

const headFacts = (file: PlainOuting): NewFact[] => [
  ...(file.title === undefined ? [] : [fact('title', {}, file.title)]),
  ...(file.day === undefined ? [] : [fact('day', {}, file.day)]),
  fact('length', {}, file.length),
  fact('rules', {}, file.rules ?? true),
  ...(file.main === undefined ? [] : [fact('main', {}, file.main)]),
]

const courseFacts = ({ course }: PlainOuting): NewFact[] => [
  ...(course.name === undefined ? [] : [fact('course', {}, { name: course.name })]),
  ...course.holes.map((hole, place) => fact('hole', { hole: place + 1 }, hole)),
  ...(course.tees ?? []).map(teeFact),
]

const teeFact = (tee: PlainTee): NewFact =>
  fact(
    'tee',
    { tee: tee.id },
    {
      name: tee.name,
      ratings: ratingsOf(tee.ratings),
      frontRatings: ratingsOf(tee.frontRatings),
      backRatings: ratingsOf(tee.backRatings),
      pars: tee.pars ?? null,
      indexes: tee.indexes ?? null,
      lengths: tee.lengths ?? null,
    },
  )

const ratingsOf = (ratings: PlainRatings | undefined): TeeRatings | null =>
  ratings === undefined
    ? null
    : {
        courseRatingTenths: must(parseTenths(ratings.courseRating), 'a rating is in tenths'),
        slope: ratings.slope,
        par: ratings.par,
      }

const playerFacts = ({ id, name, tee, handicap }: PlainPlayer): NewFact[] => [
  fact('player', { player: id }, { name }),
  ...(handicap === undefined ? [] : [fact('handicap', { player: id }, handicapOfPlain(handicap))]),
  ...(tee === undefined ? [] : [fact('playerTee', { player: id }, tee)]),
]

function handicapOfPlain(handicap: PlainHandicap): Handicap {
  if ('index' in handicap) {
    return { kind: 'index', tenths: must(parseIndexTenths(handicap.index), 'an index is in tenths') }
  }
  return 'courseHandicap' in handicap
    ? { kind: 'course-handicap', strokes: handicap.courseHandicap }
    : { kind: 'plain-strokes', strokes: handicap.strokes }
}

function groupFacts(file: PlainOuting, group: PlainGroup): NewFact[] {
  const order = orderOfPlain(file, group)
  return [
    fact('group', { group: group.id }, { name: group.name }),
    ...(order === null ? [] : [fact('order', { group: group.id }, order)]),
    ...group.balls.map((ball, place) =>
      fact('place', { ball }, { group: group.id, position: place + 1, elsewhere: [] }),
    ),
  ]
}

/** Null where the round is the holes from 1 as they are numbered. */
function orderOfPlain({ length, course }: PlainOuting, { start, order }: PlainGroup): readonly HoleAndLap[] | null {
  if (order !== undefined) return order
  if ((start ?? 1) === 1 && course.holes.length >= length) return null
  return roundFrom(start ?? 1, length, course.holes.length).map(({ hole, lap }) => [hole, lap])
}

const gameOfPlain = (game: PlainGame): NewFact[] => {
  return gameFacts({
    id: game.id,
    group: game.group ?? null,
    format: game.format,
    sides: game.sides,
    methods: { ...defaultGameMethods(game.format), ...methodsNamed(game) },
  })
}

function scoreFacts(file: PlainOuting): NewFact[] {
  return (file.scores ?? []).flatMap(row => {
    const { ball, record = 'card', lap = 1 } = row
    const group = groupOfScores(file, row) ?? ''
    return row.holes.flatMap((score, place) =>
      score === null ? [] : [{ key: scoreKey({ group, ball, hole: place + 1, lap, record }), value: score }],
    )
  })
}

/** A ball closes with the first of its records that has the hole. */
function closedScores(file: PlainOuting, ball: string): ClosedScore[] {
  const closed = new Map<string, ClosedScore>()
  for (const row of (file.scores ?? []).filter(each => each.ball === ball)) {
    for (const [place, score] of row.holes.entries()) {
      const at = `${place + 1}/${row.lap ?? 1}`
      if (score !== null && !closed.has(at)) closed.set(at, [place + 1, row.lap ?? 1, score])
    }
  }
  return [...closed.values()]
}
