import { beforeEach, describe, expect, test } from 'vitest'
import { scoresOn } from '#core/card/settle-card.ts'
import { factsReplacing } from '#core/outing/acts.ts'
import { scoreKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { GroupId } from '#core/values/ids.ts'
import { joinLive, same, start, startLive, startNetwork } from '#tests/client/sync/network.ts'
import { flushAll, type Phone } from '#tests/client/sync/phone.ts'
import { alder, groupA, outingOfState, startOp } from '#tests/kit/two-groups.ts'
import { caseOf, casesIn } from './worked-cases.ts'

/** Worked cases of several phones and one card; their pages are in the file. */
const cases = casesIn('shared-cases.json')

const keyOf = (hole: number): string => scoreKey({ group: groupA, ball: alder, hole, lap: 1, record: 'card' })

/** Puts a score on Alder's card, having seen what this phone shows. */
const put = (phone: Phone, hole: number, score: number): Promise<unknown> =>
  phone.engine.write(({ state }) => ({
    scope: groupA as GroupId,
    act: 'score entered',
    facts: factsReplacing(state, [{ key: keyOf(hole), value: score }]),
  }))

const outingOn = ({ engine }: Phone): Outing => outingOfState(engine.holding().state)

/** What the card has for a hole: several where the phones do not agree. */
function shownOn(phone: Phone, hole: number): readonly unknown[] {
  const card = outingOn(phone).cards.get(alder)
  return card ? scoresOn(card, `${hole}/1`) : []
}

/** Two phones of one group that hold the outing, before anything is scored. */
async function twoPhones(): Promise<readonly [Phone, Phone]> {
  const one = await startLive('maple')
  await one.engine.write(({ state }) => ({
    scope: null,
    act: 'outing set up',
    facts: factsReplacing(
      state,
      startOp.facts.map(({ key, value }) => ({ key, value })),
    ),
  }))
  await one.flush()
  const other = await joinLive('rowan')
  await flushAll([one.link, other.link])
  return [one, other]
}

beforeEach(startNetwork)

describe('several phones and one card', () => {
  test('SY-01 two phones that disagree about a hole: both are shown, nothing is overwritten, a choice settles it', async () => {
    interface Setup {
      readonly entries: readonly { readonly hole: number; readonly score: number }[]
    }
    const { setup, expected } = caseOf<Setup, { shown: number[]; auto_overwrite: boolean }>(cases, 'SY-01')
    const [marker, player] = await twoPhones()
    const [first, second] = setup.entries as [{ hole: number; score: number }, { hole: number; score: number }]
    player.link.cut()
    await put(player, second.hole, second.score)
    await put(marker, first.hole, first.score)
    await marker.flush()
    player.link.plug()
    await flushAll([marker.link, player.link])
    for (const phone of [marker, player]) {
      expect([...shownOn(phone, first.hole)].sort()).toEqual(expected.shown)
      expect(outingOn(phone).cards.get(alder)?.scores.size).toBe(1)
    }
    expect(expected.auto_overwrite).toBe(false)
    // The two agree, before the card is returned, and one of them writes it.
    await put(player, second.hole, second.score)
    await flushAll([marker.link, player.link])
    for (const phone of [marker, player]) expect(shownOn(phone, first.hole)).toEqual([second.score])
    same(marker, player)
  })

  test('SY-03 a phone dies and paper takes over: both are joined, and the hole in which they differ is asked about', async () => {
    interface Holes {
      readonly phone_holes: Readonly<Record<string, number>>
      readonly paper_holes: Readonly<Record<string, number>>
    }
    interface Merged {
      readonly merged: Readonly<Record<string, number | null>>
      readonly ask: readonly number[]
    }
    const { setup, expected } = caseOf<Holes, Merged>(cases, 'SY-03')
    const [other, dying] = await twoPhones()
    dying.link.cut()
    for (const [hole, score] of Object.entries(setup.phone_holes)) await put(dying, Number(hole), score)
    dying.engine.disconnect()
    for (const [hole, score] of Object.entries(setup.paper_holes)) await put(other, Number(hole), score)
    await other.flush()
    // It is charged at last, and its page opened again.
    const revived = await start('rowan', { store: dying.store })
    revived.link.plug()
    await flushAll([other.link, revived.link])
    for (const phone of [other, revived]) {
      const holes = Object.keys(expected.merged).map(Number)
      const settled = holes.map(hole => {
        const shown = shownOn(phone, hole)
        return [String(hole), shown.length === 1 ? shown[0] : null]
      })
      expect(Object.fromEntries(settled)).toEqual(expected.merged)
      expect(holes.filter(hole => shownOn(phone, hole).length > 1)).toEqual(expected.ask)
      expect([...shownOn(phone, 4)].sort()).toEqual([setup.phone_holes['4'], setup.paper_holes['4']])
    }
    same(other, revived)
  })

  test('every case of the file is shown here', () => {
    expect(cases.map(({ id }) => id)).toEqual(['SY-01', 'SY-03'])
  })
})
