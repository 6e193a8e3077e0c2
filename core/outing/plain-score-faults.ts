import { faultsAt, type Names, type PlainFault } from './plain-fault.ts'
import { groupOfScores, type PlainOuting } from './plain-file.ts'

/** Rows of scores that nobody could place. */
export function faultsOfScores(file: PlainOuting, { balls, groups }: Names): PlainFault[] {
  const rows = new Set<string>()
  return (file.scores ?? []).flatMap((row, at): PlainFault[] => {
    const path = `scores[${at}]`
    if (!balls.has(row.ball)) return [{ path: `${path}.ball`, code: 'unknown ball' }]
    const faults: PlainFault[] = []
    if (row.group !== undefined && !groups.has(row.group)) faults.push({ path: `${path}.group`, code: 'unknown group' })
    const group = row.record === 'desk' ? null : groupOfScores(file, row)
    if (row.record !== 'desk' && group === null) faults.push({ path: `${path}.ball`, code: 'no group' })
    if (row.holes.length !== file.course.holes.length) {
      faults.push({ path: `${path}.holes`, code: 'wrong number of holes' })
    }
    const name = [group, row.ball, row.record ?? 'card', row.lap ?? 1].join('/')
    if (rows.has(name)) faults.push({ path, code: 'scores twice' })
    rows.add(name)
    return faults
  })
}

/** Closed balls that are not there or not agreed. */
export function faultsOfClosed(file: PlainOuting, { balls }: Names): PlainFault[] {
  return [
    ...faultsAt(
      file.closed,
      place => `closed[${place}]`,
      'unknown ball',
      ball => !balls.has(ball),
    ),
    ...faultsAt(
      file.closed,
      place => `closed[${place}]`,
      'id twice',
      (ball, place, all) => all.indexOf(ball) < place,
    ),
    ...faultsAt(
      file.closed,
      place => `closed[${place}]`,
      'two scores closed',
      ball => hasTwoScores(file, ball),
    ),
  ]
}

function hasTwoScores(file: PlainOuting, ball: string): boolean {
  const rows = (file.scores ?? []).filter(row => row.ball === ball)
  return rows.some(row =>
    rows.some(
      other =>
        (row.lap ?? 1) === (other.lap ?? 1) &&
        row.holes.some((score, place) => score !== null && (other.holes[place] ?? score) !== score),
    ),
  )
}
