import type { HoleKey } from '#core/card/score.ts'
import type { GameResult, MatchLine } from '#core/formats/game-result.ts'
import type { PartTally } from '#core/formats/parts-result.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import type { BallId } from '#core/values/ids.ts'
import { matchWords } from '../../parts/match-view.ts'
import { partTitle } from '../../parts/part-title.ts'
import { sideName } from '../../parts/side-name.ts'
import { capital, formatList } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { shortWord } from './strokes-here.ts'

/** How one game stands for those on the hole: "Singles Alder v Birch", "Birch 1 up, 15 to play". */
export interface Stand {
  readonly label: string
  /** The game or its part alone: "Singles", "Front nine". */
  readonly title: string
  readonly words: string
  /** The match that it tells of; null for points and skins. */
  readonly match: MatchLine | null
}

/** Everything that stands between the balls of a group, in the order of the games; totals are on the board alone. */
export const standsOf = (outing: Outing, results: Results, balls: readonly BallId[], key: HoleKey): readonly Stand[] =>
  [...results.games.values()].flatMap(game => {
    if (game.kind === 'match') return matchStands(outing, game, balls)
    if (game.kind === 'parts') return partStands(outing, game, balls, key)
    return game.kind === 'shares' ? shareStands(game, balls, key) : []
  })

type Of<K extends GameResult['kind']> = Extract<GameResult, { kind: K }>

const concerns = (sides: readonly (readonly BallId[])[], balls: readonly BallId[]): boolean =>
  sides.flat().some(ball => balls.includes(ball))

const matchStands = (outing: Outing, { format, matches }: Of<'match'>, balls: readonly BallId[]): readonly Stand[] =>
  matches
    .filter(({ sides }) => concerns(sides, balls))
    .map(match => {
      const [first = '', second = ''] = match.sides.map(side => sideName(outing, side))
      const label = `${capital(shortWord(format))} ${say('versus', { first, second })}`
      return { label, title: capital(shortWord(format)), words: matchWords(outing, match), match }
    })

/** The parts in play on the hole, and those that go on over it. */
function partStands(outing: Outing, { format, parts }: Of<'parts'>, balls: readonly BallId[], key: HoleKey): Stand[] {
  return parts
    .filter(({ holes }) => holes.includes(key))
    .flatMap((part): Stand[] => {
      const title = partTitle(part)
      const label = `${capital(shortWord(format))}, ${title}`
      if (part.match) {
        return concerns(part.match.sides, balls)
          ? [{ label, title, words: matchWords(outing, part.match), match: part.match }]
          : []
      }
      const isOurs = concerns(
        part.tallies.map(({ side }) => side),
        balls,
      )
      return isOurs ? [{ label, title, words: tallyWords(outing, part.tallies), match: null }] : []
    })
}

export const tallyWords = (outing: Outing, tallies: readonly PartTally[]): string =>
  formatList(tallies.map(({ side, points }) => say('side-points', { side: sideName(outing, side), n: points })))

/** What lies on the hole, where more than one skin does. */
function shareStands({ format, holes, lines, unit }: Of<'shares'>, balls: readonly BallId[], key: HoleKey): Stand[] {
  const pot = holes.find(hole => hole.key === key)?.pot ?? null
  const sides = lines.map(({ side }) => side)
  if (unit !== 'skins' || pot === null || pot < 2 || !concerns(sides, balls)) return []
  const title = capital(shortWord(format))
  return [{ label: title, title, words: say('skins-here', { n: pot }), match: null }]
}
