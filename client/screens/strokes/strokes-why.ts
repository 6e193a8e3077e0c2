import type { BallStrokes } from '#core/formats/game-result.ts'
import { strokesGivenIn } from '#core/formats/table.ts'
import { allowanceTaken } from '#core/handicap/playing-handicap.ts'
import { happeningsOf } from '#core/outing/happenings-of.ts'
import type { Game, Outing } from '#core/outing/outing.ts'
import type { Fraction } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatList } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'

type Strokes = ReadonlyMap<BallId, BallStrokes>

/** "Course Handicap 14, 90 % = 12.6, so 13; 6 more than Birch, the lowest" */
export function whyWords(outing: Outing, game: Game, ball: BallId, strokes: Strokes): string {
  const of = strokes.get(ball)
  if (of === undefined || game.format === null) return ''
  const isDifference = strokesGivenIn(game.format) === 'difference'
  const isRuled = !isDifference && happeningsOf(outing, game).netOff.has(ball)
  if (isRuled) return say('why-ruled', { n: plus(of.strokes) })
  if (isDifference && isOfDifferences(game, strokes)) return differenceWords(outing, game, ball, of, strokes)
  const parts = [ownWords(game, of)]
  const isByRating = game.methods.courseHandicap === 'without-rating-minus-par'
  if (of.forTeePar !== 0) parts.push(say(isByRating ? 'why-tee-rating' : 'why-tee-par', { n: signed(of.forTeePar) }))
  if (isDifference) parts.push(lowestWords(outing, ball, of, strokes))
  return parts.join('; ')
}

/** Two of the published orders take the allowance of the difference, where nobody has plain strokes. */
function isOfDifferences({ methods }: Game, strokes: Strokes): boolean {
  return (
    methods.allowancePercent !== null &&
    methods.matchStrokes !== 'from-lowest-playing-handicap' &&
    [...strokes.values()].every(({ courseHandicap }) => courseHandicap !== null)
  )
}

/** From the handicap to what is played off in this game. */
function ownWords({ methods }: Game, { courseHandicap, playingHandicap, forTeePar }: BallStrokes): string {
  const own = playingHandicap - forTeePar
  if (courseHandicap === null) return say('why-plain', { n: plus(own) })
  const { allowancePercent, rounding } = methods
  const figure = formatFraction(courseHandicap)
  if (allowancePercent === null || rounding === null) return say('why-shares', { figure, n: plus(own) })
  const taken = formatFraction(allowanceTaken(courseHandicap, allowancePercent, rounding))
  const fill = { figure, percent: allowancePercent, taken, n: plus(own) }
  if (allowancePercent === 100) return say(figure === plus(own) ? 'why-course' : 'why-course-rounded', fill)
  return say(taken === plus(own) ? 'why-allowance' : 'why-allowance-rounded', fill)
}

/** The lowest of a match gives to the others. */
function lowestWords(outing: Outing, ball: BallId, { strokes }: BallStrokes, all: Strokes): string {
  const lowest = lowestOf(all)
  if (lowest.includes(ball)) return say('why-lowest')
  return say('why-more', { n: strokes, side: formatList(lowest.map(each => sideName(outing, [each]))) })
}

const lowestOf = (all: Strokes): readonly BallId[] =>
  [...all].filter(([, { strokes }]) => strokes === 0).map(([ball]) => ball)

function differenceWords(outing: Outing, { methods }: Game, ball: BallId, of: BallStrokes, all: Strokes): string {
  const figure = of.courseHandicap === null ? '' : formatFraction(of.courseHandicap)
  const lowest = lowestOf(all)
  if (lowest.includes(ball)) return `${say('why-course', { figure })}; ${say('why-lowest')}`
  return say('why-difference', {
    figure,
    percent: methods.allowancePercent ?? 0,
    n: of.strokes,
    side: formatList(lowest.map(each => sideName(outing, [each]))),
  })
}

/** A plus handicap gives strokes to the course. */
const plus = (strokes: number): string => (strokes < 0 ? `+${-strokes}` : String(strokes))

const signed = (strokes: number): string => (strokes < 0 ? `\u2212${-strokes}` : `+${strokes}`)

/** As it is read, to a hundredth; a plus handicap with its sign. For showing only. */
function formatFraction({ numerator, denominator }: Fraction): string {
  const size = (Math.abs(numerator) / denominator).toFixed(2).replace(/\.?0+$/, '')
  return numerator < 0 ? `+${size}` : size
}
