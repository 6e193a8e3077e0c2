/**
 * The share of a standard normal that lies below z, to 15 places. Source: Hart's rational approximation of 1968 as
 * arranged by West, Better approximations to cumulative normal functions, 2005; coefficients from memory, held against
 * printed values by a test.
 */
export function normalShare(z: number): number {
  const away = Math.abs(z)
  if (away > 37) return z > 0 ? 1 : 0
  const density = Math.exp((-away * away) / 2)
  const tail = away < 7.07106781186547 ? (density * polynomial(above, away)) / polynomial(below, away) : farTail(away)
  return z > 0 ? 1 - tail : tail
}

const above = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871, 221.213596169931,
  220.206867912376,
]
const below = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674, 637.333633378831,
  793.826512519948, 440.413735824752,
]

function polynomial(coefficients: readonly number[], at: number): number {
  let sum = 0
  for (const each of coefficients) sum = sum * at + each
  return sum
}

function farTail(away: number): number {
  const fraction = away + 1 / (away + 2 / (away + 3 / (away + 4 / (away + 0.65))))
  return Math.exp((-away * away) / 2) / fraction / 2.506628274631
}
