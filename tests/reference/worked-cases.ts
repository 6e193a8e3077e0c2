import { readFileSync } from 'node:fs'

/** A worked case as its file has it, its pages beside it; what goes in and what is expected is for the test to say. */
export interface WorkedCase<Setup = unknown, Expected = unknown> {
  readonly id: string
  readonly title: string
  readonly decides: string
  readonly setup: Setup
  readonly expected: Expected
}

/** The cases of a file of this folder. */
export const casesIn = <Setup, Expected>(file: string): readonly WorkedCase<Setup, Expected>[] =>
  JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8'))

export function caseOf<Setup, Expected>(cases: readonly WorkedCase[], id: string): WorkedCase<Setup, Expected> {
  const found = cases.find(each => each.id === id)
  if (found === undefined) throw new Error(`no case ${id}`)
  return found as WorkedCase<Setup, Expected>
}
