import { useState } from 'react'
import { useLocation } from 'wouter'
import type { LogId } from '#core/values/ids.ts'
import { limits } from '#shared/limits.ts'
import { Field } from '../../parts/Field.tsx'
import { useWork } from '../../parts/use-work.ts'
import { say, sayCode } from '../../words/say-any.ts'
import { tabPath } from '../paths.ts'
import { isKnownHere } from './known-here.ts'
import { type Asking, useAsking } from './use-asking.ts'

interface Props {
  /** In, with a name that is no player's. */
  readonly onJoined: (log: LogId) => void
}

/** Three words that somebody said, and a name: a phone that is in then lets this one in with one tap. */
export function JoinByWords({ onJoined }: Props) {
  const [words, setWords] = useState('')
  const [name, setName] = useState('')
  const [isTried, setTried] = useState(false)
  const [, go] = useLocation()
  const { asking, ask, stop } = useAsking((log, label) => {
    if (isKnownHere(label)) go(tabPath(log, 'hole'))
    else onJoined(log)
  })
  const { isWorking, work } = useWork()
  const [said, label] = [words.trim(), name.trim()]
  const submit = (): void => {
    setTried(true)
    if (said !== '' && label !== '') work(() => ask(said, label))
  }
  if ('ticket' in asking || asking.kind === 'joining') return <Waiting asking={asking} onStop={stop} />
  return (
    <form
      className="section"
      aria-label={say('ask-title')}
      onSubmit={event => {
        event.preventDefault()
        submit()
      }}
    >
      <h2>{say('ask-title')}</h2>
      <Field
        label={say('ask-words')}
        value={words}
        onValue={setWords}
        maxLength={80}
        autoCapitalize="none"
        autoCorrect="off"
        spellCheck={false}
        hint={say('ask-words-hint')}
        fault={isTried && said === '' ? say('ask-words-missing') : undefined}
      />
      <Field
        label={say('join-name')}
        value={name}
        onValue={setName}
        maxLength={limits.nameLength}
        hint={say('join-name-hint')}
        fault={isTried && label === '' ? say('join-name-missing') : undefined}
      />
      <div role="alert">{saidOf(asking) && <p className="notice">{saidOf(asking)}</p>}</div>
      <button type="submit" className="button loud" disabled={isWorking}>
        {say(isWorking ? 'join-asking' : 'ask-go')}
      </button>
    </form>
  )
}

function saidOf(asking: Asking): string {
  switch (asking.kind) {
    case 'fault':
      return say(`ask-fault-${asking.why}`)
    case 'join fault':
      return sayCode('join-fault-', asking.why, 'join-fault-other')
    case 'not now':
    case 'gone':
      return say(`ask-${asking.kind}`)
    default:
      return ''
  }
}

function Waiting({ asking, onStop }: { readonly asking: Asking; readonly onStop: () => void }) {
  if (asking.kind === 'joining') return <p role="status">{say('ask-joining')}</p>
  return (
    <section className="section" aria-label={say('ask-title')}>
      <h2>{say('ask-title')}</h2>
      <p role="status" className="notice">
        {say(asking.kind === 'no server' ? 'ask-no server' : 'ask-waiting')}
      </p>
      <button type="button" className="button" onClick={onStop}>
        {say('ask-stop')}
      </button>
    </section>
  )
}
