import { unreachable } from '#core/values/assert.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import type { HoleAndLap, Ruling } from './facts.ts'
import { groupOfBall, type PlainOuting } from './plain-file.ts'
import type { PlainAgreedHole, PlainAgreedResult, PlainByHole, PlainConcession, PlainRuling } from './plain-notes.ts'
import { scoresInFile } from './plain-scores.ts'
import { type NewFact, statedFact } from './stated-fact.ts'

/** The facts that a plain file without faults states beside field, games and scores. */
export function factsOfNotes(file: PlainOuting): NewFact[] {
  const { playingConditions: conditions } = file
  return [
    ...(file.concessions ?? []).map(each => concessionFact(file, each)),
    ...agreedHoleFacts(file),
    ...agreedResultFacts(file),
    ...(file.presses ?? []).map(({ game, by, hole, lap = 1 }) =>
      statedFact('press', { ...inGroup(file, by, [hole, lap]), game, hole, lap }, { by }),
    ),
    ...(file.holesOut ?? []).map(({ hole, lap = 1, counts, reason = null }) =>
      statedFact('holeOut', { hole, lap }, { counts, reason }),
    ),
    ...byHoleFacts(file, file.drives, (at, player) => statedFact('drive', at, player)),
    ...(file.teeShots ?? []).map(({ ball, player, hole, lap = 1 }) =>
      statedFact('teeShot', { ...inGroup(file, ball, [hole, lap]), ball, hole, lap }, player),
    ),
    ...byHoleFacts(file, file.likelyScores, (at, score) => statedFact('likelyScore', at, score)),
    ...(file.absences ?? []).map(({ ball, joinedAt = null, leftAt = null, withdrawn = false, reason = null }) =>
      statedFact('absence', { ...inGroup(file, ball), ball }, { joinedAt, leftAt, isWithdrawn: withdrawn, reason }),
    ),
    ...(file.markers ?? []).map(({ ball, marker }) => statedFact('marker', { ...inGroup(file, ball), ball }, marker)),
    ...certifiedFacts(file),
    ...(file.rulings ?? []).map(ruling => statedFact('ruling', { ruling: ruling.id }, rulingOfPlain(ruling))),
    ...(conditions === undefined
      ? []
      : [statedFact('playingConditions', {}, { strokes: conditions.strokes, reason: conditions.reason ?? null })]),
  ]
}

/** A file without faults names no ball outside the groups here. */
const inGroup = (file: PlainOuting, ball: BallId, at?: HoleAndLap): { readonly group: string } => ({
  group: groupOfBall(file, ball, at) ?? '',
})

function concessionFact(file: PlainOuting, said: PlainConcession): NewFact {
  const { game } = said
  if (said.what === 'match') {
    const at = { ...inGroup(file, said.by), game, ball: said.by }
    return statedFact('concededMatch', at, { to: said.to ?? null })
  }
  const { hole, lap = 1 } = said
  if (said.what === 'hole') {
    const at = { ...inGroup(file, said.by, [hole, lap]), game, ball: said.by, hole, lap }
    return statedFact('concededHole', at, { to: said.to ?? null })
  }
  return statedFact(
    'concededStroke',
    { ...inGroup(file, said.ball, [hole, lap]), game, ball: said.ball, hole, lap },
    said.score,
  )
}

/** The group that says what two sides agreed. */
export function groupOfAgreed(file: PlainOuting, said: PlainAgreedHole | PlainAgreedResult): GroupId | null {
  const [one, other] = said.between
  const at: HoleAndLap | undefined = 'hole' in said ? [said.hole, said.lap ?? 1] : undefined
  return said.group ?? groupOfBall(file, one, at) ?? groupOfBall(file, other, at)
}

function agreedHoleFacts(file: PlainOuting): NewFact[] {
  const rows = gathered(file.agreedHoles, said => [groupOfAgreed(file, said), said.game, said.hole, said.lap ?? 1])
  return rows.map(([first, all]) => {
    const { game, hole, lap = 1 } = first
    const at = { group: groupOfAgreed(file, first) ?? '', game, hole, lap }
    return statedFact('agreedHole', at, { results: all.map(({ between, won }) => ({ between, won })) })
  })
}

function agreedResultFacts(file: PlainOuting): NewFact[] {
  const rows = gathered(file.agreedResults, said => [groupOfAgreed(file, said), said.game])
  return rows.map(([first, all]) => {
    const at = { group: groupOfAgreed(file, first) ?? '', game: first.game }
    const results = all.map(({ between, won, by, left }) => ({ between, won, by, left }))
    return statedFact('agreedResult', at, { results })
  })
}

/** Rows of one name together: what one key holds. */
function gathered<T>(rows: readonly T[] | undefined, nameOf: (row: T) => readonly unknown[]): [first: T, all: T[]][] {
  const found = new Map<string, [T, T[]]>()
  for (const row of rows ?? []) {
    const name = nameOf(row).join('/')
    const known = found.get(name)
    if (known === undefined) found.set(name, [row, [row]])
    else known[1].push(row)
  }
  return [...found.values()]
}

type AtBallAndHole = { readonly group: string; readonly ball: string; readonly hole: number; readonly lap: number }

const byHoleFacts = <T extends string | number>(
  file: PlainOuting,
  rows: readonly PlainByHole<T>[] | undefined,
  factOf: (at: AtBallAndHole, value: T) => NewFact,
): NewFact[] =>
  (rows ?? []).flatMap(({ ball, lap = 1, holes }) =>
    holes.flatMap((value, place) =>
      value === null ? [] : [factOf({ ...inGroup(file, ball, [place + 1, lap]), ball, hole: place + 1, lap }, value)],
    ),
  )

const certifiedFacts = (file: PlainOuting): NewFact[] =>
  (file.certified ?? []).map(({ ball, by, scores }) => {
    const [kind, first] =
      by === 'player' ? (['certifiedByPlayer', 'card'] as const) : (['certifiedByMarker', 'marker'] as const)
    return statedFact(kind, { ...inGroup(file, ball), ball }, { scores: scores ?? scoresInFile(file, ball, first) })
  })

function rulingOfPlain(ruling: PlainRuling): Ruling {
  const said = { games: ruling.games ?? null, rule: ruling.rule ?? null, reason: ruling.reason ?? null }
  switch (ruling.kind) {
    case 'no-penalty':
      return { ...said, kind: ruling.kind, ball: ruling.ball ?? null }
    case 'penalty': {
      const { kind, ball, strokes, holeLost = false } = ruling
      return { ...said, kind, ball, hole: holeOf(ruling), strokes, holeLost }
    }
    case 'disqualified':
      return { ...said, kind: ruling.kind, ball: ruling.ball, hole: holeOf(ruling) }
    case 'plays-off':
    case 'net-off':
      return { ...said, kind: ruling.kind, ball: ruling.ball, strokes: ruling.strokes }
    default:
      return unreachable(ruling)
  }
}

const holeOf = ({ hole, lap }: { hole?: number | undefined; lap?: number | undefined }): HoleAndLap | null =>
  hole === undefined ? null : [hole, lap ?? 1]
