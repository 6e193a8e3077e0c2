import { IDBFactory } from 'fake-indexeddb'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { clubPutIn, favouriteChosen } from '#core/plan/acts.ts'
import { parsePlayerKey } from '#core/plan/keys.ts'
import { autumnDay } from '../../kit/plain-outing.ts'
import { openPage, until } from './page.ts'

/** A page of one phone with its own modules, on a disk of its own or on one that an earlier page left. */
async function openBag(disk = new IDBFactory()) {
  const page = await openPage('http://127.0.0.1:9', disk)
  const own = await import('#client/state/player-log.ts')
  const { planStore } = await import('#client/state/plan-store.ts')
  await own.openPlan()
  return { ...page, ...own, plan: () => planStore.getState() }
}

/** What a database of the phone holds in a table. */
const rowsOn = (disk: IDBFactory, name: string, table: 'logs' | 'ops'): Promise<readonly Record<string, unknown>[]> =>
  new Promise((resolve, reject) => {
    const opening = disk.open(name)
    opening.onerror = () => reject(opening.error)
    opening.onsuccess = () => {
      const asking = opening.result.transaction(table).objectStore(table).getAll()
      asking.onsuccess = () => resolve(asking.result)
      asking.onerror = () => reject(asking.error)
    }
  })

afterEach(() => {
  vi.unstubAllGlobals()
})

describe("a player's own log on this phone", () => {
  test('is not there until something is said', async () => {
    const { plan, disk } = await openBag()
    expect(plan()).toMatchObject({
      phase: 'open',
      isBegun: false,
      foot: { phone: 'saved' },
      isShared: false,
      undoable: null,
    })
    expect(plan().plan?.said.size).toBe(0)
    expect(await rowsOn(disk, 'six-threes-player', 'logs')).toEqual([])
  })

  test('keeps one op an act, waiting for no server, and says the same on the next page', async () => {
    const first = await openBag()
    await first.actOnPlan('carry changed', plan => clubPutIn(plan, 'iron-7', 145))
    await first.actOnPlan('lay-up number changed', plan => favouriteChosen(plan, 100))
    expect(first.plan()).toMatchObject({ isBegun: true, plan: { favourite: 100 } })
    const [record, ...others] = await rowsOn(first.disk, 'six-threes-player', 'logs')
    expect(others).toEqual([])
    expect(record).toMatchObject({ era: null, feeds: [], invite: null, invites: [], nextN: 3 })
    const ops = await rowsOn(first.disk, 'six-threes-player', 'ops')
    expect(ops.map(({ n, seq, mark }) => ({ n, seq, mark }))).toEqual([
      { n: 1, seq: null, mark: { kind: 'waiting' } },
      { n: 2, seq: null, mark: { kind: 'waiting' } },
    ])

    const again = await openBag(first.disk)
    expect(again.plan().plan?.favourite).toBe(100)
    expect(again.plan().plan?.said.get('iron-7')).toBe(145)
  })

  test('begins once, also where two acts come before it is there', async () => {
    const page = await openBag()
    await Promise.all([
      page.actOnPlan('carry changed', plan => clubPutIn(plan, 'iron-7', 145)),
      page.actOnPlan('lay-up number changed', plan => favouriteChosen(plan, 100)),
    ])
    expect(await rowsOn(page.disk, 'six-threes-player', 'logs')).toHaveLength(1)
    expect(page.plan().plan).toMatchObject({ favourite: 100 })
    expect(page.plan().plan?.said.get('iron-7')).toBe(145)
  })

  test('takes the last change back, once', async () => {
    const page = await openBag()
    await page.actOnPlan('lay-up number changed', plan => favouriteChosen(plan, 90))
    await page.actOnPlan('lay-up number changed', plan => favouriteChosen(plan, 100))
    await page.undoOnPlan()
    expect(page.plan()).toMatchObject({ undoable: null })
    expect(page.plan().plan?.favourite).toBe(90)
    await page.undoOnPlan()
    expect(page.plan().plan?.favourite).toBe(90)
  })

  test('says so where the storage does not answer, and is asked again', async () => {
    const disk = new IDBFactory()
    const first = await openBag(disk)
    await first.actOnPlan('lay-up number changed', plan => favouriteChosen(plan, 100))
    const failing = new IDBFactory()
    const page = await openPage('http://127.0.0.1:9', failing)
    vi.stubGlobal('indexedDB', {
      open: () => {
        throw new DOMException('refused', 'SecurityError')
      },
    })
    const own = await import('#client/state/player-log.ts')
    const { planStore } = await import('#client/state/plan-store.ts')
    await own.openPlan()
    expect(planStore.getState().phase).toBe('no storage')
    await expect(own.actOnPlan('lay-up number changed', plan => favouriteChosen(plan, 80))).rejects.toThrow()
    vi.stubGlobal('indexedDB', disk)
    await own.retryPlan()
    expect(planStore.getState()).toMatchObject({ phase: 'open' })
    expect(planStore.getState().plan?.favourite).toBe(100)
    expect(page.disk).toBe(failing)
  })

  test('is in no list, no file and no hand-over of an outing', async () => {
    const page = await openBag()
    await page.actOnPlan('carry changed', plan => clubPutIn(plan, 'iron-7', 145))
    expect(await page.actions.listOutings()).toEqual([])
    await page.actions.importFile(JSON.stringify(autumnDay), 'Alder')
    await until(() => page.store.getState().phase === 'open')
    await page.actOnPlan('lay-up number changed', plan => favouriteChosen(plan, 100))
    const texts = [
      page.actions.handOverText(),
      page.actions.exportFile('whole')?.text ?? '',
      page.actions.exportFile('plain')?.text ?? '',
    ]
    for (const text of texts) {
      expect(text).toContain('Autumn Day')
      expect(text).not.toMatch(/iron-7|favourite|carry/)
    }
    const keys = page.store.getState().history.flatMap(({ op }) => op.facts.map(({ key }) => key))
    expect(keys.filter(key => parsePlayerKey(key) !== null)).toEqual([])
    expect(await page.actions.listOutings()).toHaveLength(1)
    expect(await rowsOn(page.disk, 'six-threes', 'logs')).toHaveLength(1)
  })
})
