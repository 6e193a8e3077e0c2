import { useState } from 'react'
import { remember, remembered } from '../../device/remembered.ts'
import { fire } from '../../parts/fire.ts'
import { SecondTap } from '../../parts/SecondTap.tsx'
import { useAnswer } from '../../parts/use-answer.ts'
import { useWork } from '../../parts/use-work.ts'
import { ownCode, takeOwnPhoneOut } from '../../state/own-phones.ts'
import { type OwnPhone, usePlan } from '../../state/plan-store.ts'
import { formatDots } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'
import { LinkAsCode } from '../share/LinkAsCode.tsx'

/** The code that puts the bag on the player's other phones, and the phones that have it. Asked for once, at first use. */
export function OtherPhones() {
  const isShared = usePlan(store => store.isShared)
  const isBegun = usePlan(store => store.isBegun)
  const { isWorking, work } = useWork()
  const [isLater, setLater] = useState(() => remembered('own-code') !== null)
  const later = (): void => {
    remember('own-code', 'later')
    setLater(true)
  }
  return (
    <section className="section" aria-label={say('own-phones')}>
      <h2>{say('own-phones')}</h2>
      {isShared ? (
        <Shared />
      ) : (
        <div className={isBegun && !isLater ? 'notice stack' : 'stack'}>
          <p>{say('own-phones-why')}</p>
          <p className="quiet">{say('own-phones-where')}</p>
          <div className="choices">
            <button
              type="button"
              className="button"
              disabled={isWorking}
              onClick={() => work(async () => void (await ownCode()))}
            >
              {say('own-code-make')}
            </button>
            {isBegun && !isLater && (
              <button type="button" className="button" onClick={later}>
                {say('not-now')}
              </button>
            )}
          </div>
        </div>
      )}
    </section>
  )
}

function Shared() {
  const phones = usePlan(store => store.phones)
  const [isShown, setShown] = useState(false)
  return (
    <>
      <p>{say('own-code-keep')}</p>
      <button type="button" className="button" aria-expanded={isShown} onClick={() => setShown(!isShown)}>
        {say(isShown ? 'own-code-hide' : 'own-code-show')}
      </button>
      {isShown && <Code key={phones.map(({ isVoid }) => isVoid).join()} />}
      <ul className="lines">
        {phones.map(phone => (
          <li key={phone.device} className="stack">
            <PhoneLine phone={phone} />
          </li>
        ))}
      </ul>
    </>
  )
}

/** Made anew once a phone was taken out, for that one knows the old code. */
function Code() {
  const link = useAnswer(ownCode)
  if (link === null) return <p role="status">{say('working')}</p>
  return <LinkAsCode link={link} title={say('own-code')} codeTitle={say('own-code-qr')} />
}

function PhoneLine({ phone: { device, label: name, isThis, isVoid } }: { readonly phone: OwnPhone }) {
  return (
    <>
      <div className="spread">
        <b>{name}</b>
        <span className="quiet">
          {formatDots([isThis ? say('own-phone-this') : null, isVoid ? say('phone-is-void') : null])}
        </span>
      </div>
      {!isThis && !isVoid && (
        <SecondTap
          label={say('phone-out', { name })}
          sure={say('phone-out-sure')}
          warning={say('own-phone-out-warning', { name })}
          onSure={() => fire(takeOwnPhoneOut(device))}
        />
      )}
    </>
  )
}
