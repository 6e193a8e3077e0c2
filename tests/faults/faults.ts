import type { Outcome } from './fault.ts'
import { diskFull } from './full-disk.ts'
import { killedUnderLoad, stoppedAndWoken } from './killed-server.ts'
import { meansHere } from './kit/small-disk.ts'

type Length = 'short' | 'long'
type Run = (length: Length) => Promise<readonly Outcome[]>

/** Every fault that the product is put through, in its short and its long form. */
export const faults: Readonly<Record<string, Run>> = {
  killed: async length => [await killedUnderLoad(length === 'long' ? 50 : 5)],
  stopped: async length => [await stoppedAndWoken(length === 'long' ? 10 : 1, 5_000)],
  'full-disk': length => eachInTurn(meansHere(), means => diskFull(length === 'long' ? 5 : 1, means)),
}

async function eachInTurn<T>(items: readonly T[], run: (item: T) => Promise<Outcome>): Promise<Outcome[]> {
  const outcomes: Outcome[] = []
  for (const item of items) outcomes.push(await run(item))
  return outcomes
}
