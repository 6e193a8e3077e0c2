import { say } from '../words/say.ts'

export function Loading() {
  return (
    <div className="page">
      <main>
        <h1 className="hidden">{say('product')}</h1>
        <p role="status">{say('loading')}</p>
      </main>
    </div>
  )
}
