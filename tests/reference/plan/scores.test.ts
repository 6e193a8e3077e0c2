import { describe, expect, it } from 'vitest'
import { holeScores, holesTogether, meanOf } from '#core/plan/score/hole-scores.ts'
import { expectedRound, expectedScores, sdOfRound, strengthByLength } from '#core/plan/score/length-formulas.ts'
import { makeDice } from '../../kit/normal-dice.ts'
import { planFigures } from './figures.ts'

const table = planFigures.tables.hole_score_model.table
const meanHole = (index: number): number => (table.find(({ H }) => H === index)?.mean18_over_rating ?? Number.NaN) / 18

const sdOf = (scores: ReturnType<typeof holeScores>): number => {
  const mean = meanOf(scores)
  return Math.sqrt(scores.shares.reduce((sum, share, at) => sum + share * (scores.fromPar + at - mean) ** 2, 0))
}

/** The mean of the best 8 of 20 rounds over the rating, over many such records. */
function bestEightOfTwenty(index: number): number {
  const round = holesTogether(Array.from({ length: 18 }, () => holeScores(index, meanHole(index), 4)))
  const dice = makeDice(8)
  const draw = (): number => {
    let left = dice.share()
    for (const [at, share] of round.shares.entries()) {
      left -= share
      if (left < 0) return round.fromPar + at
    }
    return round.fromPar + round.shares.length - 1
  }
  let sum = 0
  for (let record = 0; record < 400; record++) {
    const rounds = Array.from({ length: 20 }, draw).sort((a, b) => a - b)
    sum += rounds.slice(0, 8).reduce((total, each) => total + each, 0) / 8
  }
  return sum / 400
}

describe('the scores of a hole', () => {
  it('34 shares add to 1, an Index of 10 makes par or better 42 times in 100 within 3 (derived)', () => {
    for (const { H } of table) {
      for (const par of [3, 4, 5]) {
        const { shares } = holeScores(H, meanHole(H), par)
        expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThan(1e-9)
        expect(Math.min(...shares)).toBeGreaterThanOrEqual(0)
        expect(meanOf(holeScores(H, meanHole(H), par))).toBeCloseTo(meanHole(H), 9)
      }
    }
    const [birdie = 0, par = 0] = holeScores(10, meanHole(10), 4).shares
    expect(Math.abs(birdie + par - 0.42)).toBeLessThan(0.03)
  })

  it.each(table.filter(({ H }) => H >= 0))(
    '34 spreads a round as an Index of $H does, and gives that Index back (USGA Appendix E, published odds)',
    ({ H, P }) => {
      const scores = holeScores(H, meanHole(H), 4)
      expect(Math.abs(sdOf(scores) * Math.sqrt(18) - sdOfRound(H))).toBeLessThan(0.2)
      const [birdie, par, bogey] = scores.shares
      for (const [got, wanted] of [
        [birdie, P['birdie-']],
        [par, P.par],
        [bogey, P.bogey],
      ]) {
        expect(Math.abs((got ?? 0) - (wanted ?? 0))).toBeLessThan(0.005)
      }
      // A neutral slope: the record is worth the Index itself.
      if (H <= 28) expect(Math.abs(bestEightOfTwenty(H) - H)).toBeLessThan(1.05)
    },
  )
})

describe('what a hole is worth', () => {
  const lengthsYd = [380, 410, 165, 520, 350, 400, 190, 500, 330, 395, 420, 150, 540, 370, 405, 175, 360, 440]
  const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0)

  it('adds up to the expected round, by length alone or by a rating (USGA length formulas, second-hand)', () => {
    for (const gender of ['men', 'women'] as const) {
      const byLength = strengthByLength(sum(lengthsYd), gender)
      const rated = { courseRating: 71.3, slope: 128 }
      expect(sum(expectedScores(lengthsYd, 14, gender, null))).toBeCloseTo(expectedRound(14, byLength), 9)
      expect(sum(expectedScores(lengthsYd, 14, gender, rated))).toBeCloseTo(expectedRound(14, rated), 9)
      expect(sum(expectedScores(lengthsYd.slice(0, 9), 14, gender, rated))).toBeLessThan(60)
    }
  })

  it('rises by 1/220 stroke a yard for scratch and 1/160 for the bogey golfer (USGA length formulas, second-hand)', () => {
    const slope = (index: number): number => {
      const [shorter = 0, longer = 0] = expectedScores([300, 400], index, 'men', null)
      return (longer - shorter) / 100
    }
    expect([slope(0), slope(20)].map(each => each.toFixed(6))).toEqual([(1 / 220).toFixed(6), (1 / 160).toFixed(6)])
  })
})
