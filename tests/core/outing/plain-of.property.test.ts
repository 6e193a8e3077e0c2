import { describe, expect } from 'vitest'
import { keyPatterns, parseKey } from '#core/outing/keys.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import type { Json } from '#core/values/json.ts'
import { parseOutingFile } from '#shared/outing-file.ts'
import { histories } from '#tests/kit/histories.ts'
import { outingOfPlain } from '#tests/kit/plain-outing.ts'
import { holds } from '#tests/kit/property.ts'
import { outingWith } from '#tests/kit/two-groups.ts'

/** Ids that the outing has, and one of each that it does not; nine holes, and the tenth that it has not. */
const slots: Readonly<Record<string, readonly string[]>> = {
  group: ['a', 'b', 'c'],
  ball: ['alder', 'birch', 'oak'],
  player: ['alder', 'oak'],
  game: ['points', 'own', 'skins'],
  ruling: ['r1', 'r2'],
  hole: ['1', '10'],
  lap: ['1', '2'],
  record: ['card', 'marker', 'desk'],
}

const fill = (pattern: string): string[] => {
  const slot = /:([a-z]+)/.exec(pattern)
  if (slot === null) return [pattern]
  return (slots[slot[1] ?? ''] ?? []).flatMap(value => fill(pattern.replace(slot[0], value)))
}

const kinds = [
  'place',
  'score',
  'closeBall',
  'concededStroke',
  'concededHole',
  'concededMatch',
  'agreedHole',
  'agreedResult',
  'press',
  'holeOut',
  'drive',
  'teeShot',
  'likelyScore',
  'absence',
  'marker',
  'certifiedByPlayer',
  'certifiedByMarker',
  'ruling',
  'playingConditions',
] as const
const keys = [
  ...kinds.flatMap(kind => keyPatterns[kind].flatMap(fill)).filter(key => parseKey(key) !== null),
  'g/b/game/own/format',
  'g/b/game/own/sides',
]

const ruled = { games: null, rule: null, reason: null }
const away = { leftAt: null, isWithdrawn: false, reason: null }
const between = ['alder', 'birch']

/** Known values, of whom and of what may not be here. */
function valuesOf(key: string): readonly Json[] {
  if (key.includes('score/') && !key.includes('likely')) return [4, 5, 'picked-up']
  if (key.startsWith('close/')) return [{ scores: [[1, 1, 4]] }, { scores: [] }]
  if (key.endsWith('/format')) return ['stroke-play-gross']
  if (key.endsWith('/sides')) return [[['alder'], ['birch']]]
  if (key.startsWith('place/')) {
    return ['a', 'b', 'c'].map(group => ({
      group,
      position: 1,
      elsewhere: [
        {
          group: 'b',
          holes: [
            [1, 1],
            [10, 1],
          ],
        },
      ],
    }))
  }
  if (key.includes('/conceded-stroke/') || key.includes('/likely-score/')) return [5, null]
  if (key.includes('/conceded-')) return [{ to: null }, { to: 'oak' }, { to: 'birch' }]
  if (key.includes('/agreed-hole/')) {
    return [
      {
        results: [
          { between, won: 'alder' },
          { between: ['oak', 'birch'], won: null },
        ],
      },
      { results: [{ between, won: 'oak' }] },
    ]
  }
  if (key.includes('/agreed-result/')) return [{ results: [{ between, won: null, by: 0, left: 0 }] }]
  if (key.includes('/press/')) return [{ by: 'alder' }, { by: 'oak' }]
  if (key.startsWith('hole-out/')) return [{ counts: 'nothing', reason: null }]
  if (key.includes('/drive/') || key.includes('/tee-shot/') || key.includes('/marker/')) return ['alder', 'oak']
  if (key.includes('/absence/'))
    return [
      { ...away, joinedAt: [1, 1] },
      { ...away, joinedAt: [10, 1] },
      { ...away, joinedAt: null },
    ]
  if (key.includes('/certified-')) return [{ scores: [[1, 1, 4]] }, { scores: [[10, 1, 4]] }]
  if (key === 'playing-conditions') return [{ strokes: -1, reason: null }]
  return [
    { ...ruled, kind: 'no-penalty', ball: null },
    { ...ruled, kind: 'disqualified', ball: 'oak', hole: null },
    { ...ruled, games: ['skins', 'points'], kind: 'plays-off', ball: 'alder', strokes: 4 },
    { ...ruled, kind: 'penalty', ball: 'alder', hole: [10, 1], strokes: 2, holeLost: false },
  ]
}

describe('the plain file of an outing', () => {
  holds(
    'is a file without fault, whatever was said of whom, and says the same again',
    histories({ keys, valuesOf }, 8),
    ops => {
      const file = plainOf(outingWith(ops))
      const parsed = parseOutingFile(JSON.stringify(file))
      expect(parsed.ok ? [] : parsed.error).toEqual([])
      if (parsed.ok && 'form' in parsed.value && parsed.value.form === 'plain') {
        expect(plainOf(outingOfPlain(parsed.value))).toEqual(file)
      }
    },
    2_000,
  )
})
