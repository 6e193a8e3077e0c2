import { emptyLog, foldOps } from '#core/log/fold.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { SettleOutput } from '#core/outing/settle-output.ts'
import { settledOf } from '#core/outing/settled.ts'
import { makeOp } from './histories.ts'
import { fourPlayers, quillmoor } from './quillmoor.ts'
import { outingOfState } from './two-groups.ts'

/** A four-ball match at Quillmoor with Stableford alongside, as a file a person might write. */
export const autumnDay = {
  sixThrees: 'outing',
  version: 1,
  form: 'plain',
  title: 'Autumn Day',
  day: '2026-10-10',
  length: 18,
  rules: true,
  course: {
    name: quillmoor.name,
    holes: quillmoor.pars.map((par, place) => ({ par, index: quillmoor.indexes[place] ?? 1 })),
    tees: [{ id: 'white', name: 'White', lengths: { unit: 'yards', byHole: quillmoor.yards } }],
  },
  players: fourPlayers.map(({ name, courseHandicap }) => ({
    id: name.toLowerCase(),
    name,
    tee: 'white',
    handicap: { courseHandicap },
  })),
  groups: [{ id: 'four', name: 'Group 4', balls: ['alder', 'birch', 'cedar', 'rowan'] }],
  games: [
    {
      id: 'match',
      format: 'four-ball-match',
      sides: [
        ['alder', 'cedar'],
        ['birch', 'rowan'],
      ],
      allowance: 100,
    },
    { id: 'points', format: 'stableford', sides: [['alder'], ['birch'], ['cedar'], ['rowan']], allowance: 100 },
  ],
  main: 'points',
  scores: fourPlayers.map(({ name, strokes }) => ({ ball: name.toLowerCase(), holes: [...strokes] })),
}

/** A change of the file's fields. */
export type Change = Readonly<Record<string, unknown>>

/** The file with some of its fields in other words; ids are plain text here, brands are the compiler's. */
export const plainWith = (change: Change = {}): PlainOuting => ({ ...autumnDay, ...change }) as unknown as PlainOuting

export const outingOfPlain = (file: PlainOuting): Outing =>
  outingOfState(
    foldOps(emptyLog, [
      makeOp(
        [],
        'desk',
        factsOfPlain(file).map(fact => ({ ...fact, replaces: [] })),
      ),
    ]),
  )

export function settledWith(change: Change = {}): SettleOutput {
  const outing = outingOfPlain(plainWith(change))
  return settledOf(outing, resultsOf(outing))
}

type Kind = 'total' | 'match' | 'gap'
type GameOf<K extends Kind> = Extract<SettleOutput['games'][number], { readonly kind: K }>

/** A game of the output, which must have come to this kind of result. */
export function gameIn<K extends Kind>({ games }: SettleOutput, id: string, kind: K): GameOf<K> {
  const game = games.find(each => each.id === id)
  if (game?.kind !== kind) throw new Error(`${id} is ${game?.kind}: ${JSON.stringify(game)}`)
  return game as GameOf<K>
}
