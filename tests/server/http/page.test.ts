import { describe, expect, it } from 'vitest'
import { startApp } from '#tests/server/support/app.ts'

const html = { accept: 'text/html' }

describe('the page', () => {
  it('is the same for every path that names no file', async () => {
    const { url } = await startApp()
    for (const path of ['/', '/join', '/some/where']) {
      const answer = await fetch(url + path, { headers: html })
      expect([answer.status, answer.headers.get('cache-control')]).toEqual([200, 'no-cache'])
      expect(await answer.text()).toContain('Six Threes')
    }
  })

  it('keeps files with a hash in their name for good, and asks for the others again', async () => {
    const { url } = await startApp()
    const cacheOf = async (path: string) => (await fetch(url + path)).headers.get('cache-control')
    expect(await cacheOf('/assets/main-1234.js')).toBe('public, max-age=31536000, immutable')
    expect(await cacheOf('/worker.js')).toBe('no-cache')
    expect(await cacheOf('/index.html')).toBe('no-cache')
  })

  it('has no page in place of a missing file', async () => {
    const { url } = await startApp()
    for (const path of ['/assets/main-0000.js', '/nothing.png', '/assets/../../secret.html']) {
      expect((await fetch(url + path, { headers: html })).status).toBe(404)
    }
    expect((await fetch(`${url}/some/where`, { headers: { accept: 'application/json' } })).status).toBe(404)
  })

  it('may run nothing but its own files, and talk to nobody but its own server', async () => {
    const { url, port } = await startApp()
    const { headers } = await fetch(`${url}/`, { headers: html })
    const policy = headers.get('content-security-policy') ?? ''
    expect(policy).toContain("script-src 'self';")
    expect(policy).toContain("style-src 'self';")
    expect(policy).toContain(`connect-src 'self' ws://127.0.0.1:${port} wss://127.0.0.1:${port};`)
    expect(policy).not.toMatch(/unsafe-|upgrade-insecure-requests|\*/)
    expect(headers.get('referrer-policy')).toBe('no-referrer')
    expect(headers.get('x-content-type-options')).toBe('nosniff')
    expect(headers.get('strict-transport-security')).toBeNull()
    expect(headers.get('x-powered-by')).toBeNull()
  })

  it('is kept to https where it is served so', async () => {
    const { url } = await startApp({ publicUrl: 'https://golf.example' })
    expect((await fetch(`${url}/`)).headers.get('strict-transport-security')).toContain('max-age=')
  })
})
