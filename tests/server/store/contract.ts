import { describe, expect, it } from 'vitest'
import type { DeviceId, InviteId } from '#core/values/ids.ts'
import type { Claim, FeedRead, Store } from '#server/store/store.ts'
import { alder, birch, groupA, logA, logB, makeEntry } from '#tests/server/support/entry.ts'

export interface StoreSetup {
  readonly store: Store
  /** Ends the store as a stop of the process does, and opens it again on the same data. */
  reopen(): Promise<Store>
}

const first = makeEntry(1, { creates: true })
const everything: FeedRead = { feed: 'all', after: 0, upTo: 1e9, limit: 1_000, textLength: 1e9 }
const hash = (letter: string) => letter.repeat(64)

const claim = (name: string, letter: string, changes: Partial<Claim> = {}): Claim => ({
  kind: 'key',
  name: name as DeviceId,
  hash: hash(letter),
  role: 'scorer',
  group: groupA,
  path: 'facts[0].key',
  ...changes,
})

/** What every store must do; each store's own test runs it. */
export function storeContract(name: string, open: () => Promise<StoreSetup>): void {
  describe(`${name}: appending`, () => {
    it('holds no log before its first op, and gives it an era of its own', async () => {
      const { store } = await open()
      expect(await store.headOf(logA)).toBeNull()
      await store.append(first)
      await store.append({ ...first, log: logB })
      const [a, b] = [await store.headOf(logA), await store.headOf(logB)]
      expect(a).toMatchObject({ seq: 1 })
      expect(a).not.toEqual(b)
    })

    it('makes no log for an op that may not be its first', async () => {
      const { store } = await open()
      expect(await store.append(makeEntry(1))).toEqual({ kind: 'later', reason: 'key unknown' })
      expect(await store.headOf(logA)).toBeNull()
    })

    it('weighs an op again that was to make a log which is there by now', async () => {
      const { store } = await open()
      const both = await Promise.all([store.append(first), store.append({ ...first, device: birch })])
      expect(both).toEqual([{ kind: 'stored', seq: 1 }, { kind: 'weigh again' }])
    })

    it('counts 1, 2, 3 in the order of the calls, each log for itself', async () => {
      const { store } = await open()
      const others = [
        makeEntry(2),
        makeEntry(1, { log: logB, creates: true }),
        makeEntry(3),
        makeEntry(2, { log: logB }),
      ]
      const outcomes = await Promise.all([first, ...others].map(entry => store.append(entry)))
      expect(outcomes).toEqual([1, 2, 1, 3, 2].map(seq => ({ kind: 'stored', seq })))
    })

    it('answers the same identity with the same text by its sequence, and refuses other text', async () => {
      const { store } = await open()
      const [one, again, other] = await Promise.all([
        store.append(first),
        store.append(makeEntry(1)),
        store.append(makeEntry(1, { text: 'other' })),
      ])
      expect(one).toEqual({ kind: 'stored', seq: 1 })
      expect(again).toEqual({ kind: 'already stored', seq: 1 })
      expect(other).toEqual({ kind: 'refused', code: 'identity taken', path: 'n' })
      expect(await store.headOf(logA)).toMatchObject({ seq: 1 })
    })

    it('keeps all of it over a restart, texts to the last character', async () => {
      const { store, reopen } = await open()
      const text = '{"a":"\u2028 \\ud800 é \u{1F3CC}"}'
      await store.append({ ...first, text, carrier: birch })
      const era = (await store.headOf(logA)) as { era: string }
      const again = await reopen()
      expect(await again.headOf(logA)).toEqual({ era: era.era, seq: 1 })
      expect(await again.read(logA, everything)).toEqual([[1, text, 1_001, birch]])
      expect(await again.append(makeEntry(2))).toEqual({ kind: 'stored', seq: 2 })
    })

    it('stores what waits when it is closed, and then takes no more', async () => {
      const { store, reopen } = await open()
      const waiting = [first, makeEntry(2)].map(entry => store.append(entry))
      const again = await reopen()
      expect(await Promise.all(waiting)).toEqual([1, 2].map(seq => ({ kind: 'stored', seq })))
      expect(await store.append(makeEntry(3))).toEqual({ kind: 'later', reason: 'busy' })
      expect(await again.headOf(logA)).toMatchObject({ seq: 2 })
    })
  })

  describe(`${name}: feeds`, () => {
    const openWithGroups = async () => {
      const { store } = await open()
      await store.append(first)
      await store.append(makeEntry(2, { scope: groupA }))
      await store.append(makeEntry(3, { scope: 'b' as typeof groupA, device: birch }))
      await store.append(makeEntry(4))
      return store
    }
    const seqs = async (store: Store, read: Partial<FeedRead>) =>
      (await store.read(logA, { ...everything, ...read })).map(([seq]) => seq)

    it('gives a group its own ops and those of no scope', async () => {
      const store = await openWithGroups()
      expect(await seqs(store, {})).toEqual([1, 2, 3, 4])
      expect(await seqs(store, { feed: 'g/a' })).toEqual([1, 2, 4])
      expect(await seqs(store, { feed: 'g/c' })).toEqual([1, 4])
    })

    it('reads after, up to, and no more than asked, but always one', async () => {
      const store = await openWithGroups()
      expect(await seqs(store, { after: 1, upTo: 3 })).toEqual([2, 3])
      expect(await seqs(store, { limit: 2 })).toEqual([1, 2])
      expect(await seqs(store, { textLength: 13 })).toEqual([1, 2])
      expect(await seqs(store, { textLength: 1 })).toEqual([1])
    })

    it('knows where each feed ends and which n of which device it holds', async () => {
      const store = await openWithGroups()
      expect(await store.endsOf(logA)).toMatchObject({
        seq: 4,
        noScope: 4,
        byGroup: new Map([
          ['a', 2],
          ['b', 3],
        ]),
      })
      expect(await store.endsOf(logB)).toBeNull()
      expect(await store.hereOf(logA, 'all')).toEqual(
        new Map([
          [
            alder,
            [
              [1, 2],
              [4, 4],
            ],
          ],
          [birch, [[3, 3]]],
        ]),
      )
      expect(await store.hereOf(logA, 'g/a')).toEqual(
        new Map([
          [
            alder,
            [
              [1, 2],
              [4, 4],
            ],
          ],
        ]),
      )
    })

    it('finds an op by its identity', async () => {
      const store = await openWithGroups()
      expect(await store.find(logA, birch, 3)).toEqual({ seq: 3, text: 'text 3' })
      expect(await store.find(logA, birch, 2)).toBeNull()
    })
  })

  describe(`${name}: keys and invites`, () => {
    const takenAt = (path: string) => ({ kind: 'refused', code: 'key taken', path })

    it('writes keys and invites with the op that says them', async () => {
      const { store, reopen } = await open()
      const invite = claim('i', 'b', { kind: 'invite', name: 'i' as InviteId, role: 'desk', group: null })
      await store.append({ ...first, claims: [claim('alder', 'a'), invite] })
      const access = await (await reopen()).accessOf(logA, alder, 'i' as InviteId)
      expect(access).toEqual({
        key: { hash: hash('a'), role: 'scorer', group: groupA },
        keyVoid: false,
        invite: { hash: hash('b'), role: 'desk', group: null },
        inviteVoid: false,
      })
    })

    it('lets the first writer of a name keep it, and stores nothing of an op that would take it', async () => {
      const { store } = await open()
      await store.append({ ...first, claims: [claim('alder', 'a')] })
      const taking = makeEntry(2, { claims: [claim('birch', 'b'), claim('alder', 'c', { path: 'facts[1].key' })] })
      expect(await store.append({ ...taking, mayRegrant: true })).toEqual(takenAt('facts[1].key'))
      expect(await store.accessOf(logA, birch, null)).toMatchObject({ key: null })
      expect(await store.headOf(logA)).toMatchObject({ seq: 1 })
    })

    it('changes a role only for one who may grant', async () => {
      const { store } = await open()
      await store.append({ ...first, claims: [claim('alder', 'a')] })
      const raised = [claim('alder', 'a', { role: 'desk', group: null })]
      expect(await store.append(makeEntry(2, { claims: raised }))).toEqual(takenAt('facts[0].key'))
      expect(await store.append(makeEntry(2, { claims: raised, mayRegrant: true }))).toMatchObject({ kind: 'stored' })
      expect((await store.accessOf(logA, alder, null)).key).toMatchObject({ role: 'desk' })
    })

    it('refuses what stands on a key that was voided in the same commit', async () => {
      const { store } = await open()
      await store.append({ ...first, claims: [claim('alder', 'a')] })
      const voiding = { kind: 'key', name: alder, stands: true } as const
      const [, after] = await Promise.all([
        store.append(makeEntry(1, { device: birch, voidings: [voiding] })),
        store.append(makeEntry(2, { under: { kind: 'key', name: alder } })),
      ])
      expect(after).toEqual({ kind: 'refused', code: 'voided', path: '' })
      await store.append(makeEntry(2, { device: birch, voidings: [{ ...voiding, stands: false }] }))
      expect(await store.append(makeEntry(2, { under: { kind: 'key', name: alder } }))).toMatchObject({
        kind: 'stored',
      })
    })
  })

  describe(`${name}: the desk's offers and deleting`, () => {
    const offer = { device: alder, n: 2, text: 'text 2', carrier: birch }

    it('offers an op once, until it is stored or dropped, and no more than so many of one carrier', async () => {
      const { store } = await open()
      await store.append(first)
      expect(await store.offer(logA, offer, 2)).toBe(true)
      expect(await store.offer(logA, offer, 2)).toBe(false)
      expect(await store.offer(logA, { ...offer, n: 3 }, 2)).toBe(true)
      expect(await store.offer(logA, { ...offer, n: 4 }, 2)).toBe(false)
      await store.append(makeEntry(2))
      expect(await store.offersOf(logA)).toEqual([{ ...offer, n: 3 }])
      await store.dropOffer(logA, alder, 3)
      expect(await store.offersOf(logA)).toEqual([])
    })

    it('leaves a tombstone where a log was', async () => {
      const { store, reopen } = await open()
      await store.append({ ...first, claims: [claim('alder', 'a')] })
      await store.bury(logA, 5)
      expect(await store.headOf(logA)).toBe('deleted')
      expect(await store.read(logA, everything)).toEqual([])
      expect(await store.accessOf(logA, alder, null)).toMatchObject({ key: null })
      const again = await reopen()
      expect(await again.append(first)).toEqual({ kind: 'refused', code: 'deleted', path: 'log' })
    })

    it('buries what has been idle since a time, and that alone', async () => {
      const { store } = await open()
      await store.append({ ...first, at: 10 })
      await store.append(makeEntry(2, { at: 30 }))
      await store.append({ ...first, log: logB, at: 20 })
      expect(await store.buryIdle(20, 40)).toEqual([])
      expect(await store.buryIdle(25, 40)).toEqual([logB])
      expect([await store.headOf(logA), await store.headOf(logB)]).toEqual([
        expect.objectContaining({ seq: 2 }),
        'deleted',
      ])
      expect(await store.buryIdle(25, 40)).toEqual([])
    })

    it('has no trouble when it is well', async () => {
      const { store } = await open()
      expect(await store.trouble()).toBeNull()
    })
  })
}
