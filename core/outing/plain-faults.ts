import { faultsAt, type Names, namesIn, type PlainFault } from './plain-fault.ts'
import { groupOfBall, type PlainCourse, type PlainOuting, type PlainRatings } from './plain-file.ts'
import { faultsOfNotes } from './plain-note-faults.ts'
import { faultsOfClosed, faultsOfScores } from './plain-score-faults.ts'
import { parseIndexTenths, parseTenths } from './tenths.ts'

/** Every fault of a file's references, in its own order; empty when the file can be read. */
export function faultsOfPlain(file: PlainOuting): PlainFault[] {
  const known = namesIn(file)
  return [
    ...faultsOfIds(file),
    ...faultsOfCourse(file),
    ...faultsOfPlayers(file, known),
    ...faultsOfBalls(file, known),
    ...faultsOfGroups(file, known),
    ...faultsOfMoves(file, known),
    ...faultsOfGames(file, known),
    ...faultsOfScores(file, known),
    ...faultsOfClosed(file, known),
    ...faultsOfNotes(file, known),
  ]
}

function faultsOfIds(file: PlainOuting): PlainFault[] {
  const lists = {
    'course.tees': file.course.tees,
    players: file.players,
    balls: file.balls,
    groups: file.groups,
    games: file.games,
    rulings: file.rulings,
  }
  return Object.entries(lists).flatMap(([name, list]) => faultsOfTwins(name, list))
}

const faultsOfTwins = (name: string, list: readonly { readonly id: string }[] | undefined): PlainFault[] =>
  faultsAt(
    list,
    place => `${name}[${place}].id`,
    'id twice',
    ({ id }, place, all) => all.findIndex(other => other.id === id) < place,
  )

/** The faults of a course that stands in a file of its own. */
export const faultsOfPlainCourse = (course: PlainCourse): PlainFault[] => [
  ...faultsOfTwins('course.tees', course.tees),
  ...faultsOfCourse({ course }),
]

function faultsOfCourse({ course }: Pick<PlainOuting, 'course'>): PlainFault[] {
  const faults: PlainFault[] = []
  const count = course.holes.length
  if (count !== 9 && count !== 18) faults.push({ path: 'course.holes', code: 'wrong number of holes' })
  for (const [place, tee] of (course.tees ?? []).entries()) {
    const path = `course.tees[${place}]`
    const lists = { pars: tee.pars, indexes: tee.indexes, 'lengths.byHole': tee.lengths?.byHole }
    for (const [name, list] of Object.entries(lists)) {
      if (list !== undefined && list.length !== count) {
        faults.push({ path: `${path}.${name}`, code: 'wrong number of holes' })
      }
    }
    const { ratings, frontRatings, backRatings } = tee
    for (const [name, rated] of Object.entries({ ratings, frontRatings, backRatings })) {
      if (!isInTenths(rated)) faults.push({ path: `${path}.${name}.courseRating`, code: 'not in tenths' })
    }
  }
  return [...faults, ...faultsOfSketches(course)]
}

const faultsOfSketches = ({ sketches, holes }: PlainCourse): PlainFault[] => [
  ...faultsAt(
    sketches,
    place => `course.sketches[${place}].hole`,
    'no such hole',
    ({ hole }) => hole > holes.length,
  ),
  ...faultsAt(
    sketches,
    place => `course.sketches[${place}].hole`,
    'said twice',
    ({ hole }, place, all) => all.findIndex(other => other.hole === hole) < place,
  ),
]

const isInTenths = (ratings: PlainRatings | undefined): boolean =>
  ratings === undefined || parseTenths(ratings.courseRating) !== null

function faultsOfPlayers({ players }: PlainOuting, { tees }: Names): PlainFault[] {
  return [
    ...faultsAt(
      players,
      place => `players[${place}].tee`,
      'unknown tee',
      ({ tee }) => tee !== undefined && !tees.has(tee),
    ),
    ...faultsAt(
      players,
      place => `players[${place}].handicap.index`,
      'not in tenths',
      ({ handicap }) => handicap !== undefined && 'index' in handicap && parseIndexTenths(handicap.index) === null,
    ),
  ]
}

const faultsOfBalls = ({ balls }: PlainOuting, { players }: Names): PlainFault[] =>
  (balls ?? []).flatMap((ball, at) =>
    faultsAt(
      ball.players,
      place => `balls[${at}].players[${place}]`,
      'unknown player',
      id => !players.has(id),
    ),
  )

function faultsOfGroups(file: PlainOuting, { balls }: Names): PlainFault[] {
  const count = file.course.holes.length
  const taken = new Set<string>()
  return file.groups.flatMap((group, at) => {
    const path = `groups[${at}]`
    const faults = [
      ...faultsAt(
        group.balls,
        place => `${path}.balls[${place}]`,
        'unknown ball',
        ball => !balls.has(ball),
      ),
      ...faultsAt(
        group.balls,
        place => `${path}.balls[${place}]`,
        'ball in two groups',
        ball => {
          const isTaken = taken.has(ball)
          taken.add(ball)
          return isTaken
        },
      ),
      ...faultsAt(
        group.order,
        place => `${path}.order[${place}][0]`,
        'no such hole',
        ([hole]) => hole > count,
      ),
    ]
    if ((group.start ?? 1) > count) faults.push({ path: `${path}.start`, code: 'no such hole' })
    if (group.order !== undefined && new Set(group.order.map(String)).size < file.length) {
      faults.push({ path: `${path}.order`, code: 'wrong number of holes' })
    }
    return faults
  })
}

function faultsOfMoves(file: PlainOuting, { balls, groups }: Names): PlainFault[] {
  return (file.moved ?? []).flatMap(({ ball, group, holes }, at): PlainFault[] => {
    const path = `moved[${at}]`
    const ofBall = balls.has(ball) ? 'no group' : 'unknown ball'
    return [
      ...(groupOfBall(file, ball) === null ? [{ path: `${path}.ball`, code: ofBall } as const] : []),
      ...(groups.has(group) ? [] : [{ path: `${path}.group`, code: 'unknown group' } as const]),
      ...faultsAt(
        holes,
        place => `${path}.holes[${place}][0]`,
        'no such hole',
        ([hole]) => hole > file.course.holes.length,
      ),
    ]
  })
}

function faultsOfGames(file: PlainOuting, { balls, groups, games }: Names): PlainFault[] {
  const faults = (file.games ?? []).flatMap((game, at) => [
    ...(game.group === undefined || groups.has(game.group)
      ? []
      : [{ path: `games[${at}].group`, code: 'unknown group' as const }]),
    ...Object.entries({ from: game.from, to: game.to }).flatMap(([end, pair]) =>
      (pair?.[0] ?? 1) > file.course.holes.length
        ? [{ path: `games[${at}].${end}[0]`, code: 'no such hole' as const }]
        : [],
    ),
    ...(game.drawnCard && !balls.has(game.drawnCard)
      ? [{ path: `games[${at}].drawnCard`, code: 'unknown ball' as const }]
      : []),
    ...game.sides.flatMap((side, row) =>
      faultsAt(
        side,
        place => `games[${at}].sides[${row}][${place}]`,
        'unknown ball',
        ball => !balls.has(ball),
      ),
    ),
  ])
  const isMainUnknown = file.main !== undefined && !games.has(file.main)
  return isMainUnknown ? [...faults, { path: 'main', code: 'unknown game' }] : faults
}
