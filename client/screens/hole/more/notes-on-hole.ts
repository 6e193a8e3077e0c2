import { holeKey, type PlayedHole } from '#core/card/score.ts'
import type { AgreedHole, AgreedResult } from '#core/formats/happenings.ts'
import type { Game, Group, Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { sideName } from '../../../parts/side-name.ts'
import { say } from '../../../words/say-any.ts'
import { gameTitle } from '../../board/board-view.ts'

/** What stands noted on a hole, one sentence each; what is said of a whole match stands on every hole. */
export function notesOnHole(outing: Outing, group: Group, at: PlayedHole): readonly string[] {
  const key = holeKey(at)
  const { notes } = outing
  const nameOf = (ball: BallId): string => outing.balls.get(ball)?.name ?? ball
  const ofBalls = group.balls.flatMap(ball => {
    const drive = notes.drives.get(ball)?.get(key)
    const teesOff = notes.teeShots.get(ball)?.get(key)
    const likely = notes.likelyScores.get(ball)?.get(key)
    return [
      ...(drive ? [say('note-drive', { ball: nameOf(ball), player: outing.players.get(drive)?.name ?? drive })] : []),
      ...(teesOff
        ? [say('note-tee-shot', { ball: nameOf(ball), player: outing.players.get(teesOff)?.name ?? teesOff })]
        : []),
      ...(likely === undefined ? [] : [say('note-likely', { player: nameOf(ball), score: likely })]),
    ]
  })
  const out = notes.holesOut.get(key)
  return [
    ...(out ? [say('note-out', { counts: say(`hole-out-${out.counts}`) })] : []),
    ...outing.games.flatMap(game => notesOfGame(outing, group, game, at)),
    ...ofBalls,
    ...absenceWords(outing, group),
  ]
}

function notesOfGame(outing: Outing, group: Group, game: Game, at: PlayedHole): readonly string[] {
  const found = outing.notes.ofGames.get(game.id)
  if (!found) return []
  const key = holeKey(at)
  const title = gameTitle(game.format)
  const isOwn = (ball: BallId): boolean => group.balls.includes(ball)
  const sideOf = (ball: BallId): string => sideName(outing, sideWith(game, ball))
  return [
    ...found.strokeConcessions
      .filter(each => each.hole === key && isOwn(each.ball))
      .map(({ ball, score }) =>
        say('note-stroke', { game: title, player: outing.balls.get(ball)?.name ?? ball, score }),
      ),
    ...found.holeConcessions
      .filter(each => each.hole === key && isOwn(each.by))
      .map(({ by, to }) =>
        to === null
          ? say('note-hole', { game: title, side: sideOf(by) })
          : say('note-hole-to', { game: title, side: sideOf(by), other: sideOf(to) }),
      ),
    ...found.matchConcessions
      .filter(({ by }) => isOwn(by))
      .map(({ by }) => say('note-matched', { game: title, side: sideOf(by) })),
    ...found.agreedHoles
      .filter(each => each.hole === key && each.between.some(isOwn))
      .map(each => say('note-agreed', { game: title, result: agreedWords(outing, game, each) })),
    ...found.agreedResults
      .filter(({ between }) => between.some(isOwn))
      .map(each => say('note-match-agreed', { game: title, result: agreedResultWords(outing, game, each) })),
    ...found.presses
      .filter(each => each.from === key && isOwn(each.by))
      .map(({ by }) => say('note-press', { game: title, side: sideOf(by) })),
  ]
}

/** The side of a game that a ball is of; the ball alone where it is of none. */
export const sideWith = ({ sides }: Game, ball: BallId): readonly BallId[] =>
  sides?.find(side => side.includes(ball)) ?? [ball]

const agreedWords = (outing: Outing, game: Game, { won }: Pick<AgreedHole, 'won'>): string =>
  won === null ? say('halved') : say('agree-won', { side: sideName(outing, sideWith(game, won)) })

export function agreedResultWords(outing: Outing, game: Game, { won, by, left }: AgreedResult): string {
  if (won === null) return say('halved')
  const score = left > 0 ? `${by} & ${left}` : say('n-up', { n: by })
  return say('agreed-result', { side: sideName(outing, sideWith(game, won)), score })
}

function absenceWords(outing: Outing, group: Group): readonly string[] {
  return group.balls.flatMap(ball => {
    const absence = outing.notes.absences.get(ball)
    if (!absence) return []
    const player = outing.balls.get(ball)?.name ?? ball
    const holeOf = (key: string | null): string => key?.split('/')[0] ?? ''
    const { joinedAt, leftAt, isWithdrawn } = absence
    return [
      ...(isWithdrawn ? [say('absent-withdrawn', { player })] : []),
      ...(joinedAt === null && leftAt === null && !isWithdrawn ? [say('absent-all', { player })] : []),
      ...(joinedAt === null ? [] : [say('absent-joined', { player, hole: holeOf(joinedAt) })]),
      ...(leftAt === null ? [] : [say('absent-left', { player, hole: holeOf(leftAt) })]),
    ]
  })
}
