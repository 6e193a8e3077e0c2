import { describe, expect, it } from 'vitest'
import type { KeyParts } from '#core/outing/facts.ts'
import { factKinds, keyPatterns, makeKey, parseKey, scoreKey } from '#core/outing/keys.ts'

type Slots = NonNullable<Parameters<typeof makeKey>[1]>

function slotsOf(pattern: string): Slots {
  const values: Readonly<Record<string, string | number>> = { hole: 18, lap: 9, record: 'card' }
  const slots = [...pattern.matchAll(/:([a-z]+)/g)].map(([, slot = '']) => [slot, values[slot] ?? `${slot}-1`])
  const isDesk = pattern.startsWith('score/')
  return { ...Object.fromEntries(slots), ...(isDesk ? { record: 'desk' } : {}) }
}

const rows = factKinds.flatMap(kind => keyPatterns[kind].map(pattern => ({ kind, pattern })))

describe('the table of keys', () => {
  it.each(rows)('reads $pattern as the $kind that it was made as', ({ kind, pattern }) => {
    const slots = slotsOf(pattern)
    const parts = parseKey(makeKey(kind, slots))
    const expected: Partial<KeyParts> = { kind, ...(slots as Partial<KeyParts>) }
    expect(parts).toMatchObject(expected)
    const named = Object.entries(parts ?? {}).filter(([, value]) => value !== null)
    expect(named.length).toBe(Object.keys(slots).length + 1)
  })

  it('gives no two kinds one key', () => {
    const keys = rows.map(({ kind, pattern }) => makeKey(kind, slotsOf(pattern)))
    expect(new Set(keys).size).toBe(rows.length)
  })

  it.each([
    'g/a/score/alder/0/1/card',
    'g/a/score/alder/19/1/card',
    'g/a/score/alder/01/1/card',
    'g/a/score/alder/1/10/card',
    'g/a/score/alder/1/1/desk',
    'score/alder/1/1/card',
    'g/a/score/alder/1/1/other',
    'g/A/order',
    'hole/x',
    'title/x',
    'weather',
    '',
  ])('knows no key %s', key => {
    expect(parseKey(key)).toBeNull()
  })

  it("stands a desk's score outside the groups and every other inside its own", () => {
    const at = { group: 'a', ball: 'alder', hole: 7, lap: 1 }
    expect(scoreKey({ ...at, record: 'desk' })).toBe('score/alder/7/1/desk')
    expect(scoreKey({ ...at, record: 'marker' })).toBe('g/a/score/alder/7/1/marker')
  })
})
