import type { SideHole } from '#core/formats/game-result.ts'
import type { BallHole, BallRule, Measure } from '#core/formats/parts.ts'

/**
 * The better of the side's balls. A side has a value as soon as one of its balls has: only one needs to finish the hole.
 * Two scores of a ball leave the hole open only where they would change the side's value.
 * Source: Rules of Golf, rule 23.2a; R&A and USGA; 2019 and 2023.
 */
export const betterBall: BallRule = {
  valueOf(balls, better): SideHole {
    const written = balls.filter(({ values }) => values.length > 0)
    if (written.length === 0) return { kind: 'open' }
    const outcomes = [...new Set(choicesOf(written).map(values => bestOf(values, better)))]
    const [value = null, ...others] = outcomes
    if (others.length > 0) return { kind: 'two', values: outcomes }
    if (value !== null) return { kind: 'value', value, balls: scorersOf(written, value) }
    return written.length === balls.length ? { kind: 'none' } : { kind: 'open' }
  },
}

/** One value a ball, in every way that the open choices may go. */
const choicesOf = (balls: readonly BallHole[]): (number | null)[][] =>
  balls.reduce<(number | null)[][]>(
    (choices, { values }) => choices.flatMap(choice => values.map(value => [...choice, value])),
    [[]],
  )

function bestOf(values: readonly (number | null)[], better: Measure['better']): number | null {
  const scored = values.filter(value => value !== null)
  if (scored.length === 0) return null
  return better === 'low' ? Math.min(...scored) : Math.max(...scored)
}

const scorersOf = (balls: readonly BallHole[], value: number): BallHole['ball'][] =>
  balls.filter(({ values }) => values.every(each => each === value)).map(({ ball }) => ball)
