import { describe, expect, it, vi } from 'vitest'
import { createGroupCommit } from '#server/store/group-commit.ts'
import { troubleOf } from '#server/store/trouble.ts'

/** As SQLite's driver throws it; 13 is a full disk, 522 a short read of the disk, 5 a busy database. */
const sqliteError = (errcode: number) => Object.assign(new Error('sqlite'), { errcode })

describe('group commit', () => {
  it('commits what comes in one turn of the loop together, and answers in order', async () => {
    const commit = vi.fn((items: readonly number[]) => items.map(item => item * 10))
    const { add } = createGroupCommit<number, number>({ commit, failed: () => -1 })
    const answered: number[] = []
    await Promise.all([1, 2, 3].map(item => add(item).then(result => answered.push(result))))
    expect(await add(4)).toBe(40)
    expect(answered).toEqual([10, 20, 30])
    expect(commit.mock.calls).toEqual([[[1, 2, 3]], [[4]]])
  })

  it('splits what would hold up the loop', async () => {
    const commit = vi.fn((items: readonly number[]) => items)
    const { add } = createGroupCommit<number, number>({ commit, failed: () => -1 })
    await Promise.all(Array.from({ length: 2_500 }, (_, item) => add(item)))
    expect(commit.mock.calls.map(([items]) => items.length)).toEqual([1_000, 1_000, 500])
  })

  it.each([5, 13, 522])('does not try one by one what code %i would fail alike', async errcode => {
    const commit = vi.fn(() => {
      throw sqliteError(errcode)
    })
    const { add } = createGroupCommit<number, string>({ commit, failed: troubleOf })
    const reason = errcode === 5 ? 'database' : 'disk'
    expect(await Promise.all([add(1), add(2)])).toEqual([reason, reason])
    expect(commit).toHaveBeenCalledOnce()
  })

  it('stores what it can when the disk has room again', async () => {
    let isFull = true
    const commit = (items: readonly number[]) => {
      if (isFull) throw sqliteError(13)
      return items.map(String)
    }
    const { add } = createGroupCommit<number, string>({ commit, failed: troubleOf })
    expect(await add(1)).toBe('disk')
    isFull = false
    expect(await add(1)).toBe('1')
  })

  it('commits what waits at once when asked', async () => {
    const commit = vi.fn((items: readonly number[]) => items)
    const { add, flush } = createGroupCommit<number, number>({ commit, failed: () => -1 })
    const waiting = add(1)
    flush()
    expect(commit).toHaveBeenCalledOnce()
    expect(await waiting).toBe(1)
  })
})
