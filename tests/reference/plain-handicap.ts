// A second computation of the handicap sums, as plain as possible, to hold core against. It shares nothing with core: no
// import, no fraction type, no table. Tenths and whole strokes come in as they are written, in BigInt.

/** `over / under`, not reduced; `under` is positive. */
export interface Exact {
  readonly over: bigint
  readonly under: bigint
}

/** The whole number below, and one more from the half on. */
export function halfUp({ over, under }: Exact): bigint {
  let below = over / under
  let rest = over - below * under
  if (rest < 0n) {
    below -= 1n
    rest += under
  }
  return 2n * rest >= under ? below + 1n : below
}

/** Whether the value lies exactly between two whole numbers. */
export function isHalf({ over, under }: Exact): boolean {
  return (2n * over) % under === 0n && over % under !== 0n
}

/** A decimal text in units of its `places`-th decimal, which must be enough. */
export function digits(written: number | string, places: number): bigint {
  const [whole = '0', decimals = ''] = String(written).replace('-', '').split('.')
  if (decimals.length > places) throw new Error(`more than ${places} places: ${written}`)
  const size = BigInt(whole + decimals.padEnd(places, '0'))
  return String(written).startsWith('-') ? -size : size
}

/** Index in tenths, rating in tenths. */
export const courseHandicap18 = (index: bigint, slope: bigint, rating: bigint, par: bigint): Exact => ({
  over: index * slope + 113n * (rating - 10n * par),
  under: 1130n,
})

/** Half the Index exactly, or as the tenth that `halfToTenth` makes of it. */
export function courseHandicap9(
  index: bigint,
  slope: bigint,
  rating: bigint,
  par: bigint,
  halfToTenth: boolean,
): Exact {
  if (halfToTenth) return courseHandicap18(halfUp({ over: index, under: 2n }), slope, rating, par)
  return { over: index * slope + 226n * (rating - 10n * par), under: 2260n }
}

export const share = (value: Exact, percent: bigint): Exact => ({
  over: value.over * percent,
  under: value.under * 100n,
})

/** Strokes handed out one by one, from the hole of the lowest index; taken back one by one from that of the highest. */
export function allocate(strokes: bigint, indexes: readonly bigint[]): bigint[] {
  const holes = indexes.map((index, at) => ({ index, at, strokes: 0n }))
  const inOrder = [...holes].sort((a, b) => (a.index < b.index ? -1 : a.index > b.index ? 1 : a.at - b.at))
  if (strokes < 0n) inOrder.reverse()
  const each = strokes < 0n ? -1n : 1n
  for (let given = 0n, at = 0; given !== strokes; given += each, at += 1) {
    const hole = inOrder[at % inOrder.length]
    if (hole !== undefined) hole.strokes += each
  }
  return holes.map(hole => hole.strokes)
}

/** From the lowest of the rounded shares. */
export function matchFromPlayingHandicaps(handicaps: readonly Exact[], percent: bigint): bigint[] {
  const playing = handicaps.map(each => halfUp(share(each, percent)))
  return playing.map(each => each - lowestOf(playing))
}

/** The share of the difference from the lowest, before anything is rounded. */
export function matchFromUnrounded(handicaps: readonly Exact[], percent: bigint): Exact[] {
  const under = handicaps.reduce((product, each) => product * each.under, 1n)
  const overs = handicaps.map(each => (each.over * under) / each.under)
  return overs.map(over => share({ over: over - lowestOf(overs), under }, percent))
}

/** The same of whole course handicaps. */
export const matchFromRounded = (handicaps: readonly Exact[], percent: bigint): Exact[] =>
  matchFromUnrounded(
    handicaps.map(each => ({ over: halfUp(each), under: 1n })),
    percent,
  )

/** In tenths. `conditions` are whole strokes over the holes of the score. */
export const differential18 = (gross: bigint, rating: bigint, slope: bigint, conditions: bigint): Exact => ({
  over: 113n * (10n * gross - rating - 10n * conditions),
  under: slope,
})

/** In tenths; `conditions` are those of eighteen holes. */
export const differential9 = (gross: bigint, rating: bigint, slope: bigint, conditions: bigint): Exact => ({
  over: 113n * (10n * gross - rating - 5n * conditions),
  under: slope,
})

export const sum = (first: Exact, second: Exact): Exact => ({
  over: first.over * second.under + second.over * first.under,
  under: first.under * second.under,
})

/** In tenths, from a record of three scores or more in tenths, newest first. */
export function averageOfLowest(record: readonly bigint[]): Exact {
  const newest = record.slice(0, 20)
  const ascending = [...newest].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0))
  const count = lowestThatCount[newest.length]
  if (count === undefined) throw new Error('fewer than three scores')
  let total = 0n
  for (const each of ascending.slice(0, count)) total += each
  const less = newest.length === 3 ? 20n : newest.length === 4 || newest.length === 6 ? 10n : 0n
  return { over: total - less * BigInt(count), under: BigInt(count) }
}

/** By the number of scores, one entry each. Source: Rules of Handicapping, rule 5.2; Danish union; 2020 and 2024. */
const lowestThatCount: Record<number, number> = {
  3: 1,
  4: 1,
  5: 1,
  6: 2,
  7: 2,
  8: 2,
  9: 3,
  10: 3,
  11: 3,
  12: 4,
  13: 4,
  14: 4,
  15: 5,
  16: 5,
  17: 6,
  18: 6,
  19: 7,
  20: 8,
}

/** In tenths. */
export function index(record: readonly bigint[]): bigint {
  const rounded = halfUp(averageOfLowest(record))
  return rounded > 540n ? 540n : rounded
}

/** Net double bogey, par + 5 without an Index (`null`) or with four strokes and more of a Course Handicap above 54. */
export function mostOnHole(par: bigint, courseHandicap: bigint | null, strokes: bigint): bigint {
  if (courseHandicap === null) return par + 5n
  if (courseHandicap > 54n && strokes >= 4n) return par + 5n
  return par + 2n + strokes
}

export function stableford(par: bigint, strokes: bigint, gross: bigint): bigint {
  const under = par + strokes - gross
  return under < -2n ? 0n : under + 2n
}

function lowestOf(values: readonly bigint[]): bigint {
  let lowest = values[0] ?? 0n
  for (const each of values) if (each < lowest) lowest = each
  return lowest
}
