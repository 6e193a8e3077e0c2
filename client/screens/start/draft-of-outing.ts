import { formatNames } from '#core/formats/format-names.ts'
import type { Ball, Game, Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { fitsBalls } from '../games/families.ts'
import { draftOfGame } from '../games/game-draft.ts'
import { courseOfOuting, withCourse } from './course-of.ts'
import { type Draft, emptyDraft, type PlayerDraft } from './draft.ts'
import { type BallDraft, ballsOfDraft } from './draft-balls.ts'
import { figureOf } from './figure-of.ts'

/**
 * The same game again: course, players, games and start hole in the fields of a new outing, no score and no id of the old
 * one. Null where the fields cannot hold it: the course lacks a hole, balls of one and of several stand side by side.
 */
export function draftOfOuting(outing: Outing, log: string, label: string): Draft | null {
  const course = courseOfOuting(outing)
  const balls = ballsInOrder(outing)
  const [ballPlayers = 0] = balls.map(ball => ball.players.length)
  const start = [...outing.groups.values()][0]?.round[0]?.hole ?? 1
  const isMixed = balls.some(({ players }) => players.length !== ballPlayers)
  if (course === null || ballPlayers === 0 || isMixed || start > outing.length) return null
  const onCourse = withCourse({ ...emptyDraft, length: outing.length }, course, log)
  if (onCourse.length !== outing.length) return null
  const newIds = new Map(balls.flatMap(({ players }) => players).map((id, place) => [id as string, `p${place + 1}`]))
  const players = [...newIds].map(([old, id]) => playerDraft(outing, old, id))
  const draft = {
    ...onCourse,
    players,
    ballPlayers,
    partnersChosen: ballPlayers === 1 ? null : balls.map(ball => partnersAgain(ball, newIds)),
    startHole: start,
    isUnderRules: outing.rules,
    phoneOf: players.find(({ name }) => name === label)?.id ?? 'p1',
  }
  return { ...draft, games: gamesAgain(outing, draft, balls, newIds) }
}

const ballsInOrder = ({ groups, balls }: Outing): readonly Ball[] =>
  [...groups.values()].flatMap(group => group.balls).flatMap(id => balls.get(id) ?? [])

function playerDraft({ players }: Outing, old: string, id: string): PlayerDraft {
  const player = [...players.values()].find(each => each.id === old)
  return { id, name: player?.name ?? '', tee: player?.tee ?? '', ...figureOf(player?.handicap ?? null) }
}

type NewIds = ReadonlyMap<string, string>

const partnersAgain = (ball: Ball, newIds: NewIds): readonly string[] => ball.players.map(id => newIds.get(id) ?? '')

const playersIn = (ball: Ball, newIds: NewIds): string => [...partnersAgain(ball, newIds)].sort().join(' ')

/** The games of everybody, and in an outing of one group that group's own; of a format twice the first. */
function gamesAgain(outing: Outing, draft: Draft, balls: readonly Ball[], newIds: NewIds): Draft['games'] {
  const drafts = ballsOfDraft(draft)
  const named = drafts.map(({ id }) => ({ id, name: id }))
  const newBall = new Map(balls.map(ball => [ball.id, idAgain(ball, drafts, newIds)]))
  const played = formatNames.flatMap(format => {
    const game = outing.games.find(
      each =>
        each.format === format &&
        (each.group === null || outing.groups.size === 1) &&
        fitsBalls(format, draft.ballPlayers),
    )
    return game ? [[format, draftOfGame(withBalls(game, newBall), named)] as const] : []
  })
  const none = Object.fromEntries(formatNames.map(format => [format, { ...draft.games[format], isOn: false }]))
  return { ...none, ...Object.fromEntries(played) } as Draft['games']
}

const idAgain = (ball: Ball, drafts: readonly BallDraft[], newIds: NewIds): BallId =>
  (drafts.find(({ players }) => [...players].sort().join(' ') === playersIn(ball, newIds))?.id ?? '') as BallId

const withBalls = (game: Game, newBall: ReadonlyMap<BallId, BallId>): Game => ({
  ...game,
  // Another day has another draw.
  methods: { ...game.methods, drawnCard: null },
  sides: game.sides?.map(side => side.flatMap(id => newBall.get(id) ?? [])) ?? null,
})
