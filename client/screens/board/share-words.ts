import type { ShareHole, SharesResult } from '#core/formats/shares-result.ts'
import type { Outing } from '#core/outing/outing.ts'
import { compareFractions, zero } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import { sideName } from '../../parts/side-name.ts'
import { formatList, formatShare } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'

type Sides = readonly (readonly BallId[])[]

/** "3: Alder 2", "4: tied, 1 carried", one line a hole that has been played; `sides` in the order of the game. */
export const shareWords = (outing: Outing, sides: Sides, { holes, unit }: SharesResult): readonly string[] =>
  holes.flatMap(hole => holeWords(outing, sides, hole, unit) ?? [])

function holeWords(outing: Outing, sides: Sides, line: ShareHole, unit: SharesResult['unit']): string | null {
  const { key, kind, shares, pot } = line
  const hole = key.split('/')[0] ?? ''
  switch (kind) {
    case 'open':
      return null
    case 'waiting':
      return say('share-waiting', { hole })
    case 'carried':
      return say('share-carried', { hole, n: pot ?? 0 })
    case 'unclaimed':
      return say('share-unclaimed', { hole })
    case 'shared': {
      const won = (shares ?? []).flatMap((share, place) =>
        unit === 'skins' && compareFractions(share, zero) === 0
          ? []
          : [say('side-points', { side: sideName(outing, sides[place] ?? []), n: formatShare(share) })],
      )
      return say('share-hole', { hole, shares: formatList(won) })
    }
  }
}
