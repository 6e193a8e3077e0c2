import { holeKey, type PlayedHole } from '#core/card/score.ts'
import { honourOf } from '#core/outing/honour.ts'
import type { Levels } from '#core/outing/levels.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import { pickUpFrom } from '#core/outing/pick-up-hint.ts'
import type { Results } from '#core/outing/results.ts'
import type { BallId } from '#core/values/ids.ts'
import { aheadIn, standOf, toPlayOf } from '../../parts/match-view.ts'
import { sideName } from '../../parts/side-name.ts'
import { resultsOn } from '../../state/use-results.ts'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { isLastHole } from './hole-view.ts'
import { type LevelMatch, levelAtEnd } from './level-at-end.ts'
import { type SkinsAtEnd, skinsAtEnd } from './skins-left.ts'
import { type Stand, standsOf } from './stands.ts'
import { tieAtEnd } from './tie-left.ts'

/** How a match stands, beside the number of the hole. */
export interface HeadMatch {
  /** "2 up" */
  readonly stand: string
  /** Who is ahead; empty where nobody is. */
  readonly side: string
  readonly toPlay: string
  /** Which game it is; empty where there is one alone. */
  readonly title: string
}

/** What the games come to for those on a hole. */
export interface Standings {
  readonly head: HeadMatch | null
  /** What the head has no room for. */
  readonly others: readonly Pick<Stand, 'label' | 'words'>[]
  readonly honour: readonly BallId[]
  /** A match that the last hole leaves level, and skins that wait after it. */
  readonly level: LevelMatch | null
  readonly left: SkinsAtEnd | null
  /** A tie that is to be played off, once the last hole is scored. */
  readonly tied: readonly (readonly BallId[])[] | null
  /** After how many strokes a ball still out may be picked up; empty where every stroke counts. */
  readonly pickUp: string
}

export function standingsOnHole(
  outing: Outing,
  levels: Levels,
  group: Group,
  scored: readonly BallId[],
  at: PlayedHole,
): Standings {
  const results = resultsOn(levels)
  const stands = standsOf(outing, results, group.balls, holeKey(at))
  // A match that goes on comes before one that is over.
  const first = stands.find(({ match }) => match?.state.result === null) ?? stands.find(({ match }) => match !== null)
  return {
    head: first ? headMatch(outing, first, stands.length > 1) : null,
    others: stands.filter(stand => stand !== first),
    honour: honourOf(outing, results, group, at)?.balls ?? [],
    level: levelAtEnd(results, group, at),
    left: skinsAtEnd(outing, results, group, at),
    tied: isLastHole(group, at) ? tieAtEnd(outing, results, group) : null,
    pickUp: pickUpWords(outing, results, scored, at),
  }
}

function headMatch(outing: Outing, { match, title }: Stand, hasOthers: boolean): HeadMatch | null {
  if (match === null) return null
  const ahead = aheadIn(match)
  return {
    stand: standOf(match.state),
    side: ahead ? sideName(outing, ahead) : '',
    toPlay: toPlayOf(match.state),
    title: hasOthers ? title : '',
  }
}

function pickUpWords(outing: Outing, results: Results, balls: readonly BallId[], at: PlayedHole): string {
  const open = balls.filter(ball => (outing.cards.get(ball)?.scores.get(holeKey(at))?.kind ?? 'none') === 'none')
  const told = open.flatMap(ball => {
    const from = pickUpFrom(outing, results, ball, at)
    return from === null ? [] : [say('pick-up-each', { player: outing.balls.get(ball)?.name ?? ball, n: from - 1 })]
  })
  return told.length === 0 ? '' : say('pick-up-from', { list: formatList(told) })
}
