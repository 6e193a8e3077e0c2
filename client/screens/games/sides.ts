import type { FormatName } from '#core/formats/format-names.ts'
import type { Range } from '#core/formats/format-row.ts'
import { formatTable } from '#core/formats/table.ts'
import { say } from '../../words/say.ts'

/** A ball, or before the start a player, as a side names it. */
export interface Named {
  readonly id: string
  readonly name: string
}

/** Sides of ids. */
export type Sides = readonly (readonly string[])[]

/**
 * Every way in which these balls can make the format's sides; empty when they cannot. Where there is a choice nobody sits
 * out who need not.
 */
export function waysToSide(format: FormatName, balls: readonly { readonly id: string }[]): readonly Sides[] {
  const ids = balls.map(({ id }) => id)
  const { count, balls: size, isOneAgainstSeveral } = formatTable[format].sides
  // A whole field has one way alone to play each for themselves.
  if (count.max === null && size.max === 1) return ids.length < count.min ? [] : [ids.map(id => [id])]
  const tuples = sizesOf(count, size, ids.length).filter(sizes =>
    isOneAgainstSeveral ? isOneAgainst(sizes) : count.max === null || isLevel(sizes),
  )
  const most = Math.max(0, ...tuples.map(sumOf))
  // Of four, two may still play each other alone.
  const isChosen = (sizes: readonly number[]) => sumOf(sizes) === most || (sizes.length === 2 && sumOf(sizes) === 2)
  return tuples
    .filter(isChosen)
    .sort((a, b) => sumOf(b) - sumOf(a))
    .flatMap(sizes => waysToPart(ids, sizes))
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

/** "Alder & Cedar v Birch & Rowan" */
export function sidesWords(balls: readonly Named[], sides: Sides): string {
  const names = sides.map(side => side.map(id => balls.find(ball => ball.id === id)?.name ?? id).join(' & '))
  return names.reduce((first, second) => say('versus', { first, second }))
}
