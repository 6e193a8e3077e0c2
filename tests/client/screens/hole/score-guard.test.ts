import { describe, expect, test } from 'vitest'
import { answerGuard, guardTap, openGuard, type Tap } from '#client/screens/hole/score-guard.ts'
import { ball } from '#tests/kit/played-game.ts'

const tap = (player: string, score: number, hole = 7): Tap => ({ ball: ball(player), score, hole, lap: 1 })
const put = (
  guard: Parameters<typeof guardTap>[0],
  key: Tap,
  at: number,
  { isCurrent = true, twoAt = null as number | null, isByKey = false } = {},
) => guardTap(guard, key, { at, twoAt, isByKey }, isCurrent)

describe('the guard of the keys', () => {
  test('lets four keys of a quick thumb in', () => {
    let guard = put(openGuard, tap('alder', 5), 1_000)
    for (const [place, player] of ['birch', 'cedar', 'rowan'].entries()) {
      guard = put(guard, tap(player, 5), 1_200 + place * 200)
      expect(guard.goesIn).toBe(true)
    }
  })

  test('holds every key of a burst after the first, one a ball, until somebody says', () => {
    const first = put(openGuard, tap('alder', 5), 1_000)
    const second = put(first, tap('birch', 4), 1_060)
    const third = put(second, tap('cedar', 6), 1_500)
    const fourth = put(third, tap('birch', 5), 1_900)
    expect([first, second, third, fourth].map(({ goesIn }) => goesIn)).toEqual([true, false, false, false])
    expect(fourth).toMatchObject({ reason: 'burst', held: [tap('cedar', 6), tap('birch', 5)] })
    expect(answerGuard(fourth, false)).toMatchObject({ reason: null, held: [] })
  })

  test('holds no keys of a keyboard for their pace', () => {
    const first = put(openGuard, tap('alder', 5), 1_000, { isByKey: true })
    expect(put(first, tap('birch', 5), 1_040, { isByKey: true }).goesIn).toBe(true)
  })

  test('holds what follows two touches at once', () => {
    expect(put(openGuard, tap('alder', 5), 1_000, { twoAt: 700 })).toMatchObject({ reason: 'burst', goesIn: false })
    expect(put(openGuard, tap('alder', 5), 1_000, { twoAt: 300 }).goesIn).toBe(true)
  })

  test('asks once for another hole, and again after a score elsewhere', () => {
    const asked = put(openGuard, tap('alder', 5, 3), 1_000, { isCurrent: false })
    expect(asked).toMatchObject({ reason: 'other-hole', held: [tap('alder', 5, 3)], goesIn: false })
    const sure = answerGuard(asked, true)
    const next = put(sure, tap('birch', 4, 3), 2_000, { isCurrent: false })
    expect(next.goesIn).toBe(true)
    const elsewhere = put(next, tap('birch', 4, 7), 3_000)
    expect(elsewhere.goesIn).toBe(true)
    expect(put(elsewhere, tap('birch', 5, 3), 4_000, { isCurrent: false }).goesIn).toBe(false)
  })

  test('a no is no yes for the next key', () => {
    const asked = put(openGuard, tap('alder', 5, 3), 1_000, { isCurrent: false })
    expect(put(answerGuard(asked, false), tap('alder', 5, 3), 2_000, { isCurrent: false }).goesIn).toBe(false)
  })
})
