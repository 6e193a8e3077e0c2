import { describe, expect, it } from 'vitest'
import type { ScoreRecord } from '#core/card/card.ts'
import { type CertifiedScores, certificationOf } from '#core/card/certification.ts'
import type { HoleKey, HoleScore } from '#core/card/score.ts'
import { type ScoreRow, settleCard } from '#core/card/settle-card.ts'
import type { GroupId, OpId } from '#core/values/ids.ts'

const order: readonly HoleKey[] = ['1/1', '2/1']
const group = 'a' as GroupId

const written = (record: ScoreRecord, scores: readonly (HoleScore | null)[]): ScoreRow[] =>
  scores.flatMap((value, place) => {
    const at = { hole: place + 1, lap: 1, group: record === 'desk' ? null : group }
    const key = `score/fir/${at.hole}/1/${record}`
    return value === null ? [] : [{ at, entries: [{ key, value, op: 'fir.1' as OpId, at: 0 }] }]
  })

const certified = (...scores: readonly HoleScore[]): CertifiedScores =>
  new Map(scores.map((score, place) => [`${place + 1}/1` as HoleKey, score]))

const check = (rows: readonly ScoreRow[], player: CertifiedScores, marker: CertifiedScores) =>
  certificationOf(order, settleCard(rows, () => group, null).card, player, marker)

describe('a card certified by player and marker (Rules of Golf 3.3b(2))', () => {
  const card = written('card', [5, 4])
  const marker = written('marker', [5, 4])

  it('stands hole by hole where two records agree and both certified what is settled', () => {
    const found = check([...card, ...marker], certified(5, 4), certified(5, 4))
    expect(found).toMatchObject({ isComplete: true, isCertified: true })
    expect(found.holes[0]).toEqual({
      key: '1/1',
      card: [5],
      marker: [5],
      desk: [],
      settled: 5,
      byPlayer: 5,
      byMarker: 5,
      differences: [],
    })
  })

  it('names the hole on which two records differ, though their totals agree', () => {
    const swapped = written('marker', [4, 5])
    const found = check([...card, ...swapped], certified(5, 4), certified(4, 5))
    expect(found.holes.map(({ differences }) => differences[0])).toEqual(['records differ', 'records differ'])
    expect(found.holes.map(hole => [hole.card, hole.marker, hole.settled])).toEqual([
      [[5], [4], null],
      [[4], [5], null],
    ])
    expect(found).toMatchObject({ isComplete: false, isCertified: false })
  })

  it('no longer stands when a settled value changes', () => {
    const found = check([...written('card', [5, 6])], certified(5, 4), certified(5, 6))
    expect(found.player).toEqual({ hasCertified: true, stands: false })
    expect(found.marker).toEqual({ hasCertified: true, stands: true })
    expect(found.holes[1]?.differences).toEqual(['changed since player certified'])
    expect(found).toMatchObject({ isComplete: true, isCertified: false })
  })

  it('stands again when the value comes back', () => {
    expect(check([...card], certified(5, 4), certified(5, 4)).isCertified).toBe(true)
  })

  it('waits for a hole that nobody has written, or that one has not certified', () => {
    const blank = check(written('card', [5, null]), certified(5), certified(5))
    expect(blank).toMatchObject({ isComplete: false, isCertified: false })
    expect(blank.holes[1]?.differences).toEqual(['not settled'])
    const half = check(card, certified(5, 4), certified(5))
    expect(half).toMatchObject({ isComplete: true, isCertified: false, marker: { hasCertified: true, stands: false } })
    expect(half.holes[1]?.differences).toEqual(['not certified by marker'])
  })

  it('is not certified by one of the two alone, nor by the desk', () => {
    expect(check(card, certified(5, 4), null)).toMatchObject({
      isComplete: true,
      isCertified: false,
      marker: { hasCertified: false, stands: false },
    })
    const desk = check(written('desk', [5, 4]), null, null)
    expect(desk.holes[0]).toMatchObject({ desk: [5], differences: [] })
    expect(desk.isCertified).toBe(false)
  })

  it('holds pick-ups and holes not played as what they are', () => {
    const found = check(written('card', ['picked-up', 'not-played']), certified('picked-up', 'not-played'), null)
    expect(found).toMatchObject({ isComplete: true, player: { stands: true } })
  })
})
