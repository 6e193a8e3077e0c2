import type { Fault } from '#core/values/result.ts'
import { ballsOfPlain, type PlainOuting } from './plain-file.ts'

/** What can be wrong in a plain file whose shape is right. */
export const plainFaults = [
  'id twice',
  'unknown player',
  'unknown ball',
  'unknown tee',
  'unknown group',
  'unknown game',
  'wrong number of holes',
  'no such hole',
  'ball in two groups',
  'no group',
  'scores twice',
  'two scores closed',
  'not in tenths',
  'said twice',
  'other group',
  'not in the game',
  'not between these',
] as const
export type PlainFault = Fault<(typeof plainFaults)[number]>

/** The ids that a file gives. */
export interface Names {
  readonly players: ReadonlySet<string>
  readonly balls: ReadonlySet<string>
  readonly tees: ReadonlySet<string>
  readonly groups: ReadonlySet<string>
  readonly games: ReadonlySet<string>
}

/** What a file's references can name. */
export const namesIn = (file: PlainOuting): Names => ({
  players: idsOf(file.players),
  balls: idsOf(ballsOfPlain(file)),
  tees: idsOf(file.course.tees),
  groups: idsOf(file.groups),
  games: idsOf(file.games),
})

const idsOf = (list: readonly { readonly id: string }[] | undefined): Set<string> =>
  new Set((list ?? []).map(({ id }) => id))

/** Faults at those places of a list where the check fails. */
export const faultsAt = <T>(
  list: readonly T[] | undefined,
  pathOf: (place: number) => string,
  code: PlainFault['code'],
  isWrong: (value: T, place: number, all: readonly T[]) => boolean,
): PlainFault[] =>
  (list ?? []).flatMap((value, place, all) => (isWrong(value, place, all) ? [{ path: pathOf(place), code }] : []))
