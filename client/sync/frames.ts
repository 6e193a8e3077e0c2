import { limits } from '#shared/limits.ts'
import type { HeldOp } from './held-op.ts'

/** The first ops of a line that go into one push: no more than `most`, and of a bounded length. */
export function nextFrame(line: readonly HeldOp[], most: number = limits.opsInPush): readonly HeldOp[] {
  const frame: HeldOp[] = []
  let length = 0
  for (const held of line.slice(0, Math.min(most, limits.opsInPush))) {
    length += held.text.length
    if (frame.length > 0 && length > limits.pushLength) break
    frame.push(held)
  }
  return frame
}
