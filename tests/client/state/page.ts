import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { vi } from 'vitest'

/** What a page of one phone sees of its browser, and the client's modules loaded for it alone. */
export interface Page {
  readonly actions: Awaited<ReturnType<typeof loadActions>>
  readonly store: typeof import('#client/state/outing-store.ts').outingStore
  readonly disk: IDBFactory
}

/** Opens the client on an address with a disk of its own, or with one that an earlier page left. */
export async function openPage(origin: string, disk = new IDBFactory()): Promise<Page> {
  const document = Object.assign(new EventTarget(), { visibilityState: 'visible' })
  const window = Object.assign(new EventTarget(), { isSecureContext: false })
  vi.stubGlobal('document', document)
  vi.stubGlobal('window', window)
  vi.stubGlobal('location', { origin, pathname: '/' })
  vi.stubGlobal('BroadcastChannel', undefined)
  vi.stubGlobal('navigator', {})
  vi.stubGlobal('indexedDB', disk)
  vi.resetModules()
  const actions = await loadActions()
  const { outingStore } = await import('#client/state/outing-store.ts')
  // The connection to this disk is opened while it is the global one.
  await actions.listOutings()
  return { actions, store: outingStore, disk }
}

/** What a screen can have done, whichever file it is in. */
async function loadActions() {
  const { currentEngine: engineNow } = await import('#client/state/open-outing.ts')
  return {
    ...(await import('#client/state/actions.ts')),
    ...(await import('#client/state/asking-in.ts')),
    ...(await import('#client/state/card-giving.ts')),
    ...(await import('#client/state/codes.ts')),
    ...(await import('#client/state/deleting.ts')),
    ...(await import('#client/state/files.ts')),
    ...(await import('#client/state/handing-over.ts')),
    ...(await import('#client/state/inviting.ts')),
    ...(await import('#client/state/joining.ts')),
    ...(await import('#client/state/letting-in.ts')),
    ...(await import('#client/state/phones.ts')),
    ...(await import('#client/state/starting.ts')),
    /** The page goes away. */
    closeOuting: (await import('#client/state/open-outing.ts')).closeLog,
    holding: () => engineNow().holding(),
  }
}

export const until = (isSo: () => boolean): Promise<void> =>
  vi.waitFor(
    () => {
      if (!isSo()) throw new Error(`not yet: ${isSo}`)
    },
    { timeout: 15_000, interval: 10 },
  )

/** Everything of the open outing is on the server, and the page is in touch with it. */
export const isOnServer = (page: Page) => (): boolean => {
  const { foot } = page.store.getState()
  return foot.waiting === 0 && foot.link === 'live'
}
