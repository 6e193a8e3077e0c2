import { useState } from 'react'
import { useLocation } from 'wouter'
import type { LogId } from '#core/values/ids.ts'
import { limits } from '#shared/limits.ts'
import { Field } from '../../parts/Field.tsx'
import { useWork } from '../../parts/use-work.ts'
import { joinOuting } from '../../state/joining.ts'
import { say, sayCode } from '../../words/say-any.ts'
import { tabPath } from '../paths.ts'
import { isKnownHere } from './known-here.ts'

interface Props {
  readonly link: string
  /** Whoever is one of them is in with one tap. */
  readonly players: readonly string[]
  /** In, with a name that is no player's. */
  readonly onJoined: (log: LogId) => void
}

/** More names than these are quicker typed than found. */
const mostNames = 24

/** Asks for a name and joins. */
export function JoinForm({ link, players, onJoined }: Props) {
  const [name, setName] = useState('')
  const [fault, setFault] = useState('')
  const [isUnnamed, setUnnamed] = useState(false)
  const { isWorking, work } = useWork()
  const [, go] = useLocation()
  const join = (label: string): void => {
    setUnnamed(label === '')
    if (label === '') return
    work(async () => {
      const joined = await joinOuting(link, label)
      if (joined.ok && isKnownHere(label)) go(tabPath(joined.value, 'hole'))
      else if (joined.ok) onJoined(joined.value)
      else setFault(sayCode('join-fault-', joined.error, 'join-fault-other'))
    })
  }
  return (
    <form
      className="section"
      onSubmit={event => {
        event.preventDefault()
        join(name.trim())
      }}
    >
      {players.length > 0 && players.length <= mostNames && (
        <fieldset className="choices">
          <legend>{say('join-as')}</legend>
          {players.map(player => (
            <button key={player} type="button" className="button" disabled={isWorking} onClick={() => join(player)}>
              {player}
            </button>
          ))}
        </fieldset>
      )}
      <Field
        label={say('join-name')}
        value={name}
        onValue={setName}
        maxLength={limits.nameLength}
        hint={say('join-name-hint')}
        fault={isUnnamed ? say('join-name-missing') : undefined}
      />
      <div role="alert">{fault && <p className="notice">{fault}</p>}</div>
      <button type="submit" className="button loud" disabled={isWorking}>
        {say(isWorking ? 'join-asking' : 'join-go')}
      </button>
    </form>
  )
}
