/**
 * The clubs that a bag can hold, lowest-lofted first; an iron comes before the hybrid and the wood that go as far.
 * A club beyond these is put in under the name of its neighbour.
 */
export const clubs = [
  'driver',
  'wood-3',
  'wood-5',
  'iron-2',
  'hybrid-2',
  'iron-3',
  'hybrid-3',
  'wood-7',
  'iron-4',
  'hybrid-4',
  'wood-9',
  'iron-5',
  'hybrid-5',
  'iron-6',
  'hybrid-6',
  'iron-7',
  'iron-8',
  'iron-9',
  'pitching-wedge',
  'gap-wedge',
  'sand-wedge',
  'lob-wedge',
] as const
export type Club = (typeof clubs)[number]

export const isClub = (text: string): text is Club => (clubs as readonly string[]).includes(text)

/**
 * How far each club carries, in thousandths of the driver's carry: from which clubs nobody has put a number to are
 * estimated. Source: our own ladder; no body publishes one. A hybrid or a high wood goes as far as the iron whose place
 * it takes.
 */
export const ladderThousandths: Readonly<Record<Club, number>> = {
  driver: 1000,
  'wood-3': 910,
  'wood-5': 860,
  'iron-2': 855,
  'hybrid-2': 855,
  'iron-3': 810,
  'hybrid-3': 810,
  'wood-7': 810,
  'iron-4': 765,
  'hybrid-4': 765,
  'wood-9': 765,
  'iron-5': 720,
  'hybrid-5': 720,
  'iron-6': 675,
  'hybrid-6': 675,
  'iron-7': 630,
  'iron-8': 585,
  'iron-9': 535,
  'pitching-wedge': 485,
  'gap-wedge': 430,
  'sand-wedge': 375,
  'lob-wedge': 315,
}

/** What a new bag proposes; the player takes out what is not there. Our own choice. */
export const proposedClubs: readonly Club[] = [
  'driver',
  'wood-3',
  'hybrid-4',
  'iron-5',
  'iron-6',
  'iron-7',
  'iron-8',
  'iron-9',
  'pitching-wedge',
  'gap-wedge',
  'sand-wedge',
]

/** What a bag holds: the clubs that were said, or the proposed ones while none was. */
export const clubsInBag = ({ said }: { readonly said: ReadonlyMap<Club, unknown> }): readonly Club[] =>
  said.size > 0 ? clubs.filter(club => said.has(club)) : proposedClubs

/** No round may be started with more. Source: Rules of Golf 2023, rule 4.1b(1). */
export const mostClubs = 14

/** A driver is played from a tee alone. Common practice. */
export const isForTheTeeAlone = (club: Club): boolean => club === 'driver'

/** The clubs of which players measure part swings. Common practice. */
export const wedges = ['pitching-wedge', 'gap-wedge', 'sand-wedge', 'lob-wedge'] as const satisfies readonly Club[]

/** Part swings by the names that players give them. Common practice. */
export const partSwings = ['half', 'three-quarter'] as const
export type PartSwing = (typeof partSwings)[number]

export const isPartSwing = (text: string): text is PartSwing => (partSwings as readonly string[]).includes(text)

const woods: readonly Club[] = ['driver', 'wood-3', 'wood-5', 'wood-7', 'wood-9']

export const isWood = (club: Club): boolean => woods.includes(club)
