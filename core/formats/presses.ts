import type { MatchHole } from './hole-by-nets.ts'

const holesDown = 2

/**
 * Where matches open by themselves inside a part, by place from 0: on the hole after a side goes two down in the newest
 * one. A hole that nobody knows yet hides what would open behind it. Common practice; no body publishes it.
 */
export function automaticPresses(holes: readonly MatchHole[]): number[] {
  const opened: number[] = []
  let up = 0
  for (const [place, hole] of holes.entries()) {
    if (hole === null) break
    up += hole
    if (Math.abs(up) < holesDown || place + 1 === holes.length) continue
    opened.push(place + 1)
    up = 0
  }
  return opened
}
