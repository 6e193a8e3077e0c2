import type { Outing } from '#core/outing/outing.ts'
import { twosOf } from '#core/outing/twos-of.ts'
import type { BallId } from '#core/values/ids.ts'
import { formatList, formatOrdinal } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'

/** The side prize of a roll-up: who has holed out in two, and where. */
export function TwosSection({ outing }: { readonly outing: Outing }) {
  if (outing.groups.size < 2) return null
  const twos = new Map<BallId, string[]>()
  for (const { ball, hole } of twosOf(outing)) twos.set(ball, [...(twos.get(ball) ?? []), formatOrdinal(hole)])
  return (
    <section className="section" aria-label={say('twos-title')}>
      <h2>{say('twos-title')}</h2>
      {twos.size === 0 && <p className="quiet">{say('twos-none')}</p>}
      <ul className="lines">
        {[...twos].map(([ball, holes]) => (
          <li key={ball}>
            {say('two-line', {
              player: outing.balls.get(ball)?.name ?? ball,
              holes: formatList(holes),
            })}
          </li>
        ))}
      </ul>
    </section>
  )
}
