import type { DeviceId } from '#core/values/ids.ts'

/** Whole numbers as closed ranges, ascending, never touching: [[1, 4], [7, 7]]. */
export type Ranges = readonly (readonly [from: number, to: number])[]

/** Which n of which device are here; not one largest n, for refused ones are missing. */
export type Here = ReadonlyMap<DeviceId, Ranges>

export const hasNumber = (ranges: Ranges, n: number): boolean => ranges.some(([from, to]) => from <= n && n <= to)

/** The ranges with `n` in them. */
export function addNumber(ranges: Ranges, n: number): Ranges {
  return addRange(ranges, [n, n])
}

function addRange(ranges: Ranges, added: readonly [number, number]): Ranges {
  const last = ranges.at(-1)
  // Ops nearly always come in their device's order.
  if (last && added[0] === last[1] + 1) return [...ranges.slice(0, -1), [last[0], added[1]]]
  const [before, after]: [[number, number][], [number, number][]] = [[], []]
  let [from, to] = added
  for (const [a, b] of ranges) {
    if (b < from - 1) before.push([a, b])
    else if (a > to + 1) after.push([a, b])
    else [from, to] = [Math.min(a, from), Math.max(b, to)]
  }
  return [...before, [from, to], ...after]
}

export const isHere = (here: Here, device: DeviceId, n: number): boolean => hasNumber(here.get(device) ?? [], n)
