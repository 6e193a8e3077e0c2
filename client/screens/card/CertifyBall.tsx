import { certifyFacts, uncertifyFacts } from '#core/outing/acts-card.ts'
import { certificationOfBall } from '#core/outing/certification-of.ts'
import type { Certifier } from '#core/outing/facts.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { useWork } from '../../parts/use-work.ts'
import { act } from '../../state/actions.ts'
import { isolated } from '../../words/isolated.ts'
import { say } from '../../words/say-any.ts'
import { certifierWords, type DifferenceLine, differencesOf } from './certify-view.ts'
import { DifferenceList } from './DifferenceList.tsx'

interface Props {
  readonly outing: Outing
  readonly ball: BallId
  /** The ball of whoever holds this phone; null where nobody here certifies. */
  readonly holder: BallId | null
}

/** One card: who stands by it, what differs, and the holder's own tap. */
export function CertifyBall({ outing, ball, holder }: Props) {
  const found = outing.balls.get(ball)
  if (!found) return null
  const certification = certificationOfBall(outing, found)
  const marker = outing.notes.markers.get(ball) ?? null
  const markerName = marker === null ? '' : ` ${isolated(outing.players.get(marker)?.name ?? marker)}`
  const lines: readonly DifferenceLine[] = differencesOf(certification)
  const isMarker = marker !== null && holder !== null && outing.balls.get(holder)?.players.includes(marker) === true
  const hasMarker = marker !== null || certification.marker.hasCertified
  const { isComplete, isCertified } = certification
  return (
    <section className="group-box" aria-label={found.name}>
      <h3>{say('certify-by-player', { player: found.name, state: certifierWords(certification.player) })}</h3>
      {hasMarker && (
        <p>{say('certify-by-marker', { marker: markerName, state: certifierWords(certification.marker) })}</p>
      )}
      {isCertified && <p>{say('certify-whole')}</p>}
      {lines.length > 0 && <DifferenceList player={found.name} ball={ball} lines={lines} canChoose={holder !== null} />}
      {holder === ball && (
        <CertifyButton outing={outing} ball={ball} by="player" of={certification.player} isComplete={isComplete} />
      )}
      {isMarker && (
        <CertifyButton outing={outing} ball={ball} by="marker" of={certification.marker} isComplete={isComplete} />
      )}
    </section>
  )
}

interface ButtonProps extends Pick<Props, 'outing' | 'ball'> {
  readonly by: Certifier
  readonly of: { readonly hasCertified: boolean; readonly stands: boolean }
  readonly isComplete: boolean
}

function CertifyButton({ outing, ball, by, of, isComplete }: ButtonProps) {
  const { isWorking, work } = useWork()
  const player = outing.balls.get(ball)?.name ?? ball
  if (of.stands) {
    return (
      <button
        type="button"
        className="button"
        disabled={isWorking}
        onClick={() => work(() => act(`certification by ${by} taken back`, uncertifyFacts(outing, ball, by)))}
      >
        {say(`certify-back-${by}`, { player })}
      </button>
    )
  }
  if (!isComplete) return <p className="quiet">{say('certify-first')}</p>
  return (
    <button
      type="button"
      className="button loud"
      disabled={isWorking}
      onClick={() => work(() => act(`card certified by ${by}`, certifyFacts(outing, ball, by)))}
    >
      {say(`certify-as-${by}`, { player })}
    </button>
  )
}
