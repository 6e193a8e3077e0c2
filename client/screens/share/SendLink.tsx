import { say } from '../../words/say.ts'

/** Hands the link to the phone's own way of sharing, where it has one. */
export function SendLink({ link }: { readonly link: string }) {
  if (typeof navigator.share !== 'function') return null
  const send = (): void => {
    // Someone who changes their mind is no fault.
    navigator.share({ title: say('product'), url: link }).catch(() => null)
  }
  return (
    <button type="button" className="button grow" onClick={send}>
      {say('share-send')}
    </button>
  )
}
