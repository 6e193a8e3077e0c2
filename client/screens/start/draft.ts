import { type FormatName, formatNames } from '#core/formats/format-names.ts'
import type { PlainCourse, PlainTee } from '#core/outing/plain-file.ts'
import { type GameDraft, newGameDraft } from '../games/game-draft.ts'
import type { Sides } from '../games/sides.ts'

export const handicapKinds = ['index', 'course-handicap', 'plain-strokes'] as const
export type HandicapKind = (typeof handicapKinds)[number]

export interface HoleDraft {
  readonly par: number
  readonly index: string
}

/** Ratings of the holes to play, as typed. */
export interface TeeDraft {
  readonly id: string
  readonly name: string
  readonly courseRating: string
  readonly slope: string
  readonly par: string
  /** By hole from 1, in `unit`; empty where nobody has typed one. */
  readonly lengths?: readonly string[]
  readonly unit?: 'yards' | 'metres'
  /** The tee as it was taken, with what has no field here: ratings of other holes, its own pars and stroke indexes. */
  readonly kept?: PlainTee
}

export interface PlayerDraft {
  readonly id: string
  readonly name: string
  readonly kind: HandicapKind
  readonly figure: string
  readonly tee: string
}

/** An outing before it starts, as it stands in the fields. */
export interface Draft {
  readonly title: string
  readonly courseName: string
  /** What the course was taken from; empty when it is typed in. */
  readonly courseFrom: string
  readonly length: 9 | 18
  readonly holes: readonly HoleDraft[]
  readonly tees: readonly TeeDraft[]
  /** As the course was taken; it is drawn on a page of its own. */
  readonly sketches?: PlainCourse['sketches']
  readonly players: readonly PlayerDraft[]
  /** How many play one ball: 1 where each has their own. */
  readonly ballPlayers: number
  /** Who shares a ball with whom, as chosen; null for the players as they are listed. */
  readonly partnersChosen: Sides | null
  readonly games: Readonly<Record<FormatName, GameDraft>>
  readonly startHole: number
  readonly isUnderRules: boolean
  /** The player who has this phone. */
  readonly phoneOf: string
}

export const emptyPlayer = (id: string): PlayerDraft => ({ id, name: '', kind: 'index', figure: '', tee: '' })

export const emptyDraft: Draft = {
  title: '',
  courseName: '',
  courseFrom: '',
  length: 18,
  holes: Array.from({ length: 18 }, () => ({ par: 4, index: '' })),
  tees: [],
  players: [emptyPlayer('p1'), emptyPlayer('p2')],
  ballPlayers: 1,
  partnersChosen: null,
  games: Object.fromEntries(
    formatNames.map(format => [format, newGameDraft(format, format === 'stableford')]),
  ) as Record<FormatName, GameDraft>,
  startHole: 1,
  isUnderRules: true,
  phoneOf: 'p1',
}

/** The first id of the kind that the list does not use: "p3". */
export function freeId(letter: string, list: readonly { readonly id: string }[]): string {
  let n = 1
  while (list.some(({ id }) => id === `${letter}${n}`)) n += 1
  return `${letter}${n}`
}

/** The holes to play of the course as typed. */
export const holesInPlay = ({ holes, length }: Draft): readonly HoleDraft[] => holes.slice(0, length)

/** Stroke indexes that stand at more than one hole, with those holes. */
export function indexesTwice(draft: Draft): readonly { readonly index: string; readonly holes: readonly number[] }[] {
  const holes = new Map<string, number[]>()
  for (const [place, { index }] of holesInPlay(draft).entries()) {
    if (index !== '') holes.set(index, [...(holes.get(index) ?? []), place + 1])
  }
  return [...holes].filter(([, at]) => at.length > 1).map(([index, at]) => ({ index, holes: at }))
}

/** The gaps of the stroke indexes, once every hole has one and two holes have the same. */
export function indexesUnused(draft: Draft): readonly number[] {
  const holes = holesInPlay(draft)
  if (indexesTwice(draft).length === 0 || holes.some(({ index }) => index === '')) return []
  const used = new Set(holes.map(({ index }) => Number(index)))
  return Array.from({ length: draft.length }, (_, place) => place + 1).filter(index => !used.has(index))
}

/** The empty stroke indexes filled with the numbers that are not used, in order. */
export function withIndexesFilled(draft: Draft): Draft {
  const used = new Set(holesInPlay(draft).map(({ index }) => index))
  const free = Array.from({ length: draft.length }, (_, place) => String(place + 1)).filter(each => !used.has(each))
  const holes = draft.holes.map((hole, place) =>
    hole.index === '' && place < draft.length ? { ...hole, index: free.shift() ?? '' } : hole,
  )
  return { ...draft, holes }
}
