/** Dice that fall alike for one seed: shares below 1 and standard normals. */
export interface Dice {
  share(): number
  normal(): number
}

/** A small generator of 32 bits (Marsaglia's xorshift with an added Weyl sequence), good enough to throw shots. */
export function makeDice(seed: number): Dice {
  let [state, weyl] = [seed | 1, 362437]
  const share = (): number => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    weyl = (weyl + 362437) | 0
    return ((state + weyl) >>> 0) / 4294967296
  }
  return {
    share,
    normal: () => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share()),
  }
}
