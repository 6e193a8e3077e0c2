export {}

declare const self: ServiceWorkerGlobalScope
declare const __BUILD__: string
declare const __FILES__: readonly string[]

const cachePrefix = 'six-threes-'
const cacheName = `${cachePrefix}${__BUILD__}`
const page = '/index.html'
/** Stands in our own page: what a portal of the network shows in its place has none. */
const marker = '<title>Six Threes</title>'

self.addEventListener('install', event => {
  event.waitUntil(keepFiles())
})

self.addEventListener('activate', event => {
  event.waitUntil(dropOldCaches().then(() => self.clients.claim()))
})

self.addEventListener('message', event => {
  if (event.data === 'take over') void self.skipWaiting()
})

self.addEventListener('fetch', event => {
  const { request } = event
  const { origin, pathname } = new URL(request.url)
  if (request.method !== 'GET' || origin !== self.location.origin || isLive(pathname)) return
  if (request.mode === 'navigate') event.respondWith(keptOr(page, request))
  else if (__FILES__.includes(pathname)) event.respondWith(keptOr(pathname, request))
})

const isLive = (pathname: string): boolean =>
  ['/api/', '/socket.io/', '/healthz'].some(start => pathname.startsWith(start))

/** All or nothing: a version with a file missing is never kept. */
async function keepFiles(): Promise<void> {
  const cache = await caches.open(cacheName)
  await Promise.all([...__FILES__].map(async path => cache.put(path, await fetchOwn(path))))
}

async function fetchOwn(path: string): Promise<Response> {
  const response = await fetch(path, { cache: 'no-cache', redirect: 'error' })
  const isHtml = (response.headers.get('Content-Type') ?? '').startsWith('text/html')
  const isOurs = isHtml ? path === page && (await response.clone().text()).includes(marker) : path !== page
  if (!response.ok || !isOurs) throw new Error(`${path} is not our file`)
  return response
}

async function dropOldCaches(): Promise<void> {
  const names = await caches.keys()
  const old = names.filter(name => name.startsWith(cachePrefix) && name !== cacheName)
  await Promise.all(old.map(name => caches.delete(name)))
}

async function keptOr(path: string, request: Request): Promise<Response> {
  const kept = await (await caches.open(cacheName)).match(path)
  return kept ?? fetch(request)
}
