import { describe, expect, it } from 'vitest'
import { createFailureLog } from '#server/watch/failure-log.ts'
import { makeLog } from '#tests/server/support/watch.ts'

describe('the log of failures', () => {
  it('has the same failure once a minute, with how often it came, and counts them all', () => {
    let steady = 0
    const { lines, logger } = makeLog()
    const log = createFailureLog(
      logger,
      () => steady,
      () => false,
    )
    for (let again = 0; again < 500; again++) log.failed(new Error('database or disk is full'))
    log.failed('other')
    expect(lines.map(({ level }) => level)).toEqual(['error', 'error'])
    steady += 60_000
    log.failed(new Error('database or disk is full'))
    expect(lines.at(-1)?.fields).toMatchObject({ again: 499 })
    expect(log.count()).toBe(502)
  })

  it('keeps no more kinds than it needs', () => {
    const { lines, logger } = makeLog()
    const log = createFailureLog(
      logger,
      () => 0,
      () => false,
    )
    for (let kind = 0; kind < 250; kind++) log.failed(new Error(`kind ${kind}`))
    expect(lines).toHaveLength(250)
  })

  it('is no alarm while the server ends', () => {
    const { lines, logger } = makeLog()
    createFailureLog(
      logger,
      () => 0,
      () => true,
    ).failed(new Error('closed'))
    expect(lines).toMatchObject([{ level: 'info' }])
  })
})
