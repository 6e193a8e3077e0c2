import { afterEach, describe, expect, test, vi } from 'vitest'
import { keepScreenOn } from '#client/device/screen-wake.ts'

/** A page with a browser that grants or refuses, and what it was asked. */
function openPage({ grants = true } = {}) {
  const page = Object.assign(new EventTarget(), { visibilityState: 'visible' })
  const locks: (EventTarget & { release: () => Promise<void> })[] = []
  const request = vi.fn(async () => {
    if (!grants) throw new DOMException('no', 'NotAllowedError')
    const lock = Object.assign(new EventTarget(), {
      release: async () => void lock.dispatchEvent(new Event('release')),
    })
    locks.push(lock)
    return lock
  })
  vi.stubGlobal('document', page)
  vi.stubGlobal('navigator', { wakeLock: { request } })
  const look = (visibilityState: string): void => {
    page.visibilityState = visibilityState
    page.dispatchEvent(new Event('visibilitychange'))
  }
  return { locks, request, look }
}

const settled = () => new Promise(resolve => setTimeout(resolve))

describe('a screen that is kept on', () => {
  afterEach(() => vi.unstubAllGlobals())

  test('is asked for once, and given back at the end', async () => {
    const { locks, request } = openPage()
    const told: boolean[] = []
    const end = keepScreenOn(isOn => told.push(isOn))
    await settled()
    expect(request).toHaveBeenCalledExactlyOnceWith('screen')
    const released = vi.spyOn(locks[0] as never as { release: () => Promise<void> }, 'release')
    end()
    expect(released).toHaveBeenCalledOnce()
    expect(told).toEqual([true])
  })

  test('is asked for again when the page is looked at again, and not while it is out of sight', async () => {
    const { locks, request, look } = openPage()
    const told: boolean[] = []
    const end = keepScreenOn(isOn => told.push(isOn))
    await settled()
    look('hidden')
    // The browser takes it back by itself.
    locks[0]?.dispatchEvent(new Event('release'))
    await settled()
    expect(request).toHaveBeenCalledTimes(1)
    look('visible')
    await settled()
    expect(request).toHaveBeenCalledTimes(2)
    expect(told).toEqual([true, false, true])
    end()
    look('visible')
    await settled()
    expect(request).toHaveBeenCalledTimes(2)
  })

  test('says so where the phone refuses', async () => {
    openPage({ grants: false })
    const told: boolean[] = []
    keepScreenOn(isOn => told.push(isOn))()
    keepScreenOn(isOn => told.push(isOn))
    await settled()
    expect(told).toEqual([false])
  })
})
