import { describe, expect, test } from 'vitest'
import { type Draft, emptyDraft, emptyPlayer } from '#client/screens/start/draft.ts'
import { outingOfDraft } from '#client/screens/start/outing-of-draft.ts'
import { withSuggestion } from '#client/screens/start/suggestions.ts'
import { strokesOfGames } from '#client/screens/strokes/strokes-view.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { must } from '#core/values/assert.ts'
import { fourPlayers, quillmoor } from '#tests/kit/quillmoor.ts'

const course = quillmoor.pars.map((par, place) => ({ par, index: String(quillmoor.indexes[place]) }))

const draftWith = (format: FormatName, players: Draft['players']): Draft => ({
  ...emptyDraft,
  courseName: quillmoor.name,
  holes: course,
  players,
  ...withSuggestion(emptyDraft, format),
})

const players = fourPlayers.map(({ name, courseHandicap }, place) => ({
  ...emptyPlayer(`p${place + 1}`),
  name,
  kind: 'course-handicap' as const,
  figure: String(courseHandicap),
}))

function strokesIn(draft: Draft) {
  const outing = must(outingOfDraft(draft), 'nothing is at fault')
  return strokesOfGames(outing, resultsOf(outing))
}

describe('strokes explained before the start', () => {
  test('of a match: the handicap, its allowance, the lowest, and the holes', () => {
    // 90 % of 14, 7, 21 and 11 (Rules of Handicapping 2024, Appendix C): 12.6, 6.3, 18.9 and 9.9, so 13, 6, 19 and 10.
    const [match] = strokesIn(draftWith('four-ball-match', players))
    expect(match?.title).toBe('Four-ball match')
    expect(match?.lines.map(({ name, strokes }) => [name, strokes])).toEqual([
      ['Alder', 7],
      ['Birch', 0],
      ['Cedar', 13],
      ['Rowan', 4],
    ])
    const [alder, birch, , rowan] = match?.lines ?? []
    expect(alder?.why).toBe('Course Handicap 14, 90 % = 12.6, so 13; 7 more than Birch, the lowest')
    expect(birch?.why).toBe('Course Handicap 7, 90 % = 6.3, so 6; the lowest here, so none')
    expect(birch?.holes).toBe('')
    expect(rowan?.holes).toBe('one at 2, 5, 11, 14')
  })

  test('of points: each their own, two where the handicap goes round again', () => {
    const [points] = strokesIn(
      draftWith(
        'stableford',
        players.slice(2, 3).map(each => ({ ...each, figure: '21' })),
      ),
    )
    // 95 % of 21 is 19.95, so 20: one everywhere, a second at indexes 1 and 2.
    expect(points?.lines[0]?.why).toBe('Course Handicap 21, 95 % = 19.95, so 20')
    expect(points?.lines[0]?.holes).toBe('one at 1 to 4, 6 to 13, 15 to 18; two at 5, 14')
  })

  test('of plain strokes: as they were agreed; a plus player gives back', () => {
    const plain = players.map(each => ({ ...each, kind: 'plain-strokes' as const }))
    const [skins] = strokesIn(
      draftWith('skins', [{ ...(plain[0] ?? emptyPlayer('p1')), figure: '+2' }, ...plain.slice(1)]),
    )
    expect(skins?.lines[0]).toMatchObject({ strokes: -2, why: '+2 as agreed', holes: 'gives 1 back at 6, 16' })
  })

  test('of three matches, each with its own difference', () => {
    const matches = strokesIn(draftWith('three-ball-match', players.slice(0, 3)))
    expect(matches.map(({ title }) => title)).toEqual([
      'Three-ball match: Alder v Birch',
      'Three-ball match: Alder v Cedar',
      'Three-ball match: Birch v Cedar',
    ])
    expect(matches[1]?.lines.map(({ strokes }) => strokes)).toEqual([0, 7])
  })

  test('of an index, by the ratings of its tee', () => {
    const tees = [{ id: 't1', name: 'White', courseRating: '71.4', slope: '128', par: '72' }]
    const alder = { ...emptyPlayer('p1'), name: 'Alder', figure: '13.1', tee: 't1' }
    const draft = { ...draftWith('stroke-play-net', [alder, ...players.slice(1, 2)]), tees }
    // 13.1 x 128 / 113 + 71.4 - 72 = 14.239; 95 % is 13.527, so 14.
    expect(strokesIn(draft)[0]?.lines[0]?.why).toBe('Course Handicap 14.24, 95 % = 13.53, so 14')
    expect(strokesIn(draft)[0]?.courseHandicap).toContain('plus Course Rating minus par')
    const game = draft.games['stroke-play-net']
    const methods = { ...game.methods, courseHandicap: 'without-rating-minus-par' as const }
    const [without] = strokesIn({ ...draft, games: { ...draft.games, 'stroke-play-net': { ...game, methods } } })
    // 13.1 x 128 / 113 = 14.839; 95 % is 14.097, so 14.
    expect(without?.lines[0]?.why).toBe('Course Handicap 14.84, 95 % = 14.1, so 14')
    expect(without?.courseHandicap).toContain('without Course Rating minus par')
    expect(strokesIn(draftWith('stableford', players))[0]?.courseHandicap).toBe('')
  })

  test('nowhere while something is at fault, and of gross scores none', () => {
    expect(outingOfDraft({ ...draftWith('stableford', players), holes: emptyDraft.holes })).toBeNull()
    expect(strokesIn(draftWith('skins-gross', players))[0]).toMatchObject({ isGross: true, lines: [] })
  })
})
