import type { BallId } from '#core/values/ids.ts'
import type { SideHole } from './game-result.ts'
import type { BallHole, Measure } from './parts.ts'

/** A value that may count, and the strokes that make it level. */
export interface Countable {
  readonly value: number
  readonly level: number
}

/** One ball with one of the scores that it may have. */
interface Choice {
  readonly ball: BallId
  readonly value: number | null
  readonly isHoled: boolean
  readonly level: number
}

type Counting = Choice & Countable

/**
 * A side's value of a hole from the best few of its balls. It has one as soon as so many are holed. With fewer, once all
 * are written, strokes have no return and points are those there are: a side of fewer balls than the game counts takes
 * the best of the balls there are (common practice). Two scores of a ball leave the hole open only where they would
 * change the side's value.
 * Source: Rules of Golf, rules 23.2a (the better ball of two) and 24; R&A and USGA; 2019 and 2023. More than one of
 * several: common practice with the allowances of Rules of Handicapping, Appendix C.
 */
export function sideValueOf(balls: readonly BallHole[], count: number, measure: Measure): SideHole {
  const first = balls[0]
  if (first !== undefined && balls.length === 1 && count === 1) return valueOfOne(first)
  const written = balls.filter(({ worths }) => worths.length > 0)
  if (written.length === 0) return open
  const isComplete = written.length === balls.length
  const choices = choicesOf(written).map(choice => countingOf(choice, count, measure, isComplete))
  const outcomes = [...new Set(choices.map(valueOfBalls))]
  if (outcomes.length > 1) return { kind: 'two', values: outcomes }
  const [counting = null] = choices
  const value = valueOfBalls(counting)
  if (counting === null || value === null) return isComplete ? nothing : open
  return { kind: 'value', value, level: sumOf(counting.map(({ level }) => level)), balls: ballsOf(written, counting) }
}

const open: SideHole = { kind: 'open' }
const nothing: SideHole = { kind: 'none' }

/** A side of one ball is what the ball is. */
function valueOfOne({ ball, worths, level }: BallHole): SideHole {
  const first = worths[0]
  if (first === undefined) return open
  const { value } = first
  if (worths.length > 1 && worths.some(other => other.value !== value))
    return { kind: 'two', values: [...new Set(worths.map(each => each.value))] }
  return value === null ? nothing : { kind: 'value', value, level, balls: [ball] }
}

/** The best few of those holed, best first; of equal ones first what is further under level. */
export function bestFew<T extends Countable>(holed: readonly T[], count: number, better: Measure['better']): T[] {
  const sign = better === 'low' ? 1 : -1
  return [...holed].sort((a, b) => sign * (a.value - b.value) || b.level - a.level).slice(0, count)
}

/** One score a ball, in every way that the open choices may go. */
function choicesOf(balls: readonly BallHole[]): readonly Choice[][] {
  const ofEach = balls.map(({ ball, worths, level }) =>
    worths.map(({ value, isHoled }): Choice => ({ ball, value, isHoled, level })),
  )
  if (ofEach.every(choices => choices.length === 1)) return [ofEach.flat()]
  return ofEach.reduce<Choice[][]>(
    (choices, next) => choices.flatMap(choice => next.map(each => [...choice, each])),
    [[]],
  )
}

/** The balls that count; null where the side has no value yet, or none at all. */
function countingOf(
  choice: readonly Choice[],
  count: number,
  { unit, better }: Measure,
  isComplete: boolean,
): readonly Counting[] | null {
  const holed = bestFew(
    choice.filter(isCounting).filter(({ isHoled }) => isHoled),
    count,
    better,
  )
  if (holed.length === count) return holed
  if (!isComplete) return null
  const unholed = choice.filter(isCounting).filter(({ isHoled }) => !isHoled)
  const all = [...holed, ...bestFew(unholed, count - holed.length, better)]
  return all.length === 0 || (unit === 'strokes' && all.length < count) ? null : all
}

const isCounting = (choice: Choice): choice is Counting => choice.value !== null

const valueOfBalls = (counting: readonly Countable[] | null): number | null =>
  counting === null ? null : sumOf(counting.map(({ value }) => value))

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0)

/** Every ball that gives the value: those that count, and those level with the last of them. */
function ballsOf(written: readonly BallHole[], counting: readonly Counting[]): BallId[] {
  const last = counting.at(-1)
  const isLevel = ({ worths }: BallHole): boolean =>
    worths.every(({ value, isHoled }) => value === last?.value && isHoled === last.isHoled)
  return written
    .filter(each => counting.some(({ ball }) => ball === each.ball) || isLevel(each))
    .map(({ ball }) => ball)
}
