import type { MatchHoleResult, MatchLine } from '#core/formats/game-result.ts'
import { formatMatchResult, type MatchResult, type MatchState } from '#core/formats/match-state.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { formatList, formatOrdinal } from '../words/figures.ts'
import { say } from '../words/say-any.ts'
import { sideName } from './side-name.ts'

/** How the match stands, from nobody's view: "2 up", "all square", "won 3 & 2", "halved". */
export function standOf(state: MatchState): string {
  if (state.result) return resultWords(state.result)
  return state.lead === 0 ? say('all-square') : say('n-up', { n: state.lead })
}

function resultWords(result: MatchResult): string {
  switch (result.kind) {
    case 'halved':
    case 'both-disqualified':
      return say(result.kind)
    case 'conceded':
    case 'disqualified':
    case 'agreed':
      return say(`won-${result.kind}`)
    case 'won-on-extra-hole':
      return say('won-at', { hole: formatOrdinal(result.hole) })
    default:
      return say('won-by', { result: formatMatchResult(result) })
  }
}

/** "11 to play", "dormie 2", "after 18" where extra holes follow; empty when the match is over. */
export function toPlayOf({ result, dormie, lead, toPlay, holesPlayed }: MatchState): string {
  if (result) return ''
  if (dormie) return say('dormie-n', { n: lead })
  return toPlay === 0 ? say('after-n', { n: holesPlayed }) : say('n-to-play', { n: toPlay })
}

/** "2 up, 11 to play" */
const stateWords = (state: MatchState): string => [standOf(state), toPlayOf(state)].filter(Boolean).join(', ')

/** Who is ahead, or has won; null where nobody is. */
export function aheadIn({ state, sides }: MatchLine): readonly BallId[] | null {
  const ahead = state.winner ?? (state.result ? null : state.leader)
  return ahead === null ? null : sides[ahead === 'A' ? 0 : 1]
}

/** "Alder 1 up, 12 to play" */
export function matchWords(outing: Outing, line: MatchLine): string {
  const ahead = aheadIn(line)
  const words = stateWords(line.state)
  return ahead === null ? words : `${sideName(outing, ahead)} ${words}`
}

/** The match line in words. */
export function matchLineWords(outing: Outing, line: MatchLine): string {
  const [first, second] = line.sides.map(side => sideName(outing, side))
  const told = line.holes.flatMap(({ key, result }) => {
    const words = holeWords(result, first ?? '', second ?? '', key.split('/')[0] ?? '')
    return words === null ? [] : [words]
  })
  return say('match-strip', { state: stateWords(line.state), holes: formatList(told) || say('match-none') })
}

function holeWords(result: MatchHoleResult, first: string, second: string, hole: string): string | null {
  if (result === null) return null
  if (typeof result === 'object') return say('match-two', { hole })
  if (result === 0) return say('match-halved', { hole })
  return say('match-won', { hole, side: result === 1 ? first : second })
}
