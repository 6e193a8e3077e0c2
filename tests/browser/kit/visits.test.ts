import { expect, test } from 'vitest'
import { allRows } from './screen-states.ts'
import { visitName } from './visit-name.ts'
import { isWholeRun, unvisited } from './visits.ts'

const rows = allRows(visitName)

test('a state at which no test has looked is named, and a whole run is red by it', () => {
  const [first = '', ...rest] = rows
  expect(unvisited(new Set(rows))).toEqual([])
  expect(unvisited(new Set(rest))).toEqual([first])
})

test('a run of some specs or some tests is asked for no state; what measures time is no part of it', () => {
  const folder = ['board.spec.ts', 'hole.spec.ts', 'killed.timing.spec.ts', 'kit']
  const both = new Set(['board.spec.ts', 'hole.spec.ts'])
  expect(isWholeRun(folder, both, /.*/)).toBe(true)
  expect(isWholeRun(folder, new Set(['hole.spec.ts']), /.*/)).toBe(false)
  expect(isWholeRun(folder, both, /undo/)).toBe(false)
})
