import type { SettleOutput } from '#core/outing/settle-output.ts'
import { autumnDay, type Change, gameIn, settledWith } from './plain-outing.ts'
import { quillmoor } from './quillmoor.ts'

/** A score as a plain file has it. */
export type Score = number | 'picked-up' | 'not-played' | null

type TotalGame = Extract<SettleOutput['games'][number], { readonly kind: 'total' }>

export const pars: readonly number[] = quillmoor.pars

/** A card of pars with some holes written over, as far as it goes. */
export const card = (ball: string, over: Readonly<Record<number, Score>> = {}, through = 18) => ({
  ball,
  holes: pars.map((par, place) => (place + 1 in over ? (over[place + 1] ?? null) : place < through ? par : null)),
})

export const cardOf = (ball: string, holes: readonly Score[]) => ({ ball, holes: [...holes] })

/** The four players of the kit with these handicaps; plain strokes of none where none is named. */
export const playersWith = (...handicaps: readonly object[]) =>
  autumnDay.players.map((player, place) => ({ ...player, handicap: handicaps[place] ?? { strokes: 0 } }))

export const singles = [['alder'], ['birch'], ['cedar'], ['rowan']]
export const pairs = [
  ['alder', 'birch'],
  ['cedar', 'rowan'],
]

/** One game over these scores; plain strokes of none and the format's own proposals unless the change says otherwise. */
export function totalGame(
  format: string,
  sides: readonly (readonly string[])[],
  scores: readonly object[],
  methods: object = {},
  change: Change = {},
): TotalGame {
  const games = [{ id: 'g', format, sides, allowance: 100, ...methods }]
  return gameIn(settledWith({ players: playersWith(), games, main: undefined, scores, ...change }), 'g', 'total')
}

/** The line of a side, by its first ball. */
export function lineOf({ lines }: TotalGame, ball: string): TotalGame['lines'][number] {
  const line = lines.find(({ side }) => side[0] === ball)
  if (line === undefined) throw new Error(`no line of ${ball}`)
  return line
}

/** What a line has on each hole in the order of the card; null where it has no value. */
export const valuesOf = (line: TotalGame['lines'][number]): (number | null)[] =>
  [...line.holes].sort((a, b) => a.lap - b.lap || a.hole - b.hole).map(({ value }) => value)

/** `hole code ball`, in order of play. */
export const notesOf = (line: TotalGame['lines'][number]): string[] =>
  line.holes.flatMap(({ hole, notes }) => notes.map(({ code, ball }) => `${hole} ${code} ${ball ?? ''}`.trim()))
