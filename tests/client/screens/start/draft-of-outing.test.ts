import { describe, expect, test } from 'vitest'
import { type Draft, emptyDraft, emptyPlayer, withIndexesFilled } from '#client/screens/start/draft.ts'
import { faultsOfDraft } from '#client/screens/start/draft-faults.ts'
import { draftOfOuting } from '#client/screens/start/draft-of-outing.ts'
import { factsOfDraft } from '#client/screens/start/facts-of-draft.ts'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'

const names = ['Alder', 'Birch', 'Cedar', 'Rowan']
const on = (format: keyof Draft['games']) => ({ ...emptyDraft.games[format], isOn: true })

const played: Draft = {
  ...withIndexesFilled(emptyDraft),
  courseName: 'Quillmoor',
  tees: [
    {
      id: 't1',
      name: 'White',
      courseRating: '71.4',
      slope: '128',
      par: '72',
      unit: 'yards',
      lengths: Array.from({ length: 18 }, (_, place) => String(300 + place)),
    },
    { id: 't2', name: 'Red', courseRating: '', slope: '', par: '72' },
  ],
  players: names.map((name, place) => ({
    ...emptyPlayer(`p${place + 1}`),
    name,
    ...(place === 0 ? { kind: 'index', figure: '+1.3', tee: 't1' } : { kind: 'course-handicap', figure: `${place}` }),
  })) as Draft['players'],
  games: {
    ...emptyDraft.games,
    'four-ball-match': {
      ...on('four-ball-match'),
      allowance: '85',
      sidesChosen: [
        ['p1', 'p3'],
        ['p2', 'p4'],
      ],
    },
    skins: { ...on('skins'), methods: { ...on('skins').methods, skins: 'no-carry-over' } },
  },
  startHole: 10,
  isUnderRules: false,
  phoneOf: 'p2',
}

function outingWith(facts: readonly NewFact[]) {
  const head = { log: 'log' as LogId, scope: null, device: 'd' as DeviceId, n: 1, tick: 1, at: 0, act: 'start' }
  return outingOf(foldOps(emptyLog, [{ ...head, facts: factsReplacing(emptyLog, facts) }]), isKnownValue)
}

const again = (draft: Draft) => draftOfOuting(outingWith(factsOfDraft(draft, '2026-05-16')), 'log', 'Birch')

describe('the same game again', () => {
  test('fills in everything that stood, so that the same facts come out of it', () => {
    const draft = again(played)
    expect(draft).not.toBeNull()
    if (draft === null) return
    expect(faultsOfDraft(draft)).toEqual([])
    expect(draft.phoneOf).toBe('p2')
    expect(factsOfDraft(draft, '2026-05-23')).toEqual(factsOfDraft(played, '2026-05-23'))
  })

  test('takes no score along, and nothing that hangs on one', () => {
    const facts = [
      ...factsOfDraft(played, '2026-05-16'),
      { key: 'g/g1/score/p1/1/1/card', value: 5 },
      { key: 'close/ball/p1', value: { scores: [] } },
    ]
    const draft = draftOfOuting(outingWith(facts), 'log', 'Birch')
    const keys = draft && factsOfDraft(draft, '2026-05-23').map(({ key }) => key)
    expect(keys?.filter(key => key.includes('score') || key.startsWith('close/'))).toEqual([])
  })

  test('keeps partners of one ball and the sides that their balls made', () => {
    const games = { ...emptyDraft.games, stableford: { ...emptyDraft.games.stableford, isOn: false } }
    const foursomes = {
      ...played,
      ballPlayers: 2,
      partnersChosen: [
        ['p1', 'p4'],
        ['p2', 'p3'],
      ],
      games: { ...games, 'foursomes-match': on('foursomes-match') },
    }
    const draft = again(foursomes)
    const outing = draft && outingWith(factsOfDraft(draft, '2026-05-23'))
    expect([...(outing?.balls.values() ?? [])].map(({ name }) => name)).toEqual(['Alder & Rowan', 'Birch & Cedar'])
    expect(outing?.games.map(({ format, sides }) => [format, sides])).toEqual([
      ['foursomes-match', [['p1-p2'], ['p3-p4']]],
    ])
  })

  test('gives the players ids of the new outing in the order of the group', () => {
    const order = ['place/p4', 'place/p1', 'place/p2', 'place/p3']
    const facts = factsOfDraft(played, '2026-05-16').map(({ key, value }) => {
      const position = order.indexOf(key) + 1
      return position === 0 ? { key, value } : { key, value: { group: 'g1', position, elsewhere: [] } }
    })
    const draft = draftOfOuting(outingWith(facts), 'log', 'Cedar')
    expect(draft?.players.map(({ id, name }) => [id, name])).toEqual([
      ['p1', 'Rowan'],
      ['p2', 'Alder'],
      ['p3', 'Birch'],
      ['p4', 'Cedar'],
    ])
    expect(draft?.phoneOf).toBe('p4')
  })

  test('is not offered where a hole of the course is missing', () => {
    const facts = factsOfDraft(played, '2026-05-16').filter(({ key }) => key !== 'hole/7')
    expect(draftOfOuting(outingWith(facts), 'log', 'Birch')).toBeNull()
  })
})
