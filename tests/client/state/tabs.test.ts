import { afterEach, expect, test, vi } from 'vitest'
import { openTabs } from '#client/state/tabs.ts'
import { quillmoor } from '../sync/make-held.ts'

/** Locks as browsers have them, as far as one page holds a name, others wait for it in line, and it may be stolen. */
function createFakeLocks() {
  const held = new Map<string, (why: Error) => void>()
  const line: (() => void)[] = []
  return {
    request: (name: string, options: LockOptions, hold: () => Promise<void>): Promise<void> =>
      new Promise((resolve, reject) => {
        const have = (): void => {
          held.set(name, reject)
          void hold().then(() => {
            if (held.get(name) === reject) held.delete(name)
            resolve()
            line.shift()?.()
          })
        }
        if (options.steal) held.get(name)?.(new DOMException('stolen', 'AbortError'))
        if (options.steal || !held.has(name)) return have()
        line.push(have)
        options.signal?.addEventListener('abort', () => void line.splice(line.indexOf(have), 1))
      }),
  }
}

afterEach(() => {
  vi.unstubAllGlobals()
})

const openPage = (name: string, log: string[]) =>
  openTabs(quillmoor, {
    wrote: () => log.push(`${name} hears`),
    leads: isLeading => log.push(`${name} ${isLeading ? 'leads' : 'follows'}`),
  })

test('one page talks to the server: the one that is looked at', async () => {
  vi.stubGlobal('navigator', { locks: createFakeLocks() })
  const log: string[] = []
  const first = openPage('first', log)
  const second = openPage('second', log)
  await vi.waitFor(() => expect(log).toEqual(['first leads', 'second leads', 'first follows']))
  second.lead()
  first.lead()
  await vi.waitFor(() => expect(log.slice(3)).toEqual(['first leads', 'second follows']))
  first.close()
  second.close()
})

test('a page that another took over from leads again when that one is closed', async () => {
  vi.stubGlobal('navigator', { locks: createFakeLocks() })
  const log: string[] = []
  const first = openPage('first', log)
  const second = openPage('second', log)
  await vi.waitFor(() => expect(log.at(-1)).toBe('first follows'))
  second.close()
  await vi.waitFor(() => expect(log.slice(3)).toEqual(['first leads']))
  first.close()
})

test('without locks every page talks to the server', () => {
  vi.stubGlobal('navigator', {})
  const log: string[] = []
  for (const name of ['first', 'second']) openPage(name, log).close()
  expect(log).toEqual(['first leads', 'second leads'])
})

test('the other pages of the phone hear that something was written', async () => {
  vi.stubGlobal('navigator', {})
  const log: string[] = []
  const first = openPage('first', log)
  const second = openPage('second', log)
  first.tellWrote()
  await vi.waitFor(() => expect(log.slice(2)).toEqual(['second hears']))
  first.close()
  second.close()
})

test('while the disk fails one page alone may write, until what it holds is saved or it is closed', async () => {
  const held = new Set<string>()
  const request = async (
    name: string,
    options: { steal?: true; ifAvailable?: true },
    hold: (lock: unknown) => unknown,
  ) => {
    if (options.steal) return new Promise(() => void hold(null))
    if (held.has(name)) return hold(null)
    held.add(name)
    await hold({ name })
    held.delete(name)
    return undefined
  }
  vi.stubGlobal('navigator', { locks: { request } })
  const [first, second] = [openPage('first', []), openPage('second', [])]
  expect([await first.alone.take(), await second.alone.take(), await first.alone.take()]).toEqual([true, false, true])
  first.alone.give()
  await vi.waitFor(async () => expect(await second.alone.take()).toBe(true))
  second.close()
  await vi.waitFor(async () => expect(await first.alone.take()).toBe(true))
  first.close()
})
