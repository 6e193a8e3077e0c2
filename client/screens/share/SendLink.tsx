import { canShare, share } from '../../device/sharing.ts'
import { fire } from '../../parts/fire.ts'
import { say } from '../../words/say-any.ts'

/** Hands the link to the phone's own way of sharing, where it has one. */
export function SendLink({ link }: { readonly link: string }) {
  const shared = { title: say('product'), url: link }
  if (!canShare(shared)) return null
  return (
    <button type="button" className="button grow" onClick={() => fire(share(shared))}>
      {say('share-send')}
    </button>
  )
}
