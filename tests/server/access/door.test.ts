import { describe, expect, it } from 'vitest'
import type { GroupId, InviteId, LogId } from '#core/values/ids.ts'
import { askMs, createDoor, lettersOf, wordsMs } from '#server/access/door.ts'
import { words } from '#server/access/words.ts'

const first = { log: 'quillmoor' as LogId, group: 'a' as GroupId }
const second = { ...first, group: 'b' as GroupId }
const invitation = { id: 'd' as InviteId, secret: 's'.repeat(22) }

/** A door whose words, names and tickets are known beforehand. */
function makeDoor(said: readonly string[] = ['meadow lantern river', 'cedar harbor violin', 'pencil garden copper']) {
  let now = 1_000_000
  let drawn = 0
  let made = 0
  const door = createDoor(() => now, {
    threeWords: () => (said[drawn++ % said.length] ?? '').split(' '),
    id: () => `asker-${++made}`,
    ticket: () => `ticket-${made}`.padEnd(22, '-'),
  })
  const pass = (ms: number) => {
    now += ms
  }
  return { door, pass }
}

const opened = (door: ReturnType<typeof makeDoor>['door'], name = 'Rowan') => {
  const request = door.open(first, name)
  if (request === null) throw new Error('not opened')
  return request
}

describe('the words', () => {
  it('are 1,024, each once and of plain letters', () => {
    expect(words).toHaveLength(1_024)
    expect(new Set(words).size).toBe(1_024)
    expect(words.filter(word => !/^[a-z]{3,7}$/.test(word))).toEqual([])
  })

  it('differ by more than one letter, so that none is heard for another', () => {
    const without = (word: string) => [...word].map((_, at) => `${word.slice(0, at)}_${word.slice(at + 1)}`)
    const shapes = new Map<string, string>()
    const near: string[] = []
    for (const word of words) {
      for (const shape of without(word)) {
        const other = shapes.get(shape)
        if (other !== undefined) near.push(`${other} ${word}`)
        shapes.set(shape, word)
      }
      for (let at = 0; at < word.length; at++) {
        const shorter = word.slice(0, at) + word.slice(at + 1)
        if (words.includes(shorter)) near.push(`${shorter} ${word}`)
      }
    }
    expect(near).toEqual([])
  })

  it.each([
    'meadow lantern river',
    'Meadow, Lantern – RIVER!',
    'meadowlanternriver',
    ' m\u00e9adow\tl\u00e4ntern  r\u00edver ',
  ])('lead to the place however they are written: %j', text => {
    const { door } = makeDoor()
    door.allot(first)
    expect(door.find(text)).toEqual(first)
  })

  it('are the same for whoever asks for them again, until little of their time is left', () => {
    const { door, pass } = makeDoor()
    const said = door.allot(first)
    expect(said).toEqual({ group: 'a', words: ['meadow', 'lantern', 'river'], leftMs: wordsMs })
    pass(60_000)
    expect(door.allot(first)).toEqual({ ...said, leftMs: wordsMs - 60_000 })
    expect(door.allot(second)?.words).toEqual(['cedar', 'harbor', 'violin'])
    pass(wordsMs - 61_000)
    expect(door.allot(first)?.words).toEqual(['pencil', 'garden', 'copper'])
    expect(door.find('meadow lantern river')).toEqual(first)
    expect(door.spoken(first.log)).toHaveLength(3)
  })

  it('that another place has are not said twice, even where they run together alike', () => {
    const { door } = makeDoor(['sun day light', 'sunday li ght', 'cedar harbor violin'])
    door.allot(first)
    expect(door.allot(second)?.words).toEqual(['cedar', 'harbor', 'violin'])
  })

  it('lead nowhere after ten minutes', () => {
    const { door, pass } = makeDoor()
    door.allot(first)
    pass(wordsMs - 1)
    expect(door.find('meadow lantern river')).toEqual(first)
    pass(1)
    expect(door.find('meadow lantern river')).toBeNull()
    expect(door.spoken(first.log)).toEqual([])
  })

  it('of nothing but marks are no words', () => {
    const { door } = makeDoor()
    door.allot(first)
    expect([lettersOf('…!'), door.find('…!'), door.find('')]).toEqual(['', null, null])
  })
})

describe('a request', () => {
  it('waits, is let in once, and tells its own phone alone', () => {
    const { door } = makeDoor()
    const { ticket, leftMs } = opened(door)
    expect(leftMs).toBe(askMs)
    expect(door.askers(first.log)).toEqual([{ asker: 'asker-1', name: 'Rowan', group: 'a' }])
    expect(door.placeOf(first.log, 'asker-1')).toEqual(first)
    expect(door.placeOf('other' as LogId, 'asker-1')).toBeNull()
    expect(door.stateOf(ticket)).toEqual({ kind: 'waiting' })
    expect(door.answer(first.log, 'asker-1', invitation)).toBe(true)
    expect(door.answer(first.log, 'asker-1', null)).toBe(false)
    expect(door.askers(first.log)).toEqual([])
    expect(door.stateOf(ticket)).toEqual({ kind: 'let in', log: 'quillmoor', invite: invitation })
    expect(door.stateOf('another-ticket--------')).toEqual({ kind: 'gone' })
  })

  it('is told again for half a minute, for an answer that was lost on the way, and then forgotten', () => {
    const { door, pass } = makeDoor()
    const { ticket } = opened(door)
    door.answer(first.log, 'asker-1', invitation)
    pass(askMs - 1)
    expect(door.stateOf(ticket).kind).toBe('let in')
    const other = opened(door)
    door.answer(first.log, 'asker-2', invitation)
    expect(door.stateOf(other.ticket).kind).toBe('let in')
    pass(29_999)
    expect(door.stateOf(other.ticket).kind).toBe('let in')
    pass(1)
    expect(door.stateOf(other.ticket)).toEqual({ kind: 'gone' })
  })

  it('is told not now', () => {
    const { door } = makeDoor()
    const { ticket } = opened(door)
    door.answer(first.log, 'asker-1', null)
    expect(door.stateOf(ticket)).toEqual({ kind: 'not now' })
  })

  it('is gone when nobody taps in time', () => {
    const { door, pass } = makeDoor()
    const { ticket } = opened(door)
    pass(askMs)
    expect(door.stateOf(ticket)).toEqual({ kind: 'gone' })
    expect(door.askers(first.log)).toEqual([])
    expect(door.answer(first.log, 'asker-1', invitation)).toBe(false)
  })

  it('finds no room where sixteen wait already', () => {
    const { door } = makeDoor()
    for (let n = 0; n < 16; n++) opened(door, `Rowan ${n}`)
    expect(door.open(first, 'Birch')).toBeNull()
    expect(door.open(second, 'Birch')).not.toBeNull()
  })
})
