import { expect, it } from 'vitest'
import { pageAddress } from '#client/state/page-address.ts'

const at = (url: string): Location => new URL(url) as unknown as Location
const answering = (body: unknown) => (() => Promise.resolve(Response.json(body))) as typeof fetch
const silent = (() => Promise.reject(new Error('no network'))) as typeof fetch

it('gives the address that other phones reach where the page is open on the machine itself', async () => {
  const get = answering({ outsideUrl: 'http://192.168.1.20:8686', product: 'six-threes' })
  expect(await pageAddress(get, at('http://localhost:8686/'))).toBe('http://192.168.1.20:8686/')
  expect(await pageAddress(get, at('http://127.0.0.1:8686/'))).toBe('http://192.168.1.20:8686/')
})

it('gives the page its own address everywhere else, and where the server does not say', async () => {
  expect(await pageAddress(silent, at('https://golf.example.org/'))).toBe('https://golf.example.org/')
  expect(await pageAddress(silent, at('http://localhost:8686/'))).toBe('http://localhost:8686/')
  expect(await pageAddress(answering({ outsideUrl: null }), at('http://localhost:8686/'))).toBe(
    'http://localhost:8686/',
  )
  expect(await pageAddress(answering('<html>'), at('http://localhost:8686/'))).toBe('http://localhost:8686/')
})
