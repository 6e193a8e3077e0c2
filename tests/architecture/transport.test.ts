import { describe, expect, it } from 'vitest'
import { filesUnder } from './source-files.ts'

const sources = ['client', 'server', 'shared'].flatMap(filesUnder)

/** The files in which a line says it. */
const saidIn = (pattern: RegExp): string[] => sources.filter(({ text }) => pattern.test(text)).map(({ path }) => path)

// Source: measured failures of the transport's own help (tests/README.md): each of these gives up, forgets or repeats.
describe('the transport is a plain pipe', () => {
  it.each([
    ['messages that may be dropped', /\.volatile\b/],
    ['retries of its own', /\b(retries|ackTimeout)\s*:/],
    ['recovery of its own', /connectionStateRecovery/],
    ['rooms of its own, or rooms that a phone names', /\bsocketsJoin\b|socket\.join\(/],
    ['questions to other nodes', /\b(fetchSockets|serverSideEmit)\b/],
    ['another form of the messages', /\bparser\s*:/],
  ])('%s are not used', (_, pattern) => {
    expect(saidIn(pattern)).toEqual([])
  })

  it('is spoken to in one file at each end', () => {
    expect(saidIn(/from 'socket\.io-client'/)).toEqual(['client/sync/socket-link.ts'])
    expect(saidIn(/\.emit(WithAck)?\(/)).toEqual([
      'client/sync/socket-link.ts',
      'server/app.ts',
      'server/live/socket.ts',
    ])
  })
})

describe('what must not be lost', () => {
  it('lies in no store that writes itself as one piece', () => {
    expect(saidIn(/zustand\/middleware/)).toEqual([])
  })

  it('lies in IndexedDB: the small storage holds choices alone, in one file', () => {
    expect(saidIn(/\b(local|session)Storage\b/)).toEqual(['client/device/remembered.ts'])
    expect(saidIn(/from 'idb'|indexedDB\.open/)).toEqual(['client/sync/idb-connection.ts'])
  })
})

describe('markup', () => {
  it('is never made of text', () => {
    expect(saidIn(/dangerouslySetInnerHTML|\.innerHTML|insertAdjacentHTML|document\.write/)).toEqual([])
  })
})
