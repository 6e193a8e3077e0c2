import { describe, expect } from 'vitest'
import type { Op } from '#core/log/op.ts'
import { factKinds, keyPatterns, parseKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { DeviceId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { type Actor, forbiddenFact } from '#shared/roles.ts'
import { histories } from '#tests/kit/histories.ts'
import { holds } from '#tests/kit/property.ts'
import { alder, groupB, outingWith } from '#tests/kit/two-groups.ts'

/** Every kind of key with every id of the outing in it, the other group's among them. */
const slots: Readonly<Record<string, readonly string[]>> = {
  group: ['a', 'b'],
  ball: ['alder', 'birch'],
  player: ['alder'],
  game: ['points', 'own'],
  tee: ['white'],
  invite: ['i1'],
  ruling: ['r1'],
  device: ['birch'],
  hole: ['1'],
  lap: ['1'],
  record: ['card', 'marker', 'desk'],
}

function fill(pattern: string): string[] {
  const slot = /:([a-z]+)/.exec(pattern)
  if (slot === null) return [pattern]
  return (slots[slot[1] ?? ''] ?? []).flatMap(value => fill(pattern.replace(slot[0], value)))
}

const keys = factKinds.flatMap(kind => keyPatterns[kind].flatMap(fill)).filter(key => parseKey(key) !== null)

/** Values that would change much if they counted. */
function valuesOf(key: string): readonly Json[] {
  if (key.includes('score/')) return [3, 9, 'picked-up', null]
  if (key.endsWith('/format')) return ['stroke-play-gross', 'stableford', null]
  if (key.endsWith('/sides')) return [[['alder'], ['birch']], null]
  if (key.endsWith('/allowance')) return [0, 50, null]
  if (key.endsWith('/rounding')) return ['course-handicap-rounded-first']
  if (key.endsWith('/nine-hole-index')) return ['half-index-to-tenth']
  if (key.endsWith('/match-strokes')) return ['from-lowest-playing-handicap']
  if (key.includes('/conceded-stroke/') || key.includes('/likely-score/')) return [3, 9, null]
  if (key.includes('/conceded-')) return [{ to: 'alder' }, { to: null }, null]
  if (key.includes('/press/')) return [{ by: 'alder' }, { by: 'birch' }, null]
  if (key.includes('/drive/') || key.includes('/tee-shot/') || key.includes('/marker/')) return ['alder', null]
  if (key.includes('/absence/')) {
    return [{ joinedAt: [2, 1], leftAt: null, isWithdrawn: true, reason: null }, null]
  }
  if (key.endsWith('/order'))
    return [
      [
        [10, 1],
        [1, 1],
      ],
      null,
    ]
  return [true, 'own', { name: 'Fir' }, { group: 'b', position: 1, elsewhere: [] }, { scores: [[1, 1, 9]] }, null]
}

const scorerOfB: Actor = { role: 'scorer', group: groupB, device: 'birch' as DeviceId }
const isAllowed = (op: Op): boolean => forbiddenFact(scorerOfB, op) === null

/** All that is counted for Alder, who plays in group a. */
function alderIn(outing: Outing): string {
  const results = resultsOf(outing)
  const points = [...results.games.values()].find(({ game }) => game === 'points')
  const line = points?.kind === 'total' ? points.lines.find(({ side }) => side.includes(alder)) : undefined
  const card = results.cards.get(alder)
  const scores = [...(outing.cards.get(alder)?.scores ?? [])]
  const parts = [
    scores,
    saidOfAlder(outing),
    line?.total,
    line && [...line.byHole],
    card && [...card.levels],
    card?.threes,
  ]
  return JSON.stringify(parts.map(part => (part instanceof Map ? [...part] : part)))
}

/** What is noted about Alder; a match against the other group's Birch is both groups' to agree. */
function saidOfAlder({ notes }: Outing): unknown {
  const { ofGames, drives, absences, likelyScores, markers, certified } = notes
  const inGames = [...ofGames.values()].map(said => [
    said.strokeConcessions.filter(({ ball }) => ball === alder),
    [...said.holeConcessions, ...said.matchConcessions, ...said.presses].filter(({ by }) => by === alder),
  ])
  const ofBall = [drives, absences, likelyScores, markers, certified].map(byBall => byBall.get(alder) ?? null)
  return [inGames.flat(2), ofBall.map(each => (each instanceof Map ? [...each] : each))]
}

const untouched = alderIn(outingWith([]))
const writings = histories({ keys, valuesOf }, 8)
const inGroupB = histories({ keys: keys.filter(key => key.startsWith('g/b/')), valuesOf }, 8)

describe("a group's key", () => {
  holds("never changes another group's score", writings, ops => {
    const allowed = ops.filter(isAllowed)
    if (allowed.length > 0) expect(alderIn(outingWith(allowed))).toBe(untouched)
  })

  holds('never does so however much of its own it writes', inGroupB, ops => {
    expect(ops.every(isAllowed)).toBe(true)
    expect(alderIn(outingWith(ops))).toBe(untouched)
  })

  holds('writes about another ball only what is listed and never counts', inGroupB, ops => {
    const outing = outingWith(ops)
    const about = ops.flatMap(op => op.facts).filter(({ key }) => key.startsWith('g/b/score/alder/'))
    if (outing.stray.length > 0) expect(about.length).toBeGreaterThan(0)
    expect(outing.stray.every(({ ball, group }) => ball === alder && group === groupB)).toBe(true)
    expect(outing.cards.get(alder)?.scores.size).toBe(0)
  })
})
