import type { ScoreRecord } from '#core/card/card.ts'
import type { ClosedScore } from './facts.ts'
import type { PlainOuting } from './plain-file.ts'

/** A ball's scores in a file: on each hole the first of its records that has it, the record named looked at first. */
export function scoresInFile(file: PlainOuting, ball: string, first: ScoreRecord = 'card'): ClosedScore[] {
  const rows = (file.scores ?? []).filter(row => row.ball === ball)
  const isFirst = ({ record = 'card' }: (typeof rows)[number]): boolean => record === first
  const found = new Map<string, ClosedScore>()
  for (const row of [...rows.filter(isFirst), ...rows.filter(row => !isFirst(row))]) {
    for (const [place, score] of row.holes.entries()) {
      const at = `${place + 1}/${row.lap ?? 1}`
      if (score !== null && !found.has(at)) found.set(at, [place + 1, row.lap ?? 1, score])
    }
  }
  return [...found.values()]
}
