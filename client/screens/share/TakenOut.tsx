import { Link } from 'wouter'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { paths } from '../paths.ts'

/** The desk took this phone out, by what the server says or by what this phone has read. */
export const useIsOut = (): boolean =>
  useOuting(
    ({ foot, outing, me }) =>
      foot.stranger === 'voided' || (me !== null && outing?.phones.get(me.device)?.isVoid === true),
  )

/** What a phone that was taken out can still do. */
export function TakenOut() {
  return (
    <div className="notice stack" role="alert">
      <h2>{say('out-title')}</h2>
      <p>{say('out-why')}</p>
      <p>{say('out-hand-over')}</p>
      <Link className="button" href={paths.join}>
        {say('out-join')}
      </Link>
    </div>
  )
}
