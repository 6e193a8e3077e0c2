import type { HoleKey } from '#core/card/score.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import { isMatch, matchPairsOf } from '#core/formats/match-pairs.ts'
import type { PreparedGame } from '#core/formats/prepared-game.ts'
import { formatTable } from '#core/formats/table.ts'
import type { PreparedGames } from '#core/outing/levels.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatList } from '../../words/figures.ts'
import { isWordKey, say } from '../../words/say.ts'

export interface StrokesHere {
  /** The games by their short words: "match", "points, net", "v Birch". */
  readonly words: string
  readonly strokes: number
}

/** A ball's strokes on a hole by game; one word where all games agree, nothing where there is none at all. */
export function strokesHere(
  outing: Outing,
  prepared: PreparedGames,
  ball: BallId,
  key: HoleKey,
): readonly StrokesHere[] {
  const found = strokesOf(outing, prepared, ball, key)
  const wordsOf = new Map<number, readonly string[]>()
  for (const { words, strokes } of found) wordsOf.set(strokes, [...new Set([...(wordsOf.get(strokes) ?? []), words])])
  const [only, ...others] = wordsOf
  if (!only) return []
  if (others.length > 0) return [...wordsOf].map(([strokes, words]) => ({ words: formatList(words), strokes }))
  const [strokes] = only
  if (strokes === 0) return []
  const [first] = found
  const words = found.length === 1 ? (first?.words ?? '') : say(found.length === 2 ? 'both' : 'all')
  return [{ words, strokes }]
}

export interface StrokesOverHoles {
  readonly words: string
  readonly byHole: readonly number[]
}

/** A ball's strokes on some holes, a line a game; games that agree on all of them share one, none without a stroke. */
export function strokesOver(
  outing: Outing,
  prepared: PreparedGames,
  ball: BallId,
  keys: readonly HoleKey[],
): readonly StrokesOverHoles[] {
  const lines = new Map<string, number[]>()
  for (const [place, key] of keys.entries()) {
    for (const { words, strokes } of strokesOf(outing, prepared, ball, key)) {
      const line = lines.get(words) ?? keys.map(() => 0)
      line[place] = strokes
      lines.set(words, line)
    }
  }
  const wordsOf = new Map<string, string[]>()
  for (const [words, byHole] of lines) {
    if (byHole.every(strokes => strokes === 0)) continue
    wordsOf.set(byHole.join(), [...(wordsOf.get(byHole.join()) ?? []), words])
  }
  return [...wordsOf].map(([byHole, words]) => ({
    words: formatList(words),
    byHole: byHole.split(',').map(Number),
  }))
}

interface Found extends StrokesHere {
  readonly title: string
}

function strokesOf(outing: Outing, prepared: PreparedGames, ball: BallId, key: HoleKey): readonly Found[] {
  const games = [...prepared.values()]
  const isOneMatch = games.filter(game => game.kind === 'sound' && isMatch(game.sound.contest)).length < 2
  return toldApart(games.flatMap(game => strokesIn(outing, game, ball, key, isOneMatch)))
}

/** Two games with one short word and different strokes go by their whole names. */
const toldApart = (found: readonly Found[]): readonly Found[] =>
  found.map(each =>
    found.some(other => other.words === each.words && other.strokes !== each.strokes)
      ? { ...each, words: each.title }
      : each,
  )

/** One entry a game; of a game with several matches one for each, where they differ. */
function strokesIn(
  outing: Outing,
  game: PreparedGame,
  ball: BallId,
  key: HoleKey,
  isOneMatch: boolean,
): readonly Found[] {
  if (game.kind === 'gap' || !game.sound.measure.isNet) return []
  const { format, contest, strokes } = game.sound
  const word = isMatch(contest) && isOneMatch ? say('match') : shortWord(format)
  const title = say(format)
  const own = strokes.get(ball)?.byHole.get(key)
  if (!isMatch(contest)) return own === undefined ? [] : [{ words: word, title, strokes: own }]
  const matches = matchPairsOf(game.sound).flatMap(({ sides, strokes: given }) => {
    const here = given.get(ball)?.byHole.get(key)
    const other = sides.find(side => !side.includes(ball)) ?? []
    return here === undefined || !sides.flat().includes(ball)
      ? []
      : [{ words: say('against', { side: sideName(outing, other) }), title, strokes: here }]
  })
  const [first, ...rest] = matches
  if (!first || rest.some(({ strokes }) => strokes !== first.strokes)) return matches
  return [{ words: word, title, strokes: first.strokes }]
}

/** A game in a word, where there is little room. */
export function shortWord(format: FormatName): string {
  const key = `short-${format}`
  return isWordKey(key) ? say(key) : say(`short-${formatTable[format].measure.unit}`)
}
