import type { Standings } from './standings.ts'

/** How the games stand that the head has no room for, a line each. */
export function OtherStands({ stands }: { readonly stands: Standings['others'] }) {
  if (stands.length === 0) return null
  return (
    <ul className="stands">
      {stands.map(({ label, words }) => (
        <li key={label} className="spread">
          <span className="quiet">{label}</span> <b>{words}</b>
        </li>
      ))}
    </ul>
  )
}
