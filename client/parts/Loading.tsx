import { say } from '../words/say.ts'

export function Loading() {
  return (
    <div className="page">
      <main>
        <p role="status">{say('loading')}</p>
      </main>
    </div>
  )
}
