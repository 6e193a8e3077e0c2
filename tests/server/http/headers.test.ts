import { describe, expect, it } from 'vitest'
import { headersOf, openLine, type RunningApp, startApp } from '#tests/server/support/app.ts'
import { fact, makePhone } from '#tests/server/support/phone.ts'

const json = { 'content-type': 'application/json' }
const ops = { ops: [] }

/** One answer of every sort that the server gives. */
const questions: readonly (readonly [what: string, path: string, status: number, init: RequestInit])[] = [
  ['the page', '/', 200, { headers: { accept: 'text/html' } }],
  ['a page that no path leads to', '/some/where', 200, { headers: { accept: 'text/html' } }],
  ['a file of the page', '/assets/main-1234.js', 200, {}],
  ['the worker', '/worker.js', 200, {}],
  ['a file that is missing', '/assets/none.js', 404, {}],
  ['how it is', '/healthz', 200, {}],
  ['what it is', '/api/probe', 200, {}],
  ['nothing', '/api/nothing', 404, {}],
  ['an answer', '/api/logs/quillmoor/ops?feed=all&after=0', 200, { headers: headersOf(makePhone('rowan')) }],
  ['the board', '/api/logs/quillmoor/snapshot', 200, { headers: headersOf(makePhone('rowan')) }],
  ['a fault', '/api/logs/quillmoor/ops', 400, {}],
  ['a body that is no JSON', '/api/ask', 400, { method: 'POST', headers: json, body: '{' }],
  ['a body that is too large', '/api/ask', 413, { method: 'POST', headers: json, body: `"${'x'.repeat(1_100_000)}"` }],
  ['another site’s request', '/api/ask', 403, { method: 'POST', headers: { origin: 'https://elsewhere.example' } }],
  ['a method that is not there', '/api/probe', 404, { method: 'DELETE' }],
  ['the sockets’ own refusal', '/socket.io/?EIO=4&transport=polling', 400, {}],
]

const headersAt = async ({ url }: RunningApp, path: string, init?: RequestInit) => {
  const answer = await fetch(url + path, init)
  await answer.arrayBuffer()
  return answer
}

describe('every answer', () => {
  it.each(questions)('lets the browser run and show nothing that is not ours: %s', async (_, path, status, init) => {
    const answer = await headersAt(await startApp(), path, init)
    const { headers } = answer
    expect(answer.status).toBe(status)
    const policy = headers.get('content-security-policy') ?? ''
    for (const rule of ["default-src 'self'", "script-src 'self'", "style-src 'self'", "object-src 'none'"])
      expect(policy.split(';')).toContain(rule)
    for (const rule of ["frame-ancestors 'none'", "base-uri 'none'", "form-action 'self'", "script-src-attr 'none'"])
      expect(policy.split(';')).toContain(rule)
    expect(policy).not.toMatch(/unsafe-|\*|https?:/)
    expect(headers.get('referrer-policy')).toBe('no-referrer')
    expect(headers.get('x-content-type-options')).toBe('nosniff')
    expect(headers.get('x-frame-options')).toBe('DENY')
    const permissions = headers.get('permissions-policy') ?? ''
    expect(permissions).toContain('camera=(self)')
    for (const unused of ['geolocation', 'microphone', 'payment']) expect(permissions).toContain(`${unused}=()`)
    expect(headers.get('strict-transport-security')).toBeNull()
    expect([headers.get('set-cookie'), headers.get('x-powered-by'), headers.get('server')]).toEqual([null, null, null])
    expect(headers.get('access-control-allow-origin')).toBeNull()
  })

  it('asks for https from then on where it is served so, whatever it is', async () => {
    const app = await startApp({ publicUrl: 'https://golf.example' })
    for (const [what, path, , init] of questions) {
      const transport = (await headersAt(app, path, init)).headers.get('strict-transport-security')
      expect([what, transport]).toEqual([what, expect.stringMatching(/^max-age=\d{7,}$/)])
    }
  })
})

describe('a request from', () => {
  const origins: readonly (readonly [from: string, origin: string | undefined, mayWrite: boolean])[] = [
    ['no page at all', undefined, true],
    ['another site', 'https://elsewhere.example', false],
    ['a page without an origin', 'null', false],
    ['another port of ours', 'http://127.0.0.1:1', false],
    ['a name that only begins like ours', 'http://127.0.0.1.elsewhere.example', false],
    ['what is no origin', 'quillmoor', false],
  ]

  it.each(origins)('%s writes by HTTP or not at all', async (_, origin, mayWrite) => {
    const app = await startApp()
    const alder = makePhone('alder')
    const headers = { ...headersOf(alder), ...json, ...(origin === undefined ? {} : { origin }) }
    const body = JSON.stringify({ ops: [alder.op([alder.keyFact('desk'), fact('title', 'Quillmoor')])] })
    for (const path of [
      '/api/logs/quillmoor/exchange',
      '/api/logs/quillmoor/words',
      '/api/ask',
      '/api/wait',
      '/api/x',
    ]) {
      const { status } = await headersAt(app, path, { method: 'POST', headers, body: JSON.stringify(ops) })
      expect([path, status === 403]).toEqual([path, !mayWrite])
    }
    const answer = await headersAt(app, '/api/logs/quillmoor/ops', { method: 'POST', headers, body })
    expect(answer.status).toBe(mayWrite ? 200 : 403)
    const held = await fetch(`${app.url}/api/logs/quillmoor/ops?feed=all&after=0`, { headers: headersOf(alder) })
    expect((await held.json()) as unknown).toMatchObject({ kind: mayWrite ? 'pulled' : 'stranger' })
  })

  it.each([...origins, ['our own page', 'OWN', true] as const])(
    '%s opens a socket or none',
    async (_, origin, mayOpen) => {
      const app = await startApp()
      const headers = origin === undefined ? {} : { origin: origin === 'OWN' ? app.url : origin }
      const { socket } = openLine(app.url, makePhone('alder').hello, headers as Record<string, string>)
      const opened = await new Promise(resolve => {
        socket.once('connect', () => resolve(true))
        socket.once('connect_error', () => resolve(false))
      })
      expect(opened).toBe(mayOpen)
    },
  )

  it('a form of another site finds nothing that it could send without being asked first', async () => {
    const app = await startApp()
    const alder = makePhone('alder')
    const asked = await headersAt(app, '/api/logs/quillmoor/ops', {
      method: 'OPTIONS',
      headers: { origin: 'https://elsewhere.example', 'access-control-request-headers': 'authorization' },
    })
    expect([asked.status, asked.headers.get('access-control-allow-headers')]).toEqual([403, null])
    // As a form sends it: no header of its own, and the secrets in the body, where nobody reads them.
    const form = await headersAt(app, '/api/logs/quillmoor/ops', {
      method: 'POST',
      headers: { 'content-type': 'text/plain', origin: app.url },
      body: JSON.stringify({ ops: [alder.op([alder.keyFact('desk')])], authorization: `Bearer alder:${alder.secret}` }),
    })
    expect(form.status).toBe(400)
  })
})
