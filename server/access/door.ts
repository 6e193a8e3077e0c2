import { randomBytes, randomInt } from 'node:crypto'
import type { GroupId, InviteId, LogId } from '#core/values/ids.ts'
import type { Asker } from '#shared/messages/askers.ts'
import type { Spoken } from '#shared/messages/words.ts'
import { hashOf } from './shown.ts'
import { words } from './words.ts'

/** For so long three words open requests. */
export const wordsMs = 600_000
/** For so long a request waits for a tap, and then its answer for the phone that asked. */
export const askMs = 300_000
/** Once heard the answer stays for so long, for a phone that lost it on the way. */
const heardMs = 30_000
/** Words with less time than this are not said to anybody new. */
const wordsWorthMs = 120_000

const mostWords = 50_000
const mostAsks = 20_000
const mostAsksOfPlace = 16

/** Where somebody is let in: one group of an outing, or its desk where all are desks. */
export interface Place {
  readonly log: LogId
  readonly group: GroupId | null
}

export interface Invitation {
  readonly id: InviteId
  readonly secret: string
}

/** What has become of a request. */
export type AskState =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'let in'; readonly log: LogId; readonly invite: Invitation }
  | { readonly kind: 'not now' }
  | { readonly kind: 'gone' }

/** What the server makes up for it; a test brings its own. */
export interface DoorInventions {
  readonly threeWords: () => readonly string[]
  readonly id: () => string
  readonly ticket: () => string
}

/**
 * The requests to be let in, and the words that open them. All of it in memory: it grants nothing, keeps nothing and is
 * gone when the server ends.
 */
export interface Door {
  /** The words that stand there with time enough, else new ones; null when too many stand on this server. */
  allot(place: Place): Spoken | null
  spoken(log: LogId): readonly Spoken[]
  /** Where these words lead, however they are written; null for wrong words and for late ones. */
  find(text: string): Place | null
  /** Opens a request; null when too many wait there. */
  open(place: Place, name: string): { readonly ticket: string; readonly leftMs: number } | null
  askers(log: LogId): readonly Asker[]
  placeOf(log: LogId, asker: string): Place | null
  /** Answers a request, once; null for not now. False when it is answered or gone. */
  answer(log: LogId, asker: string, invitation: Invitation | null): boolean
  stateOf(ticket: string): AskState
}

interface Standing extends Place {
  readonly words: readonly string[]
  readonly until: number
}

interface Request extends Place {
  readonly asker: string
  readonly name: string
  until: number
  state: AskState
}

export const randomInventions: DoorInventions = {
  threeWords: () => Array.from({ length: 3 }, () => words[randomInt(words.length)] ?? ''),
  id: () => randomBytes(8).toString('hex'),
  ticket: () => randomBytes(18).toString('base64url'),
}

/** The letters alone, so that case, spaces, marks and accents make no difference. */
export const lettersOf = (text: string): string =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z]/g, '')

export function createDoor(now: () => number, invent: DoorInventions = randomInventions): Door {
  const standing = new Map<string, Standing>()
  const requests = new Map<string, Request>()

  /** Always first, so that late words take the very way of wrong ones. */
  const sweep = (): void => {
    const at = now()
    for (const [letters, { until }] of standing) if (until <= at) standing.delete(letters)
    for (const [ticket, { until }] of requests) if (until <= at) requests.delete(ticket)
  }
  const spokenOf = ({ group, words: said, until }: Standing): Spoken => ({
    group,
    words: [...said],
    leftMs: until - now(),
  })
  const waitingIn = (log: LogId): Request[] =>
    [...requests.values()].filter(request => request.log === log && request.state.kind === 'waiting')
  const waiting = (log: LogId, asker: string): Request | null =>
    waitingIn(log).find(request => request.asker === asker) ?? null

  return {
    allot(place) {
      sweep()
      const known = [...standing.values()].find(one => isSamePlace(one, place) && one.until - now() >= wordsWorthMs)
      if (known) return spokenOf(known)
      if (standing.size >= mostWords) return null
      let said = invent.threeWords()
      while (standing.has(said.join(''))) said = invent.threeWords()
      const made: Standing = { ...place, words: said, until: now() + wordsMs }
      standing.set(said.join(''), made)
      return spokenOf(made)
    },
    spoken(log) {
      sweep()
      return [...standing.values()].filter(one => one.log === log).map(spokenOf)
    },
    find(text) {
      sweep()
      const found = standing.get(lettersOf(text))
      return found ? { log: found.log, group: found.group } : null
    },
    open(place, name) {
      sweep()
      const there = waitingIn(place.log).filter(request => isSamePlace(request, place))
      if (requests.size >= mostAsks || there.length >= mostAsksOfPlace) return null
      const ticket = invent.ticket()
      const state: AskState = { kind: 'waiting' }
      requests.set(hashOf(ticket), { ...place, asker: invent.id(), name, until: now() + askMs, state })
      return { ticket, leftMs: askMs }
    },
    askers(log) {
      sweep()
      return waitingIn(log).map(({ asker, name, group }) => ({ asker, name, group }))
    },
    placeOf(log, asker) {
      sweep()
      const found = waiting(log, asker)
      return found && { log: found.log, group: found.group }
    },
    answer(log, asker, invite) {
      sweep()
      const found = waiting(log, asker)
      if (!found) return false
      found.state = invite ? { kind: 'let in', log, invite } : { kind: 'not now' }
      found.until = now() + askMs
      return true
    },
    stateOf(ticket) {
      sweep()
      const found = requests.get(hashOf(ticket))
      if (!found) return { kind: 'gone' }
      if (found.state.kind !== 'waiting') found.until = Math.min(found.until, now() + heardMs)
      return found.state
    },
  }
}

const isSamePlace = (a: Place, b: Place): boolean => a.log === b.log && a.group === b.group
