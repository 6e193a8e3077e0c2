import type { FormatName } from '#core/formats/format-names.ts'
import type { Range } from '#core/formats/format-row.ts'
import { sixHolePartners } from '#core/formats/six-hole-partners.ts'
import { formatTable } from '#core/formats/table.ts'
import { isolated } from '../../words/isolated.ts'
import { say } from '../../words/say-any.ts'

/** A ball, or before the start a player, as a side names it. */
export interface Named {
  readonly id: string
  readonly name: string
}

/** Sides of ids. */
export type Sides = readonly (readonly string[])[]

/** Of more balls than these the ways are too many to list: one is proposed, and others are made by hand. */
export const mostListed = 4

/** Each ball plays for itself: of a whole field there is one way alone. */
export function isEachAlone(format: FormatName): boolean {
  const { count, balls } = formatTable[format].sides
  return count.max === null && balls.max === 1
}

/**
 * Every way in which these balls can make the format's sides; empty when they cannot. Where there is a choice nobody sits
 * out who need not. Of a field it is one way, in the order of the list.
 */
export function waysToSide(format: FormatName, balls: readonly { readonly id: string }[]): readonly Sides[] {
  const ids = balls.map(({ id }) => id)
  const { count } = formatTable[format].sides
  if (isEachAlone(format)) return ids.length < count.min ? [] : [ids.map(id => [id])]
  if (ids.length > mostListed) return wayOfField(format, ids)
  if (isInOrder(format)) return ids.length < count.min ? [] : ordersOf(ids)
  const tuples = tuplesFor(format, ids.length)
  const most = Math.max(0, ...tuples.map(sumOf))
  // Of four, two may still play each other alone.
  const isChosen = (sizes: readonly number[]) => sumOf(sizes) === most || (sizes.length === 2 && sumOf(sizes) === 2)
  return tuples
    .filter(isChosen)
    .sort((a, b) => sumOf(b) - sumOf(a))
    .flatMap(sizes => waysToPart(ids, sizes))
}

function tuplesFor(format: FormatName, balls: number): readonly (readonly number[])[] {
  const { count, balls: size, isOneAgainstSeveral } = formatTable[format].sides
  return sizesOf(count, size, balls).filter(sizes =>
    isOneAgainstSeveral ? isOneAgainst(sizes) : count.max === null || isLevel(sizes),
  )
}

/** The order of the sides decides who plays with whom and when. */
export const isInOrder = (format: FormatName): boolean => formatTable[format].sides.isInOrder === true

/** The first ball with each other one, in every order. */
const ordersOf = ([first = '', ...others]: readonly string[]): readonly Sides[] =>
  permutationsOf(others).map(order => [first, ...order].map(id => [id]))

const permutationsOf = (ids: readonly string[]): readonly (readonly string[])[] =>
  ids.length < 2
    ? [ids]
    : ids.flatMap(id => permutationsOf(ids.filter(each => each !== id)).map(others => [id, ...others]))

/** Sides that come to the same have the same text: those of one size stand in no order, nor do the balls of a side. */
export function textOfSides(format: FormatName, sides: Sides): string {
  if (isInOrder(format)) {
    const ids = sides.map(([id = '']) => id)
    const [first = ''] = [...ids].sort()
    return [first, ...partnersInTurn(ids, first)].join(' ')
  }
  return textOfParts(sides)
}

/** The same text for the same people with each other, in whatever order. */
export const textOfParts = (sides: Sides): string =>
  sides
    .map(side => [...side].sort().join('&'))
    .sort()
    .join(' ')

const partnersInTurn = (ids: readonly string[], id: string): readonly string[] =>
  sixHolePartners(ids.indexOf(id)).map(place => ids[place] ?? '')

/** The balls as they are listed, side by side; those for whom there is no side left sit out. */
function wayOfField(format: FormatName, ids: readonly string[]): readonly Sides[] {
  const { count, balls } = formatTable[format].sides
  const sizes =
    count.max === null
      ? teamSizes(ids.length, count.min, balls)
      : [...tuplesFor(format, ids.length)].sort((a, b) => sumOf(b) - sumOf(a))[0]
  if (sizes === undefined) return []
  const starts = sizes.map((_, place) => sumOf(sizes.slice(0, place)))
  return [sizes.map((size, place) => ids.slice(starts[place] ?? 0, (starts[place] ?? 0) + size))]
}

/** As many sides as there can be with nobody left over, the smaller ones first. */
function teamSizes(balls: number, fewest: number, size: Range): readonly number[] | undefined {
  for (let count = Math.floor(balls / size.min); count >= Math.max(1, fewest); count--) {
    const [each, over] = [Math.floor(balls / count), balls % count]
    if (size.max === null || each + Math.sign(over) <= size.max) {
      return Array.from({ length: count }, (_, place) => (place < count - over ? each : each + 1))
    }
  }
  return undefined
}

/** True for sides that the format can be played with, whoever is on them. */
export function fitsSides(format: FormatName, sides: Sides): boolean {
  const { count, balls, isOneAgainstSeveral } = formatTable[format].sides
  const sizes = sides.map(({ length }) => length)
  const isRightCount = isIn(sizes.length, count) && sizes.every(size => isIn(size, balls))
  const singles = sizes.filter(size => size === 1).length
  return isRightCount && new Set(sides.flat()).size === sumOf(sizes) && (!isOneAgainstSeveral || singles === 1)
}

const isIn = (n: number, { min, max }: Range): boolean => n >= min && (max === null || n <= max)

/** So many sides can be made by hand of so many balls. */
export function mostSides(format: FormatName, balls: number): number {
  const { count, balls: size } = formatTable[format].sides
  return Math.min(count.max ?? balls, Math.max(count.min, Math.floor(balls / size.min)))
}

const isOneAgainst = ([smallest, next = 1]: readonly number[]): boolean => smallest === 1 && next > 1

const isLevel = (sizes: readonly number[]): boolean => sizes.every(size => size === sizes[0])

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0)

/** The sizes of sides that so many balls can fill, the smaller sides first. */
function sizesOf(count: Range, size: Range, balls: number): readonly (readonly number[])[] {
  const largest = size.max ?? balls
  const grow = (sizes: readonly number[], left: number): readonly (readonly number[])[] => {
    const isWhole = sizes.length >= count.min && (count.max !== null || left === 0)
    const next: (readonly number[])[] = []
    if (sizes.length < (count.max ?? balls)) {
      for (let each = Math.max(size.min, sizes.at(-1) ?? 1); each <= Math.min(largest, left); each++) {
        next.push(...grow([...sizes, each], left - each))
      }
    }
    return isWhole ? [sizes, ...next] : next
  }
  return grow([], balls)
}

/** Every way to take sides of these sizes out of the ids; sides of one size stand in no order, those left over sit out. */
export function waysToPart(ids: readonly string[], sizes: readonly number[]): readonly Sides[] {
  const [size, ...others] = sizes
  if (size === undefined) return [[]]
  return choicesOf(ids, size).flatMap(side => {
    const left = ids.filter(id => !side.includes(id))
    return waysToPart(left, others)
      .filter(
        ([next]) =>
          next === undefined || next.length !== size || ids.indexOf(next[0] ?? '') > ids.indexOf(side[0] ?? ''),
      )
      .map(rest => [side, ...rest])
  })
}

function choicesOf(ids: readonly string[], size: number): readonly (readonly string[])[] {
  if (size === 0) return [[]]
  return ids.flatMap((first, place) => choicesOf(ids.slice(place + 1), size - 1).map(others => [first, ...others]))
}

/** How many balls the format asks for. */
export const ballsNeeded = (format: FormatName): number => {
  const { count, balls, isOneAgainstSeveral } = formatTable[format].sides
  return isOneAgainstSeveral ? 1 + (count.min - 1) * 2 : count.min * balls.min
}

/** How a game's sides are read: who is with whom, or how many play for themselves. */
export function wordsOfSides(format: FormatName, balls: readonly Named[], sides: Sides): string {
  if (isEachAlone(format) && sides.length > 2) return say('game-sides-all', { n: sides.length })
  if (!isInOrder(format)) return sidesWords(balls, sides)
  const nameOf = (id = ''): string => balls.find(ball => ball.id === id)?.name ?? id
  const [player, one, two, three] = sides.map(([id]) => nameOf(id))
  return say('game-partners-turn', { player: player ?? '', one: one ?? '', two: two ?? '', three: three ?? '' })
}

/** "Alder & Cedar v Birch & Rowan" */
export function sidesWords(balls: readonly Named[], sides: Sides): string {
  const names = sides.map(side => side.map(id => isolated(balls.find(ball => ball.id === id)?.name ?? id)).join(' & '))
  return names.reduce((first, second) => say('versus', { first, second }))
}
