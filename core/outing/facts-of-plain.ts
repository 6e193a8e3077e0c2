import { roundFrom } from '#core/card/order-of-play.ts'
import type { PlayedHole } from '#core/card/score.ts'
import { must } from '#core/values/assert.ts'
import type { GroupId } from '#core/values/ids.ts'
import type { Handicap, HoleAndLap, Tee, TeeRatings } from './facts.ts'
import { factsOfNotes } from './facts-of-notes.ts'
import { gameHolesFacts } from './game-holes.ts'
import { defaultGameMethods, gameFacts } from './game-settings.ts'
import { scoreKey } from './keys.ts'
import {
  ballsOfPlain,
  groupOfScores,
  type PlainGame,
  type PlainGroup,
  type PlainHandicap,
  type PlainOuting,
  type PlainPlayer,
  type PlainRatings,
  type PlainSketch,
  type PlainTee,
} from './plain-file.ts'
import { methodsNamed } from './plain-methods.ts'
import { scoresInFile } from './plain-scores.ts'
import { type NewFact, statedFact } from './stated-fact.ts'
import { parseIndexTenths, parseTenths } from './tenths.ts'

/** The facts that a plain file without faults states, one act. */
export function factsOfPlain(file: PlainOuting): NewFact[] {
  return [
    ...headFacts(file),
    ...courseFacts(file),
    ...file.players.flatMap(playerFacts),
    ...ballsOfPlain(file).map(({ id, players }) => statedFact('ball', { ball: id }, { players })),
    ...file.groups.flatMap(group => groupFacts(file, group)),
    ...(file.games ?? []).flatMap(gameOfPlain),
    ...scoreFacts(file),
    ...factsOfNotes(file),
    ...(file.closed ?? []).map(ball => statedFact('closeBall', { ball }, { scores: scoresInFile(file, ball) })),
  ]
}

const headFacts = (file: PlainOuting): NewFact[] => [
  ...(file.title === undefined ? [] : [statedFact('title', {}, file.title)]),
  ...(file.day === undefined ? [] : [statedFact('day', {}, file.day)]),
  statedFact('length', {}, file.length),
  statedFact('rules', {}, file.rules ?? true),
  ...(file.main === undefined ? [] : [statedFact('main', {}, file.main)]),
]

const courseFacts = ({ course }: PlainOuting): NewFact[] => [
  ...(course.name === undefined ? [] : [statedFact('course', {}, { name: course.name })]),
  ...course.holes.map((hole, place) => statedFact('hole', { hole: place + 1 }, hole)),
  ...(course.tees ?? []).map(teeFact),
  ...(course.sketches ?? []).flatMap(sketchFacts),
]

const sketchFacts = ({ hole, green, shapes }: PlainSketch): NewFact[] => [
  ...(green === undefined ? [] : [statedFact('green', { hole }, green)]),
  ...(shapes ?? []).map((shape, place) => statedFact('shape', { hole, shape: `00${place + 1}` }, shape)),
]

const teeFact = (tee: PlainTee): NewFact => statedFact('tee', { tee: tee.id }, teeOfPlain(tee))

/** A tee as its fact holds it. */
export const teeOfPlain = (tee: PlainTee): Tee => ({
  name: tee.name,
  ratings: ratingsOf(tee.ratings),
  frontRatings: ratingsOf(tee.frontRatings),
  backRatings: ratingsOf(tee.backRatings),
  pars: tee.pars ?? null,
  indexes: tee.indexes ?? null,
  lengths: tee.lengths ?? null,
})

const ratingsOf = (ratings: PlainRatings | undefined): TeeRatings | null =>
  ratings === undefined
    ? null
    : {
        courseRatingTenths: must(parseTenths(ratings.courseRating), 'a rating is in tenths'),
        slope: ratings.slope,
        par: ratings.par,
      }

const playerFacts = ({ id, name, tee, handicap }: PlainPlayer): NewFact[] => [
  statedFact('player', { player: id }, { name }),
  ...(handicap === undefined ? [] : [statedFact('handicap', { player: id }, handicapOfPlain(handicap))]),
  ...(tee === undefined ? [] : [statedFact('playerTee', { player: id }, tee)]),
]

/** A handicap as its fact holds it. */
export function handicapOfPlain(handicap: PlainHandicap): Handicap {
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
    statedFact('group', { group: group.id }, { name: group.name }),
    ...(order === null ? [] : [statedFact('order', { group: group.id }, order)]),
    ...group.balls.map((ball, place) =>
      statedFact('place', { ball }, { group: group.id, position: place + 1, elsewhere: elsewhereOf(file, ball) }),
    ),
  ]
}

const elsewhereOf = ({ moved }: PlainOuting, of: string): { group: GroupId; holes: readonly HoleAndLap[] }[] =>
  (moved ?? []).filter(({ ball }) => ball === of).map(({ group, holes }) => ({ group, holes }))

/** Null where the round is the holes from 1 as they are numbered. */
function orderOfPlain({ length, course }: PlainOuting, { start, order }: PlainGroup): readonly HoleAndLap[] | null {
  if (order !== undefined) return order
  if ((start ?? 1) === 1 && course.holes.length >= length) return null
  return roundFrom(start ?? 1, length, course.holes.length).map(({ hole, lap }) => [hole, lap])
}

const gameOfPlain = (game: PlainGame): NewFact[] => {
  const { id, group = null, from = null, to = null } = game
  const over = from === null && to === null ? [] : gameHolesFacts({ game: id, group, from: atOf(from), to: atOf(to) })
  const facts = gameFacts({
    id: game.id,
    group: game.group ?? null,
    format: game.format,
    sides: game.sides,
    methods: { ...defaultGameMethods(game.format, methodsNamed(game)), ...methodsNamed(game) },
  })
  return [...facts, ...over]
}

const atOf = (pair: HoleAndLap | null): PlayedHole | null => pair && { hole: pair[0], lap: pair[1] }

function scoreFacts(file: PlainOuting): NewFact[] {
  return (file.scores ?? []).flatMap(row => {
    const { ball, record = 'card', lap = 1 } = row
    const group = groupOfScores(file, row) ?? ''
    return row.holes.flatMap((score, place) =>
      score === null ? [] : [{ key: scoreKey({ group, ball, hole: place + 1, lap, record }), value: score }],
    )
  })
}
