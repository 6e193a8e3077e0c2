import type { IncomingMessage } from 'node:http'
import { describe, expect, it } from 'vitest'
import { createAddressOf } from '#server/http/address.ts'
import { createOriginCheck } from '#server/http/origin.ts'

const from = (peer: string, forwarded?: string) =>
  ({ headers: { 'x-forwarded-for': forwarded }, socket: { remoteAddress: peer } }) as unknown as IncomingMessage

describe('the address of a request', () => {
  it.each([
    [0, undefined, '10.0.0.1'],
    [0, '1.1.1.1', '10.0.0.1'],
    [1, undefined, '10.0.0.1'],
    [1, '1.1.1.1', '1.1.1.1'],
    [1, '9.9.9.9, 1.1.1.1', '1.1.1.1'],
    [2, '9.9.9.9, 1.1.1.1, 10.0.0.2', '1.1.1.1'],
  ])('past %i proxies with %s is %s', (hops, forwarded, address) => {
    expect(createAddressOf(hops)(from('10.0.0.1', forwarded))).toBe(address)
  })
})

describe('a request’s origin', () => {
  const request = (origin?: string) => ({ headers: { host: 'golf.example:8686', ...(origin ? { origin } : {}) } })

  it.each([
    [undefined, true],
    ['http://golf.example:8686', true],
    ['http://golf.example', false],
    ['https://public.example', true],
    ['http://public.example', false],
    ['https://elsewhere.example', false],
    ['null', false],
  ])('%s is our own: %s', (origin, isOwn) => {
    expect(createOriginCheck('https://public.example')(request(origin))).toBe(isOwn)
  })
})
