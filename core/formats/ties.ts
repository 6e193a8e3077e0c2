import { type CountbackCard, countbackOrder, rankByCountback } from '#core/card/countback.ts'
import type { CountbackMethod, CountbackScheme } from '#core/card/countback-methods.ts'
import { must } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'
import { rememberBy, rememberByName } from '#core/values/memo.ts'
import { ballHoleOf } from './ball-hole.ts'
import { type InputHole, type SoundGame, scheduledOf } from './game-input.ts'
import type { TieTerms } from './game-methods.ts'
import type { SideHole, Tie, TotalLine } from './game-result.ts'
import type { Placed, UnplacedLine } from './places.ts'
import { type PlayOff, playOffOf } from './play-off.ts'
import { countOn } from './side-hole.ts'

/** A game's lines after its countback, with the working of every tie that was counted back. */
export interface SplitLines {
  readonly lines: readonly Placed[]
  readonly ties: readonly Tie[]
}

/** Splits the ties between lines that are all finished by the game's own terms; without terms ties stand. */
export function splitTies(game: SoundGame, lines: readonly Placed[]): SplitLines {
  const { ties: terms } = game.methods
  if (terms === null) return { lines, ties: [] }
  const groups = groupsOf(lines).map(group =>
    isToSplit(group) ? splitGroup(game, terms, group) : { lines: group, ties: [] },
  )
  return { lines: groups.flatMap(group => group.lines), ties: groups.flatMap(group => group.ties) }
}

/** Runs of lines that share a place. */
function groupsOf(lines: readonly Placed[]): Placed[][] {
  const groups: Placed[][] = []
  for (const line of lines) {
    const group = groups.at(-1)
    if (group?.[0]?.place === line.place) group.push(line)
    else groups.push([line])
  }
  return groups
}

const isToSplit = (group: readonly Placed[]): boolean =>
  group.length > 1 && group.every(({ place, line }) => place !== null && line.isFinished)

function splitGroup(game: SoundGame, terms: TieTerms, group: readonly Placed[]): SplitLines {
  const method = methodOf(game, terms, group)
  const cards = group.map(({ line }) =>
    keptCard(line.byHole, `${method} ${terms.holes}`, () => cardOf(game, terms, method, line)),
  )
  const scheme = schemeOf(terms, cards[0]?.scores.length ?? 0)
  const ranked = rankByCountback(method, scheme, cards)
  const { working } = ranked
  const { order, decidedBy, playOffs } =
    terms.ifStillTied === 'extra-holes' ? playedOff(game, group, ranked) : { ...ranked, playOffs: [] }
  const inOrder = order.map(at => must(group[at], 'a line for each card'))
  return {
    lines: placed(inOrder, decidedBy),
    ties: [
      {
        sides: inOrder.map(({ line }) => line.side),
        method,
        holes: terms.holes,
        working: working.map(({ name, figures }) => ({
          name,
          figures: order.map(at => must(figures[at], 'a figure for each card')),
        })),
        decidedBy,
        playOffs,
        ifStillTied: decidedBy.includes(null) ? terms.ifStillTied : null,
      },
    ],
  }
}

type Ranked = Pick<ReturnType<typeof rankByCountback>, 'order' | 'decidedBy'>

/** The order after the play-offs of those whom no step of the countback separated. */
function playedOff(game: SoundGame, group: readonly Placed[], { order, decidedBy }: Ranked) {
  const sideAt = (at: number) => must(group[at], 'a line for each card').line.side
  const playOffs: PlayOff[] = []
  const after = { order: [] as number[], decidedBy: [] as (string | null)[] }
  for (const run of runsOf(order, decidedBy)) {
    const found = run.length > 1 ? playOffOf(game, run.map(sideAt)) : null
    const figures = new Map(run.map((at, place) => [at, found?.figures[place] ?? 0]))
    const inOrder = [...run].sort((a, b) => (figures.get(a) ?? 0) - (figures.get(b) ?? 0))
    if (found !== null) {
      playOffs.push({ ...found, sides: inOrder.map(sideAt), figures: inOrder.map(at => figures.get(at) ?? 0) })
    }
    if (after.order.length > 0) after.decidedBy.push(decidedBy[after.order.length - 1] ?? null)
    for (const [place, at] of inOrder.entries()) {
      const next = inOrder[place + 1]
      if (next !== undefined) after.decidedBy.push(figures.get(at) === figures.get(next) ? null : 'play-off')
      after.order.push(at)
    }
  }
  return { ...after, playOffs }
}

/** Neighbours that no step separated, together. */
function runsOf(order: readonly number[], decidedBy: readonly (string | null)[]): number[][] {
  const runs: number[][] = []
  for (const [place, at] of order.entries()) {
    const last = runs.at(-1)
    if (last !== undefined && decidedBy[place - 1] === null) last.push(at)
    else runs.push([at])
  }
  return runs
}

/** Each line behind the one before it, or level with it where no step put it there. */
function placed(lines: readonly Placed[], decidedBy: readonly (string | null)[]): Placed[] {
  const first = lines[0]?.place ?? 1
  let place = first
  return lines.map(({ line }, at) => {
    if (at > 0 && decidedBy[at - 1] !== null) place = first + at
    const isTied = (at > 0 && decidedBy[at - 1] === null) || decidedBy[at] === null
    return { line, place, isTied }
  })
}

/**
 * The method that the terms name, where it fits: points and holes are counted as they stand, gross strokes as they are,
 * and net strokes of a side of several balls as they fall, since their handicap is no one ball's.
 * Source: advice of the national unions of Great Britain and Ireland (appendix on ties), quoted second-hand.
 */
function methodOf({ measure }: SoundGame, { method }: TieTerms, lines: readonly Placed[]): CountbackMethod {
  if (measure.unit !== 'strokes') return 'points'
  if (!measure.isNet) return 'gross'
  // The strokes of a ghost or of a card drawn are no ball's of the side.
  if (lines.some(({ line }) => line.ghost !== null || line.drawnCard !== null)) return 'strokes-as-they-fall'
  const isShared = method === 'share-of-handicap' && lines.every(({ line }) => line.side.length === 1)
  return method === 'gross' || isShared ? method : 'strokes-as-they-fall'
}

function schemeOf({ scheme }: TieTerms, holes: number): CountbackScheme {
  if (holes > 9) return scheme
  return scheme === 'threes-from-last' ? 'threes-from-last-of-nine' : 'nine-holes'
}

/** By the holes of a line, which are made new with every score that enters them. */
const cardsOfLine = rememberBy((_: TotalLine['byHole']) => new Map<string, CountbackCard>())

function keptCard(byHole: TotalLine['byHole'], name: string, make: () => CountbackCard): CountbackCard {
  const cards = cardsOfLine(byHole)
  const known = cards.get(name)
  if (known !== undefined) return known
  const card = make()
  cards.set(name, card)
  return card
}

/** A side's counting scores in the order that counts; a hole out of play is nothing to everybody. */
function cardOf(game: SoundGame, { holes }: TieTerms, method: CountbackMethod, line: UnplacedLine): CountbackCard {
  const order = orderOf(game, line.side, holes)
  const values = order.map(({ key }) => valueOfHole(line.byHole.get(key)))
  if (method === 'points' || method === 'strokes-as-they-fall')
    return { scores: values, playingHandicap: 0, strokes: values.map(() => 0) }
  const [first] = line.side
  return {
    scores: order.map(({ key }) => grossOf(game, line, key)),
    playingHandicap: (first && game.strokes.get(first)?.playingHandicap) || 0,
    strokes: values.map(() => 0),
  }
}

const orderOf = ({ balls }: SoundGame, [first]: readonly BallId[], holes: TieTerms['holes']): readonly InputHole[] =>
  first === undefined ? [] : inCountback(balls.get(first)?.order ?? [], holes)

/** A lap comes after the one before it, whatever its holes are numbered. */
const inCountback = rememberByName((order: readonly InputHole[], holes: TieTerms['holes']): readonly InputHole[] => {
  const byNumber = new Map(scheduledOf(order).map(hole => [100 * hole.lap + hole.hole, hole]))
  return countbackOrder(holes, [...byNumber.keys()]).map(each => must(byNumber.get(each), 'a hole of the round'))
})

const valueOfHole = (hole: SideHole | undefined): number => (hole?.kind === 'value' ? hole.value : 0)

/** The gross strokes of the balls that count, of balls level the lower. */
function grossOf(game: SoundGame, { side, byHole }: UnplacedLine, key: InputHole['key']): number {
  const hole = byHole.get(key)
  if (hole?.kind !== 'value') return 0
  const grosses = hole.balls.map(ball => {
    const value = ballHoleOf(game, ball, key).worths[0]?.value ?? 0
    return value + (game.measure.isNet ? (game.strokes.get(ball)?.byHole.get(key) ?? 0) : 0)
  })
  return grosses
    .sort((a, b) => a - b)
    .slice(0, countOn(game, side, key))
    .reduce((sum, each) => sum + each, 0)
}
