import { useState } from 'react'
import type { LogId } from '#core/values/ids.ts'
import { limits } from '#shared/limits.ts'
import { Field } from '../../parts/Field.tsx'
import { useWork } from '../../parts/use-work.ts'
import { outingStore } from '../../state/outing-store.ts'
import { renamePhone } from '../../state/phones.ts'
import { useOuting } from '../../state/use-outing.ts'
import { say } from '../../words/say-any.ts'
import { rememberWhose } from '../hole/whose-scores.ts'

/** Whose phone this is, and another player who goes on with it. */
export function ThisPhoneIs() {
  const label = useOuting(store => store.me?.label ?? '')
  const isIn = useOuting(store => store.me?.role != null)
  const [isOpen, setOpen] = useState(false)
  if (!isIn) return null
  return (
    <>
      <p>{say('phone-is', { name: label })}</p>
      <button type="button" className="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {say('phone-hand-on')}
      </button>
      {isOpen && <HandOn onDone={() => setOpen(false)} />}
    </>
  )
}

function HandOn({ onDone }: { readonly onDone: () => void }) {
  const outing = useOuting(store => store.outing)
  const label = useOuting(store => store.me?.label ?? '')
  const [other, setOther] = useState('')
  const { work } = useWork()
  const handOn = (name: string): void => {
    if (name === '') return
    work(async () => {
      await renamePhone(name)
      rememberOwn(name)
      onDone()
    })
  }
  const names = [...new Set([...(outing?.players.values() ?? [])].map(({ name }) => name))]
  return (
    <fieldset className="stack">
      <legend>{say('phone-hand-on-who')}</legend>
      <div className="choices">
        {names
          .filter(name => name !== label)
          .map(name => (
            <button key={name} type="button" className="button" onClick={() => handOn(name)}>
              {name}
            </button>
          ))}
      </div>
      <Field label={say('phone-hand-on-other')} value={other} maxLength={limits.nameLength} onValue={setOther} />
      <button type="button" className="button" disabled={other.trim() === ''} onClick={() => handOn(other.trim())}>
        {say('phone-hand-on-go')}
      </button>
      <p className="quiet">{say('phone-hand-on-hint')}</p>
    </fieldset>
  )
}

/** The hole's page then shows the ball of the player who has the phone. */
function rememberOwn(name: string): void {
  const { log, outing } = outingStore.getState()
  const ball = [...(outing?.balls.values() ?? [])].find(
    ({ players }) => players.length === 1 && players.some(player => outing?.players.get(player)?.name === name),
  )
  if (ball) rememberWhose(log as LogId, { mode: 'all', ball: ball.id, marks: null })
}
