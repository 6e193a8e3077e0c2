import type { Json } from '#core/values/json.ts'
import { valueAt } from './json-path.ts'

/** Where an outing's output has what a case expects, and how it is read where the case says it in other words. */
export interface PracticePath {
  readonly got: string
  readonly expected: string
  readonly read?: (got: Json) => Json
}

export const at = (got: string, expected: string, read?: (got: Json) => Json): PracticePath =>
  read === undefined ? { got, expected } : { got, expected, read }

export const numbers = (json: Json): number[] => (json as readonly Json[]).map(Number)
export const sum = (json: Json): number => numbers(json).reduce((total, each) => total + each, 0)
export const countOf = (value: number) => (json: Json) => numbers(json).filter(each => each === value).length
export const running = (json: Json): number[] => numbers(json).map((_, place) => sum(numbers(json).slice(0, place + 1)))
export const inCase = (word: string) => (json: Json) => (json === true ? word : null)
export const capitals = (json: Json): Json => (json as string[][]).map(([id = '']) => id.toUpperCase())
export const capital = (json: Json): Json => String(json).toUpperCase()

interface OnHole {
  readonly hole: number
  readonly strokes?: number
  readonly score?: Json
}
export const holesWhere = (isMeant: (hole: OnHole) => boolean) => (json: Json) =>
  (json as unknown as OnHole[]).filter(isMeant).map(({ hole }) => hole)
export const withStrokes = holesWhere(({ strokes = 0 }) => strokes > 0)
export const pickedUp = holesWhere(({ score }) => score === 'picked-up')

/** Whose hole it was, by the names of the two sides in the case. */
export const winnerOf =
  ([first, second]: readonly [string, string], half = 'halved') =>
  (json: Json): string =>
    json === 1 ? first : json === -1 ? second : half

/** How a match is written in the cases, by the words of the output. */
export const sentence =
  ([first, second]: readonly [string, string]) =>
  (json: Json): string => {
    const { winner, text } = json as { winner: 'A' | 'B' | null; text: string }
    if (winner === null) return text === 'halved' ? 'tied after 18' : text
    return `${winner === 'A' ? first : second} wins ${text.replace('&', 'and')}`
  }

/** Holes up of the first side over every hole of a part, in the words of the cases. */
export function upOf(json: Json): string {
  const up = Number(valueAt(json, 'up'))
  return up === 0 ? 'tied' : `${up > 0 ? 'A' : 'B'} ${Math.abs(up)} up`
}

export const pressesOf = (json: Json): Json =>
  (json as { name: string; holes: { hole: number }[] }[])
    .filter(({ name }) => name === 'press')
    .map(press => ({ starts: press.holes[0]?.hole ?? null, result: upOf(press as unknown as Json) }))

export const part = (name: string): string => `games[id=nassau].parts[name=${name}]`

export const line = (game: string, side: string): string => `games[id=${game}].lines[side=${side}]`
export const off = (game: string, ball: string): string => `games[id=${game}].strokes[ball=${ball}]`
export const match = (game: string): string => `games[id=${game}].matches[0]`
export const holeOf = (place: string, hole: number): string => `${place}.holes[hole=${hole}]`
export const sides = ['AB', 'CD'] as const
export const decidedBy = (step: string, word: string) => (json: Json) => (json === step ? word : json)

export const tie = (game: string): string => `games[id=${game}].ties[0]`
export const figure = (game: string, step: string, place: number): string =>
  `${tie(game)}.working[name=${step}].figures[${place}]`

/** Strokes that each player of a four-ball match receives. */
export const strokesFor = (game: string, method: string): PracticePath[] =>
  ['a', 'b', 'c', 'd'].map((ball, place) => at(`${off(game, ball)}.strokes`, `${method}.P${place + 1}`))
