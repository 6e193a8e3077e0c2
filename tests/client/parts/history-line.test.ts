import { describe, expect, test } from 'vitest'
import { heldById, isCorrection, lineOfOp } from '#client/parts/history-line.ts'
import { noMark } from '#client/sync/held-op.ts'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import { type Fact, type Op, textOfOp } from '#core/log/op.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { DeviceId, LogId, OpId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { isKnownValue } from '#shared/facts.ts'

const key = 'g/g1/score/p4/8/1/card'
const grant = (label: string): Json => ({ hash: 'a'.repeat(64), role: 'desk', group: null, label, invite: null })

const op = (device: string, n: number, facts: readonly Fact[]): Op => ({
  log: 'log' as LogId,
  scope: null,
  device: device as DeviceId,
  n,
  tick: n,
  at: 0,
  act: 'act',
  facts,
})

const fact = (at: string, value: Json, ...replaces: string[]): Fact => ({
  key: at,
  value,
  replaces: replaces as OpId[],
})

const start = op('alder', 1, [
  fact('length', 18),
  fact('key/alder', grant('Alder')),
  fact('key/birch', grant('Birch')),
  fact('player/p4', { name: 'Rowan' }),
  fact('ball/p4', { players: ['p4'] }),
])
const five = op('alder', 2, [fact(key, 5)])
const six = op('birch', 1, [fact(key, 6, 'alder.2')])
const four = op('birch', 2, [fact(key, 4)])
const choice = op('birch', 3, [fact(key, 6, 'birch.1', 'birch.2')])
const cleared = op('birch', 4, [fact(key, null, 'birch.3')])
const ops = [start, five, six, four, choice, cleared]

const outing = outingOf(foldOps(emptyLog, ops), isKnownValue)
const held = heldById(
  ops.map((each, place) => ({
    op: each,
    text: textOfOp(each),
    seq: null,
    serverAt: null,
    carrier: null,
    mark: noMark,
    place,
  })),
)

describe('a line of history', () => {
  test.each([
    [start, 'Alder started the outing'],
    [five, 'Alder put in 5 for Rowan’s 8th'],
    [six, 'Birch changed Rowan’s 8th from 5 to 6'],
    [choice, 'Birch chose 6 for Rowan’s 8th'],
    [cleared, 'Birch cleared Rowan’s 8th'],
  ])('says who did what: %#', (each, line) => {
    expect(lineOfOp(each, outing, held)).toBe(line)
  })

  test('other phones are told of a correction, not of a first score', () => {
    expect([five, six, four].map(each => isCorrection(each, held))).toEqual([false, true, false])
  })

  test('names a phone as it was called then, and says when another player has it and when it is taken out', () => {
    const joined = op('cedar', 1, [fact('key/cedar', grant('Cedar'))])
    const before = op('cedar', 2, [fact(key, 5)])
    const handed = op('cedar', 3, [fact('key/cedar', grant('Maple'), 'cedar.1')])
    const after = op('cedar', 4, [fact(key, 6, 'cedar.2')])
    const out = op('alder', 3, [fact('void/key/cedar', true)])
    const back = op('alder', 4, [fact('void/key/cedar', null, 'alder.3')])
    const stopped = op('alder', 5, [fact('void/invite/oak', true)])
    const again = op('alder', 6, [fact('void/invite/oak', null, 'alder.5')])
    const all = [start, joined, before, handed, after, out, back, stopped, again]
    const now = outingOf(foldOps(emptyLog, all), isKnownValue)
    const byId = new Map(all.map(each => [`${each.device}.${each.n}` as OpId, each]))
    expect(all.slice(1).map(each => lineOfOp(each, now, byId))).toEqual([
      'Cedar joined',
      'Cedar put in 5 for Rowan’s 8th',
      'Cedar’s phone is now Maple’s',
      'Maple changed Rowan’s 8th from 5 to 6',
      'Alder took Maple’s phone out',
      'Alder let Maple’s phone in again',
      'Alder stopped an invite',
      'Alder made a stopped invite good again',
    ])
  })
})
