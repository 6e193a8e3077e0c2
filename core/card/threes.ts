/** The round cut in threes, in order of play: six of eighteen holes, three of nine, wherever it starts. */
export function threesOf<T>(round: readonly T[]): T[][] {
  const threes: T[][] = []
  for (let start = 0; start < round.length; start += 3) threes.push(round.slice(start, start + 3))
  return threes
}
