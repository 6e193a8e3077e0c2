import { say } from '../words/say.ts'
import { useWork } from './use-work.ts'

interface Props {
  readonly onAgain: () => Promise<unknown>
}

/** In the place of a screen whose code could not be fetched. */
export function NotFetched({ onAgain }: Props) {
  return (
    <div className="page">
      <main>
        <h1>{say('not-fetched')}</h1>
        <FetchAgain onAgain={onAgain} />
        <button type="button" className="button" onClick={() => window.history.back()}>
          {say('go-back')}
        </button>
      </main>
    </div>
  )
}

/** Asks again, by a tap, for what could not be fetched. */
export function FetchAgain({ onAgain }: Props) {
  const { isWorking, work } = useWork()
  return (
    <>
      <p role="status">{say(isWorking ? 'loading' : 'not-fetched-why')}</p>
      <button type="button" className="button loud" disabled={isWorking} onClick={() => work(onAgain)}>
        {say('try-again')}
      </button>
    </>
  )
}
