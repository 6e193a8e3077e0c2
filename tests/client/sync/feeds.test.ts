import { expect, test } from 'vitest'
import { feedsOf } from '#client/sync/feeds.ts'
import { emptyLog, foldOps, type LogState } from '#core/log/fold.ts'
import type { DeviceId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { makeOp } from './make-held.ts'

const grant = (role: string, group: string | null): Json => ({
  hash: 'a'.repeat(64),
  role,
  group,
  label: 'Phone',
  invite: null,
})

const stateOf = (facts: Readonly<Record<string, Json>>): LogState =>
  foldOps(emptyLog, [makeOp({ facts: Object.entries(facts).map(([key, value]) => ({ key, value, replaces: [] })) })])

const feeds = (state: LogState, device: string): readonly string[] => feedsOf(state, device as DeviceId)

const one = { 'group/first': { name: 'First' } }
const two = {
  ...one,
  'group/second': { name: 'Second' },
  'group/third': { name: 'Third' },
  'key/desk': grant('desk', null),
  'key/viewer': grant('viewer', null),
  'key/scorer': grant('scorer', 'first'),
  'place/fir': { group: 'first', position: 1, elsewhere: [] },
  'place/rowan': { group: 'third', position: 1, elsewhere: [{ group: 'third', holes: [[1, 1]] }] },
}

test('before there is a group everything is followed', () => {
  expect(feeds(emptyLog, 'alder')).toEqual(['all'])
})

test('in an outing of one group everybody follows it', () => {
  expect(feeds(stateOf(one), 'alder')).toEqual(['g/first'])
})

/** More groups than a roll-up has. */
const field = {
  ...two,
  ...Object.fromEntries(Array.from({ length: 6 }, (_, n) => [`group/more${n + 1}`, { name: `More ${n + 1}` }])),
}

test('in a larger one the desk and viewers follow everything, a scorer its own group', () => {
  const state = stateOf(field)
  expect(feeds(state, 'desk')).toEqual(['all'])
  expect(feeds(state, 'viewer')).toEqual(['all'])
  expect(feeds(state, 'scorer')).toEqual(['g/first'])
})

test('a scorer also follows the group in which one of its balls was placed, either way round', () => {
  const moved = { group: 'second', position: 3, elsewhere: [{ group: 'first', holes: [[1, 1]] }] }
  expect(feeds(stateOf({ ...field, 'place/fir': moved }), 'scorer')).toEqual(['g/first', 'g/second'])
})

test('of a few groups a scorer follows its own at once and everything in batches: a roll-up has one board', () => {
  const state = stateOf(two)
  expect(feeds(state, 'desk')).toEqual(['all'])
  expect(feeds(state, 'scorer')).toEqual(['all', 'g/first'])
})
