import { records, type ScoreRecord } from '#core/card/card.ts'
import { isId } from '#core/values/ids.ts'
import type { FactKind, KeyParts } from './facts.ts'

/**
 * The keys of an outing, one row a kind; a word after a colon is an id or a number. A key says who writes it:
 * under `g/:group/` that group's phones and the desk, anything else the desk alone.
 */
export const keyPatterns: Readonly<Record<FactKind, readonly string[]>> = {
  title: ['title'],
  day: ['day'],
  length: ['length'],
  rules: ['rules'],
  course: ['course'],
  hole: ['hole/:hole'],
  tee: ['tee/:tee'],
  green: ['green/:hole'],
  shape: ['shape/:hole/:shape'],
  player: ['player/:player'],
  handicap: ['handicap/:player'],
  playerTee: ['player-tee/:player'],
  ball: ['ball/:ball'],
  place: ['place/:ball'],
  group: ['group/:group'],
  order: ['g/:group/order'],
  score: ['g/:group/score/:ball/:hole/:lap/:record', 'score/:ball/:hole/:lap/:record'],
  main: ['main'],
  gameFormat: ['game/:game/format', 'g/:group/game/:game/format'],
  gameSides: ['game/:game/sides', 'g/:group/game/:game/sides'],
  gameHoles: ['game/:game/holes', 'g/:group/game/:game/holes'],
  gameAllowance: ['game/:game/allowance', 'g/:group/game/:game/allowance'],
  gameRounding: ['game/:game/rounding', 'g/:group/game/:game/rounding'],
  gameCourseHandicap: ['game/:game/course-handicap', 'g/:group/game/:game/course-handicap'],
  gameNineHoleIndex: ['game/:game/nine-hole-index', 'g/:group/game/:game/nine-hole-index'],
  gameMatchStrokes: ['game/:game/match-strokes', 'g/:group/game/:game/match-strokes'],
  gameSideStrokes: ['game/:game/side-strokes', 'g/:group/game/:game/side-strokes'],
  gameHandicapShares: ['game/:game/handicap-shares', 'g/:group/game/:game/handicap-shares'],
  gameMixedTees: ['game/:game/mixed-tees', 'g/:group/game/:game/mixed-tees'],
  gameCountingBalls: ['game/:game/counting-balls', 'g/:group/game/:game/counting-balls'],
  gameShortTeam: ['game/:game/short-team', 'g/:group/game/:game/short-team'],
  gameDrawnCard: ['game/:game/drawn-card', 'g/:group/game/:game/drawn-card'],
  gameMaximumScore: ['game/:game/maximum-score', 'g/:group/game/:game/maximum-score'],
  gameSkins: ['game/:game/skins', 'g/:group/game/:game/skins'],
  gameSkinsLeft: ['game/:game/skins-left', 'g/:group/game/:game/skins-left'],
  gamePresses: ['game/:game/presses', 'g/:group/game/:game/presses'],
  gameTies: ['game/:game/ties', 'g/:group/game/:game/ties'],
  concededStroke: ['g/:group/conceded-stroke/:game/:ball/:hole/:lap'],
  concededHole: ['g/:group/conceded-hole/:game/:ball/:hole/:lap'],
  concededMatch: ['g/:group/conceded-match/:game/:ball'],
  agreedHole: ['g/:group/agreed-hole/:game/:hole/:lap'],
  agreedResult: ['g/:group/agreed-result/:game'],
  press: ['g/:group/press/:game/:hole/:lap'],
  holeOut: ['hole-out/:hole/:lap'],
  drive: ['g/:group/drive/:ball/:hole/:lap'],
  teeShot: ['g/:group/tee-shot/:ball/:hole/:lap'],
  likelyScore: ['g/:group/likely-score/:ball/:hole/:lap'],
  absence: ['g/:group/absence/:ball'],
  marker: ['g/:group/marker/:ball'],
  certifiedByPlayer: ['g/:group/certified-by-player/:ball'],
  certifiedByMarker: ['g/:group/certified-by-marker/:ball'],
  ruling: ['ruling/:ruling'],
  playingConditions: ['playing-conditions'],
  closeBall: ['close/ball/:ball'],
  closeGroup: ['close/group/:group'],
  invite: ['invite/:invite'],
  key: ['key/:device'],
  voidKey: ['void/key/:device'],
  voidInvite: ['void/invite/:invite'],
}

export const factKinds = Object.keys(keyPatterns) as FactKind[]

type Slot = Exclude<keyof KeyParts, 'kind'>
type Slots = Partial<Record<Slot, string | number>>

interface Pattern {
  readonly kind: FactKind
  /** Word by word: what it must read, or the slot that it fills. */
  readonly words: readonly (readonly [text: string, slot: Slot | null])[]
}

/** Where a key's pattern is found: by its first word and their number. */
const shelfOf = (words: readonly string[]): string => `${words.length} ${words[0]}`

const patterns = new Map<string, Pattern[]>()
for (const kind of factKinds) {
  for (const pattern of keyPatterns[kind]) {
    const texts = pattern.split('/')
    const words = texts.map(text => [text, text.startsWith(':') ? (text.slice(1) as Slot) : null] as const)
    patterns.set(shelfOf(texts), [...(patterns.get(shelfOf(texts)) ?? []), { kind, words }])
  }
}

/** Every fold reads the same keys again. Bounded, for a server reads keys that anybody sends. */
const parsed = new Map<string, KeyParts | null>()
const mostParsed = 50_000

/** The key's kind and ids, or null when it is none of ours (a newer version's, perhaps). */
export function parseKey(key: string): KeyParts | null {
  const known = parsed.get(key)
  if (known !== undefined) return known
  if (parsed.size >= mostParsed) parsed.clear()
  const parts = partsOf(key)
  parsed.set(key, parts)
  return parts
}

function partsOf(key: string): KeyParts | null {
  const words = key.split('/')
  for (const pattern of patterns.get(shelfOf(words)) ?? []) {
    const parts = matchPattern(pattern, words)
    if (parts) return parts
  }
  return null
}

function matchPattern({ kind, words }: Pattern, found: readonly string[]): KeyParts | null {
  for (const [place, [text, slot]] of words.entries()) {
    if (slot === null && found[place] !== text) return null
  }
  const slots: Partial<Record<Slot, string | number>> = {}
  for (const [place, [, slot]] of words.entries()) {
    if (slot === null) continue
    const value = parseSlot(slot, found[place] ?? '')
    if (value === null) return null
    slots[slot] = value
  }
  const parts = partsWith(kind, slots as Partial<KeyParts>)
  return isRightRecord(parts) ? parts : null
}

/** Written out: a day's worth of keys is read again at every fold, and objects of one make are read faster. */
const partsWith = (kind: FactKind, slots: Partial<KeyParts>): KeyParts => ({
  kind,
  group: slots.group ?? null,
  player: slots.player ?? null,
  ball: slots.ball ?? null,
  game: slots.game ?? null,
  tee: slots.tee ?? null,
  invite: slots.invite ?? null,
  device: slots.device ?? null,
  ruling: slots.ruling ?? null,
  shape: slots.shape ?? null,
  hole: slots.hole ?? null,
  lap: slots.lap ?? null,
  record: slots.record ?? null,
})

function parseSlot(slot: Slot, text: string): string | number | null {
  if (slot === 'hole') return parseNumber(text, 18)
  if (slot === 'lap') return parseNumber(text, 9)
  if (slot === 'record') return records.includes(text as ScoreRecord) ? text : null
  return isId(text) ? text : null
}

function parseNumber(text: string, largest: number): number | null {
  if (!/^[1-9]\d?$/.test(text)) return null
  const number = Number(text)
  return number <= largest ? number : null
}

/** The desk's record stands outside the groups, the group's own inside. */
const isRightRecord = ({ kind, group, record }: KeyParts): boolean =>
  kind !== 'score' || (record === 'desk') === (group === null)

/** The key of a kind with these ids in it; of two places, the one inside a group when a group is given. */
export function makeKey(kind: FactKind, slots: Slots = {}): string {
  const fits = keyPatterns[kind].find(pattern => namesExactly(pattern, slots))
  if (fits === undefined) throw new Error(`no key of kind ${kind} takes ${Object.keys(slots).join(', ')}`)
  return fits.replaceAll(/:([a-z]+)/g, (_, slot: Slot) => String(slots[slot]))
}

function namesExactly(pattern: string, slots: Slots): boolean {
  const named = [...pattern.matchAll(/:([a-z]+)/g)].map(([, slot]) => slot)
  const given = Object.keys(slots)
  return named.length === given.length && given.every(slot => named.includes(slot))
}

/** The key of a ball's score: the desk's record outside the groups, any other inside its group. */
export function scoreKey(at: {
  readonly group: string
  readonly ball: string
  readonly hole: number
  readonly lap: number
  readonly record: ScoreRecord
}): string {
  const { group, ...rest } = at
  return makeKey('score', at.record === 'desk' ? rest : { group, ...rest })
}
