import { describe, expect, test } from 'vitest'
import { lineOfOp } from '#client/parts/history-line.ts'
import { isConcession } from '#client/parts/note-line.ts'
import { catalogue, isWordKey } from '#client/words/say-any.ts'
import type { Op } from '#core/log/op.ts'
import type { NewFact } from '#core/outing/acts.ts'
import { driveFacts, likelyScoreFacts, markerFacts, teeShotFacts } from '#core/outing/acts-ball.ts'
import { certifyFacts, rulingFacts } from '#core/outing/acts-card.ts'
import { agreeHoleFacts, concedeHoleFacts, concedeMatchFacts } from '#core/outing/acts-match.ts'
import { factKinds } from '#core/outing/keys.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { GameId, PlayerId, RulingId } from '#core/values/ids.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'
import { ball } from '#tests/kit/played-game.ts'

const outing = outingOfPlain(plainWith())
const blank = outingOfPlain(plainWith({ scores: [] }))
const match = 'match' as GameId
const [alder, birch] = [ball('alder'), ball('birch')]
const at8 = { hole: 8, lap: 1 }

const opOf = (facts: readonly NewFact[]): Op =>
  makeOp(
    [],
    'phone',
    facts.map(fact => ({ ...fact, replaces: [] })),
  )

const given = { game: match, by: birch, to: null }
const hole = concedeHoleFacts(blank, resultsOf(blank), { ...given, ...at8 })

describe('an act beside the scores', () => {
  test.each<[string, readonly NewFact[]]>([
    ['a phone: Four-ball match, the 8th conceded by Birch’s side', hole],
    ['a phone: Four-ball match, the match conceded by Birch’s side', concedeMatchFacts(blank, resultsOf(blank), given)],
    [
      'a phone: Four-ball match, the 8th as both sides agree',
      agreeHoleFacts(outing, { game: match, ...at8, between: [alder, birch], won: null }),
    ],
    ['a phone put in the most likely score of Birch on the 8th', likelyScoreFacts(outing, { ball: birch, ...at8 }, 7)],
    ['a phone cleared the drive of Birch on the 8th', driveFacts(outing, { ball: birch, ...at8 }, null)],
    [
      'a phone noted who tees off for Birch from the 8th on',
      teeShotFacts(outing, { ball: birch, ...at8 }, 'birch' as PlayerId),
    ],
    ['a phone named the marker of Alder', markerFacts(outing, alder, 'birch' as PlayerId)],
    ['a phone certified the card of Alder as marker', certifyFacts(outing, alder, 'marker')],
    [
      'a phone ruled: Birch: 2 penalty strokes, hole 8',
      rulingFacts('one' as RulingId, {
        kind: 'penalty',
        ball: birch,
        hole: [8, 1],
        strokes: 2,
        holeLost: false,
        games: null,
        rule: null,
        reason: null,
      }),
    ],
    ['a phone took a ruling back', rulingFacts('one' as RulingId, null)],
    ['a phone changed Four-ball match', [{ key: 'game/match/allowance', value: 90 }]],
    ['a phone added Skins', [{ key: 'game/skins/format', value: 'skins' }]],
    ['a phone took Four-ball match away', [{ key: 'game/match/format', value: null }]],
    ['a phone named the outing Autumn Day', [{ key: 'title', value: 'Autumn Day' }]],
    ['a phone took the name of the outing away', [{ key: 'title', value: null }]],
  ])('is told in one line: %s', (line, facts) => {
    expect(lineOfOp(opOf(facts), outing, null)).toBe(line)
  })

  test('is told in no words but those of an act, whatever kind its fact is of', () => {
    const keys = factKinds.flatMap(kind => [`history-${kind}`, `history-no-${kind}`]).filter(isWordKey)
    expect(keys.filter(key => !catalogue[key].text.startsWith('{who}'))).toEqual([])
  })

  test('is final where it is a concession, and is none once it is withdrawn', () => {
    expect(isConcession(opOf(hole))).toBe(true)
    expect(isConcession(opOf(hole.map(({ key }) => ({ key, value: null }))))).toBe(false)
    expect(isConcession(opOf(certifyFacts(outing, alder, 'player')))).toBe(false)
  })
})
