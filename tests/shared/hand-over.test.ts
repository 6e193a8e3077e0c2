import { describe, expect, it } from 'vitest'
import { parseHandOver } from '#shared/hand-over.ts'

const handOver = {
  sixThrees: 'hand-over',
  version: 1,
  log: 'quillmoor',
  invite: { id: 'desk', secret: 'A'.repeat(22) },
  ops: ['{}'],
}

describe('a hand-over', () => {
  it('is read, with an invite or without', () => {
    for (const each of [handOver, { ...handOver, invite: null }]) {
      expect(parseHandOver(JSON.stringify(each))).toEqual({ ok: true, value: each })
    }
  })

  it.each([
    ['no JSON', 'six threes'],
    ['another file', JSON.stringify({ ...handOver, sixThrees: 'outing' })],
    ['a missing field', JSON.stringify({ ...handOver, ops: undefined })],
    ['a field too many', JSON.stringify({ ...handOver, more: 1 })],
    ['a secret too short', JSON.stringify({ ...handOver, invite: { id: 'desk', secret: 'A' } })],
    ['too deep', `${'['.repeat(50)}${']'.repeat(50)}`],
    ['a list', '[]'],
    ['null', 'null'],
  ])('is told from %s', (_, text) => {
    expect(parseHandOver(text)).toEqual({ ok: false, error: 'not a hand-over' })
  })

  it('of a newer version is said to be newer', () => {
    expect(parseHandOver(JSON.stringify({ ...handOver, version: 2 }))).toEqual({ ok: false, error: 'newer version' })
  })
})
