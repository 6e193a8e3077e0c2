import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { scoresOn } from '#core/card/settle-card.ts'
import { seenUnder, standingsOf } from '#core/log/fold.ts'
import { opIdOf } from '#core/log/op.ts'
import { chooseScoreFacts, scoreFact } from '#core/outing/acts.ts'
import { scoreKey } from '#core/outing/keys.ts'
import { histories, makeOp, shuffled, shuffles } from '#tests/kit/histories.ts'
import { holds } from '#tests/kit/property.ts'
import { actAfter, alder, groupA, outingOfState, outingWith, stateWith } from '#tests/kit/two-groups.ts'

const at = { group: groupA, ball: alder, hole: 1, lap: 1 }
const card = scoreKey({ ...at, record: 'card' })
const marker = scoreKey({ ...at, record: 'marker' })
const desk = scoreKey({ ...at, record: 'desk' })

const valuesOf = () => [4, 5, 'picked-up', null]
const onCard = histories({ keys: [card], valuesOf })
const onRecords = histories({ keys: [card, marker, desk], valuesOf })
const score = fc.constantFrom(4, 5, 6, 'picked-up' as const)

const scoresOf = (outing: ReturnType<typeof outingWith>) => {
  const found = outing.cards.get(alder)
  return found === undefined ? [] : scoresOn(found, '1/1')
}

describe('scores of one ball', () => {
  holds(
    'two writers who did not see each other: different scores are two scores, equal ones agree',
    fc.tuple(onCard, score, score, shuffles),
    ([before, one, other, order]) => {
      const replaces = seenUnder(stateWith(before), card)
      const first = makeOp(before, 'rowan', [{ key: card, value: one, replaces }])
      const second = makeOp(before, 'fir', [{ key: card, value: other, replaces }])
      const outing = outingWith(shuffled([...before, first, second], order))
      const found = outing.cards.get(alder)?.scores.get('1/1')
      expect(found?.kind).toBe(one === other ? 'one' : 'two')
      expect(new Set(scoresOf(outing))).toEqual(new Set([one, other]))
      expect(found?.kind === 'none' ? [] : found?.entries.map(({ op }) => op).sort()).toEqual(
        [opIdOf(first), opIdOf(second)].sort(),
      )
    },
  )

  holds(
    'card and marker records never replace each other',
    fc.tuple(onRecords, score, fc.constantFrom('card' as const, 'marker' as const)),
    ([before, value, record]) => {
      const [own, others] = record === 'card' ? [card, [marker, desk]] : [marker, [card, desk]]
      const was = stateWith(before)
      const op = actAfter(before, 'rowan', [scoreFact({ ...at, record, score: value })])
      const is = stateWith([...before, op])
      expect(standingsOf(is, own).map(standing => standing.op)).toEqual([opIdOf(op)])
      for (const key of others) expect(standingsOf(is, key)).toEqual(standingsOf(was, key))
    },
  )

  holds('withdrawing every record leaves nothing', fc.tuple(onRecords, shuffles), ([before, order]) => {
    const gone = actAfter(
      before,
      'rowan',
      (['card', 'marker', 'desk'] as const).map(record => scoreFact({ ...at, record, score: null })),
    )
    const outing = outingWith(shuffled([...before, gone], order))
    expect(outing.cards.get(alder)?.scores.size).toBe(0)
    expect(outing.late.length + outing.stray.length).toBe(0)
  })

  holds('a choice ends two scores in every record', fc.tuple(onRecords, score, shuffles), ([before, chosen, order]) => {
    const state = stateWith(before)
    const facts = chooseScoreFacts(state, outingOfState(state), { ball: alder, hole: 1, lap: 1, score: chosen })
    const ops = facts.length === 0 ? before : [...before, actAfter(before, 'rowan', facts)]
    const outing = outingWith(shuffled(ops, order))
    expect(outing.cards.get(alder)?.scores.get('1/1')?.kind).toBe('one')
    expect(scoresOf(outing)).toEqual([chosen])
  })
})
