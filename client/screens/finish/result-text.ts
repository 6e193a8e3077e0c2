import { type HoleKey, type HoleScore, holeKey } from '#core/card/score.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { Results, Three } from '#core/outing/results.ts'
import type { BallId } from '#core/values/ids.ts'
import { formatDay, formatHoles, formatList, formatOver } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { grossOf } from '../card/card-view.ts'
import { isAllIn } from '../hole/hole-in-play.ts'
import { isWritten } from '../hole/hole-view.ts'
import { gameLines } from './game-lines.ts'

/**
 * The result as plain text for a chat: what was played, each game, and the group's cards in a line each. It reads the
 * outing's results alone: no invite, no key, and nothing that a phone keeps for its owner can stand in it.
 */
export function resultText(outing: Outing, results: Results, group: Group): string {
  const games = gameLines(outing, results).map(({ title, lines }) => [title, ...lines].join('\n'))
  const cards = [say('result-cards'), ...group.balls.map(ball => cardLine(outing, results, group, ball))].join('\n')
  const head = [headWords(outing), progressOf(outing, group)].filter(Boolean).join('\n')
  return [head, ...games, cards].join('\n\n')
}

/** "Autumn Day, Quillmoor, 10 October 2026" */
export function headWords({ title, courseName, day }: Outing): string {
  const parts = [title, courseName === title ? null : courseName, day && formatDay(day)].filter(Boolean)
  return formatList(parts.length === 0 ? [say('home-untitled')] : (parts as string[]))
}

/** "Not finished: through 12." or what else keeps the result from being final; empty once every score is settled. */
function progressOf(outing: Outing, group: Group): string {
  if (isAllIn(outing, group)) return ''
  const keys = group.round.map(holeKey)
  const through = keys.filter(key => group.balls.every(ball => isWritten(outing, ball, key))).length
  if (through === 0) return say('result-not-started')
  return through < keys.length ? say('result-so-far', { n: through }) : say('result-not-final')
}

const scoreOn = (outing: Outing, ball: BallId, key: HoleKey): HoleScore | null => {
  const found = outing.cards.get(ball)?.scores.get(key)
  return found?.kind === 'one' ? found.score : null
}

const hasTwo = (outing: Outing, ball: BallId, key: HoleKey): boolean =>
  outing.cards.get(ball)?.scores.get(key)?.kind === 'two'

/** "Alder 88: +1, level, −1, +3, level, +2", "Cedar, picked up 7: level, +4", "Birch, through 4: level" */
function cardLine(outing: Outing, results: Results, group: Group, ball: BallId): string {
  const keys = group.round.map(holeKey)
  const name = outing.balls.get(ball)?.name ?? ball
  const written = keys.filter(key => isWritten(outing, ball, key))
  const pickedUp = keys.filter(key => scoreOn(outing, ball, key) === 'picked-up').map(key => Number(key.split('/')[0]))
  const gross = grossOf(outing, ball, keys)
  const notes = [
    ...(written.length < keys.length && !isAllIn(outing, group)
      ? [written.length === 0 ? say('not-started') : say('through-n', { n: written.length })]
      : []),
    ...(pickedUp.length > 0 ? [say('result-picked-up', { holes: formatHoles(pickedUp) })] : []),
  ]
  const who = formatList([gross === null ? name : say('result-total', { side: name, total: gross }), ...notes])
  const threes = (results.cards.get(ball)?.threes ?? []).map(three => threeWords(outing, ball, three))
  // Threes still to come are left off the end.
  const told = threes.slice(0, threes.findLastIndex(words => words !== '') + 1)
  if (told.length === 0) return who
  return say('result-card', { who, threes: formatList(told.map(words => words || say('none-yet'))) })
}

/** "+1" of a closed three, "two scores on 8" where one waits, "…" of one in play, empty of one not begun. */
function threeWords(outing: Outing, ball: BallId, { holes, overLevel, isClosed }: Three): string {
  const two = holes.filter(key => hasTwo(outing, ball, key)).map(key => Number(key.split('/')[0]))
  if (two.length > 0) return say('result-two-on', { hole: formatHoles(two) })
  if (isClosed) return overLevel === null ? say('none-yet') : formatOver(overLevel)
  return holes.some(key => scoreOn(outing, ball, key) !== null) ? say('result-three-open') : ''
}
