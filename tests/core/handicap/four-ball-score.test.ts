import { describe, expect, it } from 'vitest'
import { fourBallScore } from '#core/handicap/four-ball-score.ts'
import { err, ok } from '#core/values/result.ts'

const times = (count: number, points: number): number[] => Array.from({ length: count }, () => points)

describe('four-ball scores for a record (Rules of Handicapping 2.1a, Great Britain and Ireland, 2024, second-hand)', () => {
  it('fill the partner’s holes with 0, 1 or 1.5', () => {
    const card = { sidePoints: 42, ownPoints: times(10, 3), partnerPoints: [0, 1, 1, 1, 1, 2, 3, 3] }
    expect(fourBallScore(card)).toEqual(ok({ ownHoles: 10, scaledHalfPoints: 60 + 8 + 9, isAccepted: true }))
  })

  it('need nine holes of the player’s own', () => {
    const card = { sidePoints: 44, ownPoints: times(8, 3), partnerPoints: times(10, 2) }
    expect(fourBallScore(card)).toEqual(ok({ ownHoles: 8, scaledHalfPoints: 78, isAccepted: false }))
  })

  it('need 42 points of the side, and 36 of the player', () => {
    const side = { sidePoints: 41, ownPoints: [...times(9, 3), 2], partnerPoints: [...times(4, 2), ...times(4, 1)] }
    expect(fourBallScore(side)).toMatchObject({ ok: true, value: { isAccepted: false } })
    const player = { sidePoints: 42, ownPoints: times(9, 2), partnerPoints: [...times(6, 3), ...times(3, 2)] }
    expect(fourBallScore(player)).toEqual(ok({ ownHoles: 9, scaledHalfPoints: 63, isAccepted: false }))
  })

  it('say what is wrong with a card', () => {
    expect(fourBallScore({ sidePoints: 43, ownPoints: times(9, 3), partnerPoints: times(9, 2) })).toEqual(
      err('points-disagree'),
    )
    expect(fourBallScore({ sidePoints: 27, ownPoints: times(9, 3), partnerPoints: [] })).toEqual(
      err('not-eighteen-holes'),
    )
  })
})
