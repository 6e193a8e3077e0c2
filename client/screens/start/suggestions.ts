import type { FormatName } from '#core/formats/format-names.ts'
import { strokesGivenIn } from '#core/formats/table.ts'
import { say } from '../../words/say-any.ts'
import { newGameDraft } from '../games/game-draft.ts'
import type { Draft } from './draft.ts'
import { gamesChosen } from './draft-balls.ts'

/** What so many players choose most, each with its own ball; common practice, and our own game. */
const byPlayers = {
  2: ['singles-match', 'stableford', 'six-threes-match', 'nassau'],
  3: ['nine-points', 'split-sixes', 'three-ball-match', 'skins'],
  4: ['four-ball-match', 'sixes', 'nassau', 'skins', 'six-threes-match'],
  field: ['stableford', 'stroke-play-net', 'skins'],
} as const satisfies Readonly<Record<string, readonly FormatName[]>>

export type Suggested = (typeof byPlayers)[keyof typeof byPlayers][number]

/** The games to suggest; none to one player, nor where balls are shared. */
export function suggestionsFor({ players: { length }, ballPlayers }: Draft): readonly Suggested[] {
  if (ballPlayers > 1 || length < 2) return []
  return length > 4 ? byPlayers.field : byPlayers[length as 2 | 3 | 4]
}

/** What it is, and whose strokes count. */
export const suggestionWords = (format: Suggested): string =>
  `${say(`suggest-${format}`)} ${say(`suggest-strokes-${strokesGivenIn(format)}`)}`

/** This game alone, as the format proposes it. */
export const withSuggestion = ({ games }: Draft, format: FormatName): Pick<Draft, 'games'> => {
  const off = Object.entries(games).map(([name, game]) => [name, { ...game, isOn: false }] as const)
  return { games: { ...(Object.fromEntries(off) as Draft['games']), [format]: newGameDraft(format, true) } }
}

export function isSuggestionOn(draft: Draft, format: FormatName): boolean {
  const [first, ...others] = gamesChosen(draft)
  return first === format && others.length === 0
}
