import { describe, expect, it } from 'vitest'
import { settleOutputSchema } from '#shared/settle-output.ts'
import { notedDay, notes } from '#tests/kit/noted-outing.ts'
import { autumnDay, settledWith } from '#tests/kit/plain-outing.ts'

const settled = settledWith(notedDay)

describe('settle', () => {
  it('prints everything said beside scores, as its schema has it', () => {
    expect(settleOutputSchema.safeParse(settled).error).toBeUndefined()
    expect(settled.notes.concessions).toEqual(
      notes.concessions.map(each => ('hole' in each ? { ...each, lap: 1 } : each)),
    )
    for (const [name, list] of Object.entries(settled.notes)) {
      if (Array.isArray(list)) expect([name, list.length]).toEqual([name, notes[name as 'rulings'].length])
    }
    expect(settled.notes.playingConditions).toEqual(notes.playingConditions)
  })

  it('prints of each card what player and marker certified', () => {
    const [alder] = settled.certification
    expect(alder).toMatchObject({
      ball: 'alder',
      markedBy: 'birch',
      player: { hasCertified: true, stands: true },
      marker: { hasCertified: true, stands: false },
    })
    // Two holes are out of play, so the card owes sixteen.
    expect(alder?.holes).toHaveLength(16)
    expect(alder?.holes[1]?.differences).toEqual(['not certified by marker'])
  })

  it('prints advice on the stroke indexes and on the allowance, and what is not covered', () => {
    // Quillmoor: odd out, even in; 1 on the 5th, but 2 on the 14th and 3 on the 2nd, 4 on the 11th; no low neighbours.
    expect(settled.course.strokeIndexAdvice).toEqual({
      isPermutation: true,
      hasOddEvenSplit: true,
      hasLowestInMiddle: true,
      hasSecondLowestApart: true,
      hasNoLowNeighbours: true,
    })
    expect(settled.allowanceAdvice).toEqual([
      {
        game: 'points',
        fieldSize: 4,
        percents: [
          { method: 'as-for-medium-field', percent: 95 },
          { method: 'full-in-small-field', percent: 100 },
        ],
      },
    ])
    expect(settled.coverage.territoriesNotCovered).toEqual(['Australia'])
  })

  it("advises on a tee's own indexes, and on none that are not eighteen", () => {
    const indexes = autumnDay.course.holes.map(({ index }) => (index === 18 ? 17 : index))
    const course = { ...autumnDay.course, tees: [{ id: 'white', name: 'White', indexes }] }
    expect(settledWith({ course }).course.tees[0]?.strokeIndexAdvice?.isPermutation).toBe(false)
    const nine = { holes: autumnDay.course.holes.slice(0, 9) }
    const out = settledWith({
      course: nine,
      length: 9,
      players: [{ id: 'alder', name: 'Alder' }],
      scores: [],
      games: [],
      main: undefined,
      groups: [],
    })
    expect(out.course.strokeIndexAdvice).toBeNull()
  })
})
