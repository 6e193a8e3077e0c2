import { createContext, useContext } from 'react'
import { underHeading } from './under-heading.ts'

/** What the heading over a group of fields says: the name that each of their labels begins with. */
export const Heading = createContext('')

/** A field's name. What the heading over it says already is left to those who do not see the page. */
export function Label({ text }: { readonly text: string }) {
  const heading = useContext(Heading)
  const rest = underHeading(heading, text)
  if (rest === text) return text
  return (
    <>
      <span className="hidden">{heading} </span>
      <span className="label-rest">{rest}</span>
    </>
  )
}
