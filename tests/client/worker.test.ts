import { fileURLToPath } from 'node:url'
import { build, type Rollup } from 'vite'
import { beforeAll, beforeEach, expect, test } from 'vitest'

const origin = 'https://scores.example'
const ownPage = '<!doctype html><html><head><title>Six Threes</title></head></html>'
const portalPage = '<html><title>Club wifi</title></html>'

type Handler = (event: Record<string, unknown>) => void

const code = new Map<string, string>()
const caches = new Map<string, Map<string, Response>>()
let site: Map<string, { text: string; type: string }>
let isOnline = true
let skipped = 0

beforeAll(async () => {
  for (const version of ['one', 'two']) code.set(version, await buildWorker(version))
})

beforeEach(() => {
  caches.clear()
  isOnline = true
  skipped = 0
  site = new Map([
    ['/index.html', { text: ownPage, type: 'text/html; charset=utf-8' }],
    ['/assets/main-1.js', { text: 'main', type: 'text/javascript' }],
  ])
})

async function buildWorker(version: string): Promise<string> {
  const built = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'silent',
    define: {
      __BUILD__: JSON.stringify(version),
      __FILES__: JSON.stringify(['/assets/main-1.js', '/index.html']),
    },
    build: {
      write: false,
      lib: {
        entry: fileURLToPath(new URL('../../client/worker.ts', import.meta.url)),
        formats: ['iife'],
        name: 'worker',
        fileName: () => 'worker.js',
      },
    },
  })
  const [{ output }] = built as [Rollup.RollupOutput]
  return output[0].code
}

const cacheStorage = {
  open: async (name: string) => {
    const cache = caches.get(name) ?? new Map<string, Response>()
    caches.set(name, cache)
    return {
      put: async (path: string, response: Response) => void cache.set(path, response),
      match: async (path: string) => cache.get(path)?.clone(),
    }
  },
  keys: async () => [...caches.keys()],
  delete: async (name: string) => caches.delete(name),
}

const fetchSite = async (input: string | { readonly url: string }): Promise<Response> => {
  const path = typeof input === 'string' ? input : new URL(input.url).pathname
  const file = site.get(path)
  if (!isOnline) throw new TypeError('no network')
  return file ? new Response(file.text, { headers: { 'Content-Type': file.type } }) : new Response('', { status: 404 })
}

/** A worker of one build in a browser of ours. */
function startWorker(version: string) {
  const handlers = new Map<string, Handler>()
  const self = {
    location: { origin },
    clients: { claim: async () => undefined },
    skipWaiting: async () => void skipped++,
    addEventListener: (name: string, handler: Handler) => handlers.set(name, handler),
  }
  new Function('self', 'caches', 'fetch', code.get(version) ?? '')(self, cacheStorage, fetchSite)
  const fire = async (name: string): Promise<void> => {
    let work: Promise<unknown> = Promise.resolve()
    handlers.get(name)?.({ waitUntil: (waited: Promise<unknown>) => (work = waited) })
    await work
  }
  const ask = async (path: string, { mode = 'cors', method = 'GET', from = origin } = {}): Promise<string | null> => {
    let answer: Promise<Response> | null = null
    const request = { url: `${from}${path}`, mode, method }
    handlers.get('fetch')?.({ request, respondWith: (given: Promise<Response>) => (answer = given) })
    return answer === null ? null : (await (answer as Promise<Response>)).text()
  }
  return { install: () => fire('install'), activate: () => fire('activate'), ask, handlers }
}

test('every address of the page opens with no signal', async () => {
  const worker = startWorker('one')
  await worker.install()
  isOnline = false
  expect(await worker.ask('/', { mode: 'navigate' })).toBe(ownPage)
  expect(await worker.ask('/somewhere/deep', { mode: 'navigate' })).toBe(ownPage)
  expect(await worker.ask('/assets/main-1.js')).toBe('main')
})

test('what is live, posted, missing or elsewhere is never answered from the phone', async () => {
  const worker = startWorker('one')
  await worker.install()
  expect(await worker.ask('/api/probe')).toBeNull()
  expect(await worker.ask('/api/probe', { mode: 'navigate' })).toBeNull()
  expect(await worker.ask('/socket.io/?EIO=4')).toBeNull()
  expect(await worker.ask('/assets/main-1.js', { method: 'POST' })).toBeNull()
  expect(await worker.ask('/assets/main-2.js')).toBeNull()
  expect(await worker.ask('/assets/main-1.js', { from: 'https://elsewhere.example' })).toBeNull()
})

test.each([
  ['/index.html', { text: portalPage, type: 'text/html' }],
  ['/assets/main-1.js', { text: portalPage, type: 'text/html' }],
  ['/assets/main-1.js', null],
])('a portal or a gap in place of %s keeps nothing', async (path, file) => {
  if (file) site.set(path, file)
  else site.delete(path)
  await expect(startWorker('one').install()).rejects.toThrow('is not our file')
})

test('a new version waits, takes over when told, and then drops what the old one kept', async () => {
  const one = startWorker('one')
  await one.install()
  await one.activate()
  const two = startWorker('two')
  await two.install()
  expect(skipped).toBe(0)
  expect([...caches.keys()]).toEqual(['six-threes-one', 'six-threes-two'])
  two.handlers.get('message')?.({ data: 'something else' })
  expect(skipped).toBe(0)
  two.handlers.get('message')?.({ data: 'take over' })
  expect(skipped).toBe(1)
  caches.set('of-another-app', new Map())
  await two.activate()
  expect([...caches.keys()]).toEqual(['six-threes-two', 'of-another-app'])
})
