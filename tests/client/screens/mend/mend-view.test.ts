import { describe, expect, test } from 'vitest'
import { lineOfOp } from '#client/parts/history-line.ts'
import { draftToMend, faultsOfMending, mendingsOf } from '#client/screens/mend/mend-view.ts'
import { mendHoleFacts, mendPlayersTeeFacts } from '#core/outing/acts-mend.ts'
import { must } from '#core/values/assert.ts'
import type { PlayerId, TeeId } from '#core/values/ids.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const outing = outingOfPlain(plainWith())
const draft = draftToMend(outing)
const alder = must(
  draft.players.find(({ id }) => id === 'alder'),
  'Alder plays',
)

describe('a player mended', () => {
  test('is one act for each thing that differs', () => {
    const typed = { ...alder, name: ' Elder ', kind: 'plain-strokes', figure: '+2', tee: '' } as const
    expect(mendingsOf(alder, alder)).toEqual([])
    expect(mendingsOf(alder, typed).map(({ facts }) => facts)).toEqual([
      [{ key: 'player/alder', value: { name: 'Elder' } }],
      [{ key: 'player-tee/alder', value: null }],
      [{ key: 'handicap/alder', value: { kind: 'plain-strokes', strokes: -2 } }],
    ])
  })

  test('needs a name of their own and a figure in its range', () => {
    expect(faultsOfMending(draft, alder)).toEqual([])
    const fields = (change: Partial<typeof alder>) =>
      faultsOfMending(draft, { ...alder, ...change }).map(({ field }) => field)
    expect(fields({ name: 'Rowan' })).toEqual(['alder-name'])
    expect(fields({ name: ' ' })).toEqual(['alder-name'])
    expect(fields({ figure: '' })).toEqual(['alder-figure'])
    expect(fields({ kind: 'index', figure: '54.1' })).toEqual(['alder-figure'])
  })

  test('may go on without a handicap that nobody had', () => {
    const none = { ...draft, players: draft.players.map(each => ({ ...each, figure: '' })) }
    expect(faultsOfMending(none, { ...alder, figure: '', name: 'Elder' })).toEqual([])
  })
})

describe('the line of the history', () => {
  const line = (facts: Parameters<typeof makeOp>[2]) => lineOfOp(makeOp([], 'desk', facts), outing, null)
  const said = (facts: readonly { readonly key: string; readonly value: unknown }[]) =>
    line(facts.map(fact => ({ ...fact, replaces: [] })) as Parameters<typeof makeOp>[2])

  test('says what was mended and to what', () => {
    expect(said(mendHoleFacts(outing, 5, { par: 4, index: 11 }, null))).toBe(
      'a phone corrected the 5th: par 4, stroke index 11',
    )
    const strokes = mendingsOf(alder, { ...alder, kind: 'index', figure: '+1.3' })
    expect(said(strokes[0]?.facts ?? [])).toBe('a phone corrected Alder’s handicap: Index +1.3')
    expect(said(mendPlayersTeeFacts('alder' as PlayerId, 'white' as TeeId))).toBe(
      'a phone corrected Alder’s tee: White',
    )
    expect(said(mendPlayersTeeFacts('alder' as PlayerId, null))).toBe('a phone took Alder’s tee away')
  })
})
