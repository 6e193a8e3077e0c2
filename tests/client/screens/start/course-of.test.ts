import { describe, expect, it } from 'vitest'
import { withCourse } from '#client/screens/start/course-of.ts'
import { emptyDraft } from '#client/screens/start/draft.ts'
import { factsOfDraft } from '#client/screens/start/facts-of-draft.ts'
import { plainWith } from '#tests/kit/plain-outing.ts'

const green = { unit: 'yards', width: 20, depth: 30, right: 0 } as const

describe('a course taken from elsewhere', () => {
  const course = {
    ...plainWith().course,
    sketches: [
      { hole: 2, green },
      { hole: 12, green },
    ],
  }
  const keysOf = (length: 9 | 18) => {
    const taken = withCourse({ ...emptyDraft, length }, course, '')
    const players = emptyDraft.players.map(player => ({ ...player, name: player.id }))
    return factsOfDraft({ ...taken, players }, '2026-10-10').map(({ key }) => key)
  }

  it('brings the sketches of its holes into the new outing, of nine holes those alone', () => {
    expect(keysOf(18).filter(key => key.startsWith('green/'))).toEqual(['green/2', 'green/12'])
    expect(keysOf(9).filter(key => key.startsWith('green/'))).toEqual(['green/2'])
  })
})
