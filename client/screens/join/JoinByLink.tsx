import { useState } from 'react'
import { useLocation } from 'wouter'
import { Field } from '../../parts/Field.tsx'
import { say } from '../../words/say-any.ts'
import { paths } from '../paths.ts'

/** The path of an invite inside a pasted link, or null. */
const joinPathOf = (link: string): string | null => /#(\/join\/[^\s#]+)$/.exec(link.trim())?.[1] ?? null

/** A pasted invite link. */
export function JoinByLink() {
  const [link, setLink] = useState('')
  const [isBad, setBad] = useState(false)
  const [, go] = useLocation()
  const join = (): void => {
    const path = joinPathOf(link)
    setBad(path === null)
    if (path !== null) go(path)
  }
  return (
    <>
      <Field
        label={say('join-paste')}
        value={link}
        onValue={setLink}
        inputMode="url"
        fault={isBad ? say('join-fault-not an invite') : undefined}
      />
      <button type="button" className="button" onClick={join}>
        {say('home-join-go')}
      </button>
    </>
  )
}

/** True for the address of an invite; the bare join page has none. */
export const isJoinPath = (location: string): boolean => location.length > paths.join.length + 1
